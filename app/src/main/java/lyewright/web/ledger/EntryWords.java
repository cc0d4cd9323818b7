package lyewright.web.ledger;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.chain.Entry;
import lyewright.records.Records;
import lyewright.records.file.DocumentKind;
import lyewright.records.ledger.EntryText;
import lyewright.records.people.Person;
import lyewright.records.stock.StockItem;
import lyewright.web.Shop;
import lyewright.web.WorkshopUnits;
import lyewright.words.Dates;
import lyewright.words.Figures;
import lyewright.words.FileSizes;
import lyewright.words.UnitsShown;

/** What entries tell, in plain words. An entry that somebody edited may tell anything, and is told as far as it goes. */
final class EntryWords {

    private static final double MILLIGRAMS = 1000;
    private static final double KILOGRAM = 1000;
    private static final double TEN = 10;
    private static final int DIGITS = 12;

    private final Shop shop;
    private final Records records;
    private final UnitsShown units;
    private final Map<String, Optional<Of>> lots = new HashMap<>();
    private final Map<String, String> people = new HashMap<>();

    EntryWords(Shop shop) {
        this.shop = shop;
        this.records = shop.records();
        this.units = WorkshopUnits.of(shop.workshop());
    }

    /** Which lot of what. */
    private record Of(String code, String item) {
        String text() {
            return item + ", lot " + code;
        }
    }

    LedgerPage.Line line(Entry entry) {
        Map<String, String> facts = EntryText.facts(entry.text());
        Optional<Of> lot = Optional.ofNullable(facts.get("lot")).flatMap(this::lot);
        String what = switch (entry.kind()) {
            case "lot" -> said(facts, lot);
            case "stock move" -> moved(facts, lot);
            case "lot document" -> document(facts, lot);
            case "restore" -> restored(facts);
            default -> other(entry.kind(), facts);
        };
        return new LedgerPage.Line(
                entry.number(),
                Dates.minute(Instant.ofEpochMilli(entry.atEpochMs()), shop.clock()),
                people.computeIfAbsent(
                        entry.person(),
                        id -> records.people().find(id).map(Person::name).orElse("somebody who is not known")),
                what,
                lot.isPresent() ? "/stores/lots/" + facts.get("lot") : "");
    }

    private Optional<Of> lot(String id) {
        return lots.computeIfAbsent(
                id,
                it -> records.lots()
                        .find(it)
                        .map(lot -> new Of(
                                lot.said().ownCode(),
                                records.items()
                                        .find(lot.itemId())
                                        .map(StockItem::name)
                                        .orElse("something"))));
    }

    private static String name(Optional<Of> lot) {
        return lot.map(Of::text).orElse("a lot that is not here any more");
    }

    /** What was said of a lot. */
    private static String said(Map<String, String> facts, Optional<Of> lot) {
        List<String> said = new ArrayList<>();
        switch (facts.getOrDefault("status", "")) {
            case "usable" -> said.add("may be used");
            case "quarantine" -> said.add("in quarantine");
            case "refused" -> said.add("refused");
            default -> {
                // nothing is said of it
            }
        }
        Optional.ofNullable(facts.get("opened")).ifPresent(day -> said.add("opened " + day(day)));
        Optional.ofNullable(facts.get("best before")).ifPresent(day -> said.add("best before " + day(day)));
        if (facts.containsKey("certificate")) {
            said.add("with its certificate's figures");
        }
        return name(lot) + (said.isEmpty() ? "" : ": " + String.join(", ", said));
    }

    /** A document of a lot, with as much of its digest as tells it from others at a glance. */
    private static String document(Map<String, String> facts, Optional<Of> lot) {
        String name = facts.getOrDefault("name", "a document");
        Optional<String> why = Optional.ofNullable(facts.get("taken off"));
        if (why.isPresent()) {
            return "Document taken off " + name(lot) + ": " + name + " (" + why.get() + ")";
        }
        String kind = DocumentKind.ofMediaType(facts.getOrDefault("type", ""))
                .map(DocumentKind::words)
                .orElse("file");
        String digest = facts.getOrDefault("sha256", "");
        return "Document kept with " + name(lot) + ": " + name + " (" + kind + ", "
                + FileSizes.said(number(facts.getOrDefault("bytes", "0")))
                + ", SHA-256 " + digest.substring(0, Math.min(DIGITS, digest.length())) + "…)";
    }

    private static String day(String day) {
        try {
            return Dates.day(LocalDate.parse(day));
        } catch (DateTimeException e) {
            return day;
        }
    }

    private String moved(Map<String, String> facts, Optional<Of> lot) {
        long amount = number(facts.getOrDefault("milligrams", facts.getOrDefault("pieces", "0")));
        String much = facts.containsKey("pieces")
                ? Math.abs(amount) + (Math.abs(amount) == 1 ? " piece" : " pieces")
                : mass(Math.abs(amount) / MILLIGRAMS);
        String of = much + " of " + name(lot);
        if (facts.containsKey("corrects")) {
            return "Takes back entry " + facts.get("corrects") + ": " + of + purpose(facts) + why(facts);
        }
        String told = switch (facts.getOrDefault("kind", "")) {
            case "receipt" -> "Came: " + of;
            case "use" -> "Used: " + of;
            case "loss" -> "Lost: " + of;
            case "return" -> "Sent back: " + of;
            case "count" ->
                "Counted " + name(lot) + ": "
                        + (amount == 0
                                ? "as the book said"
                                : much + (amount > 0 ? " more" : " less") + " than the book said");
            default -> "Moved: " + of;
        };
        String words = Optional.ofNullable(facts.get("words"))
                .map(it -> " (" + it + ")")
                .orElse("");
        return told + words + purpose(facts) + why(facts);
    }

    /** What a maker typed is what for; what Lyewright wrote there, and what begins as such a phrase does, stands by itself. */
    private static String purpose(Map<String, String> facts) {
        String purpose = facts.getOrDefault("purpose", "");
        boolean byItself = "receipt".equals(facts.get("kind"))
                || purpose.startsWith("made into ")
                || purpose.toLowerCase(Locale.ROOT).startsWith("for ");
        return purpose.isEmpty() ? "" : (byItself ? ", " : ", for ") + purpose;
    }

    private static String why(Map<String, String> facts) {
        return Optional.ofNullable(facts.get("why"))
                .map(why -> " (" + why + ")")
                .orElse("");
    }

    private String mass(double grams) {
        if (units.ounces()) {
            return units.about(grams);
        }
        return grams < KILOGRAM
                ? Figures.upTo(grams, grams < TEN ? 2 : 1) + " g"
                : Figures.upTo(grams / KILOGRAM, 3) + " kg";
    }

    private static long number(String text) {
        return text.matches("-?[0-9]{1,18}") ? Long.parseLong(text) : 0;
    }

    private static String restored(Map<String, String> facts) {
        String from = facts.getOrDefault("lost from", "");
        String to = facts.getOrDefault("lost to", "");
        return "A backup was put back that did not know "
                + (from.equals(to) ? "entry " + from : "entries " + from + " to " + to)
                + " of the ledger as it was; codes that their lots had are not given again";
    }

    private static String other(String kind, Map<String, String> facts) {
        return kind
                + facts.entrySet().stream()
                        .map(fact -> fact.getKey() + " " + fact.getValue())
                        .collect(Collectors.joining(", ", facts.isEmpty() ? "" : ": ", ""));
    }
}
