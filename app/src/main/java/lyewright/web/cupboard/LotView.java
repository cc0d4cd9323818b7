package lyewright.web.cupboard;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lyewright.formula.OwnMaterial;
import lyewright.material.Tables;
import lyewright.measure.Problem;
import lyewright.records.Records;
import lyewright.records.people.Person;
import lyewright.records.setting.Units;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.LotSaid;
import lyewright.records.stock.MoveKind;
import lyewright.records.stock.Price;
import lyewright.records.stock.StockItem;
import lyewright.records.stock.StockMove;
import lyewright.stock.LotStatus;
import lyewright.stock.MadeHere;
import lyewright.web.Shop;
import lyewright.web.TextField;
import lyewright.web.cupboard.ItemPage.Fact;
import lyewright.words.Dates;
import lyewright.words.Figures;
import lyewright.words.Sentences;

/** Looks at one lot. */
final class LotView {

    private final Shop shop;
    private final Units units;
    private final LocalDate today;

    LotView(Shop shop) {
        this.shop = shop;
        this.units = shop.workshop().units();
        this.today = LocalDate.now(shop.clock());
    }

    /**
     * The page.
     *
     * @param lot of which lot
     * @param typed what was typed into the form of taking, by field
     * @param edit what was typed of the lot itself
     * @param certificate what was typed of its certificate, where that came back
     * @param problems what is wrong with any of them
     */
    LotPage page(
            KeptLot lot,
            Map<String, String> typed,
            LotForm edit,
            Optional<CertificateForm> certificate,
            List<Problem> problems) {
        Records records = shop.records();
        StockItem item = records.items().find(lot.itemId()).orElseThrow();
        int level = Amounts.level(lot.left(), lot.came());
        return new LotPage(
                CupboardFrame.of(shop, "Lot " + lot.said().ownCode()),
                lot.said().ownCode(),
                item.name(),
                "/stores/cupboard/" + item.id(),
                "/stores/lots/" + lot.id(),
                typed.getOrDefault("token", UUID.randomUUID().toString()),
                Amounts.said(item.said().counting(), lot.left(), units),
                level,
                ItemView.state(lot.lot(), today),
                MisnamedLye.of(item, List.of(lot)).orElse(""),
                facts(lot),
                new LotPage.Take(
                        typed.getOrDefault("kind", MoveKind.USE.word()),
                        TextField.of(
                                        "amount",
                                        "How much",
                                        "such as 120 g, or spoons whose content you weighed",
                                        typed.getOrDefault("amount", ""))
                                .with(problems),
                        TextField.of(
                                        "why",
                                        "What for, or what happened",
                                        "perhaps the recipe",
                                        typed.getOrDefault("why", ""))
                                .with(problems)),
                new LotPage.Status(
                        lot.said().status().word(),
                        lot.said().status() == LotStatus.QUARANTINE,
                        lot.said().status() == LotStatus.USABLE,
                        lot.said().status() == LotStatus.REFUSED),
                edit.fields(certificate.isPresent() ? List.of() : problems),
                edit.asksFar(problems),
                certificate(lot, item, certificate, problems),
                new MadeView(records, units).of(lot, item),
                new DocumentView(shop).part(lot.id(), "", false, List.of()),
                moves(item, records.lots().moves(lot.id())),
                problems.stream()
                        .filter(problem -> certificate.isEmpty()
                                || CertificateForm.figures(item.said()).stream()
                                        .noneMatch(field -> field.equals(problem.path())))
                        .filter(problem -> !LotForm.FIELDS.contains(problem.path())
                                && !List.of("amount", "why").contains(problem.path()))
                        .map(Sentences::whole)
                        .toList());
    }

    private static Optional<LotPage.Certificate> certificate(
            KeptLot lot, StockItem item, Optional<CertificateForm> typed, List<Problem> problems) {
        // an oil's figures in the place of its own would make lye an oil
        boolean lye = item.said().kind() != ItemKind.ALKALI && MisnamedLye.isLye(lot);
        if (lye || CertificateForm.figures(item.said()).isEmpty()) {
            return Optional.empty();
        }
        Optional<OwnMaterial> mix =
                lot.said().certificate().filter(kept -> kept.kind().equals(OwnMaterial.OILS));
        if (mix.isPresent()) {
            return Optional.of(LotPage.Certificate.ofMix(mixed(mix.get())));
        }
        List<Problem> own = typed.isPresent() ? problems : List.of();
        CertificateForm form =
                typed.orElseGet(() -> CertificateForm.of(lot.said().certificate()));
        String told = lot.said()
                .certificate()
                .map(certificate -> "Sheets may reckon with it: " + certificate.source() + ".")
                .orElse("None yet. With one, sheets that take from this lot know better how sure their superfat is.");
        String gain = GainPages.mayGain(item, lot) ? "/stores/lots/" + lot.id() + "/gain" : "";
        boolean asks = CertificateForm.asks(own);
        return Optional.of(new LotPage.Certificate(
                told,
                CertificateFigures.of(item.said(), lot.said().certificate()),
                gain,
                form.fields(item.said(), own),
                asks,
                typed.isPresent()));
    }

    /** Of a premix, what its oils come to. */
    private static String mixed(OwnMaterial certificate) {
        return MadeHere.saponificationValue(certificate, Tables.bundled())
                .map(value -> "Its saponification value comes to " + Figures.fixed(value.middle(), 1) + " ± "
                        + Figures.fixed((value.high() - value.low()) / 2, 1)
                        + " mg KOH/g, by the certificates of its oils where they have one, else by the tables.")
                .orElse("");
    }

    private List<Fact> facts(KeptLot lot) {
        LotSaid said = lot.said();
        Map<String, String> suppliers = new SupplierNames(shop.records()).ofLots(List.of(lot));
        List<Fact> facts = new ArrayList<>();
        String from = ItemView.from(lot, suppliers);
        facts.add(new Fact("Where it is from", from.isEmpty() ? "not said" : from));
        facts.add(new Fact(from.equals(ItemView.MADE_HERE) ? "Made" : "Came", Dates.day(said.received())));
        said.opened().ifPresent(day -> facts.add(new Fact("Opened", Dates.day(day))));
        facts.add(new Fact("Best before", said.bestBefore().map(Dates::day).orElse("not said")));
        said.price().map(Amounts::said).ifPresent(price -> facts.add(new Fact("Price", price)));
        if (!said.notes().isBlank()) {
            facts.add(new Fact("Notes", said.notes()));
        }
        return facts;
    }

    private List<LotPage.Move> moves(StockItem item, List<StockMove> moves) {
        Map<String, String> people =
                shop.records().people().list().stream().collect(Collectors.toMap(Person::id, Person::name));
        return moves.stream()
                .map(move -> new LotPage.Move(
                        move.number(),
                        Dates.minute(move.at(), shop.clock()),
                        Amounts.signed(item.said().counting(), move.told().amount(), units),
                        what(
                                move,
                                Amounts.said(
                                        item.said().counting(),
                                        Math.abs(move.told().amount()),
                                        units)),
                        people.getOrDefault(move.author().person(), "somebody who is no longer here"),
                        move.correctedBy().isPresent() || move.told().corrects().isPresent()
                                ? ""
                                : "/stores/lots/" + move.lotId() + "/take-back/" + move.number(),
                        move.correctedBy().isPresent()))
                .toList();
    }

    private static String what(StockMove move, String amount) {
        StockMove.Told told = move.told();
        String kind = switch (told.kind()) {
            case RECEIPT -> "Came";
            case USE -> "Used";
            case LOSS -> "Lost";
            case COUNT -> told.amount() == 0 ? "Counted, as the book said" : "Counted";
            case RETURN -> "Sent back";
        };
        String corrects =
                told.corrects().map(number -> "Takes back no. " + number).orElse(kind);
        return Stream.of(
                        Optional.of(corrects),
                        Optional.of(told.purpose()),
                        Optional.of(told.words()).filter(words -> !words.equals(amount)),
                        Optional.of(told.why()))
                .flatMap(Optional::stream)
                .filter(words -> !words.isBlank())
                .collect(Collectors.joining(", "));
    }

    static String price(Optional<Price> price) {
        return price.map(Price::decimal).orElse("");
    }
}
