package lyewright.words;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import lyewright.makingsheet.Comparison;
import lyewright.makingsheet.Comparison.Group;
import lyewright.makingsheet.Comparison.Row;

/** What a comparison comes to in sentences, as one maker would tell another. */
public final class CompareWords {

    private final Comparison comparison;
    private final String superfat;

    public CompareWords(Comparison comparison) {
        this(comparison, "superfat.exactPercent");
    }

    private CompareWords(Comparison comparison, String superfat) {
        this.comparison = comparison;
        this.superfat = superfat;
    }

    /** Where it stands beside a sheet: superfats are those of the weights as rounded, which that sheet shows. */
    public static CompareWords asWeighed(Comparison comparison) {
        return new CompareWords(comparison, "superfat.sheetPercent");
    }

    /** What was changed, how much more or less alkali that takes, how sure it is, and what air reaches soonest. */
    public List<String> summary() {
        List<String> sentences = new ArrayList<>();
        change().ifPresent(sentences::add);
        howSure().ifPresent(sentences::add);
        rancid().ifPresent(sentences::add);
        return sentences;
    }

    private Optional<String> change() {
        List<String> causes = new ArrayList<>();
        oils().ifPresent(causes::add);
        changed("superfat.exactPercent")
                .flatMap(exact -> comparison.row(superfat).map(row -> fromTo(row, exact.decimals())))
                .map(fromTo -> "superfat " + fromTo + " %")
                .ifPresent(causes::add);
        changed("alkali.potassiumMolesPercent")
                .map(row -> "potassium's share " + fromTo(row) + " %")
                .ifPresent(causes::add);
        if (comparison.of(Group.ADDITIONS).stream().anyMatch(Row::differs)) {
            causes.add("other additions");
        }
        Optional<String> alkali = alkali();
        return causes.isEmpty()
                ? alkali.map(needs -> "B " + needs + ".")
                : Optional.of(Sentences.upperFirst(String.join("; ", causes)) + ": "
                        + alkali.orElse(given() ? "the alkali stays as written" : "needs as much alkali") + ".");
    }

    private Optional<String> howSure() {
        String from = comparison.a().verdict().word();
        String to = comparison.b().verdict().word();
        return from.equals(to) ? Optional.empty() : Optional.of("How sure the superfat is: " + from + " → " + to + ".");
    }

    /** Empty too where the acids of either are not known: what is unknown is no change. */
    private Optional<String> rancid() {
        List<Row> rows = comparison.of(Group.FATTY_ACIDS).stream()
                .filter(row ->
                        row.path().startsWith("fattyAcids.C18:2") || row.path().startsWith("fattyAcids.C18:3"))
                .filter(row -> row.difference().isPresent())
                .toList();
        String from = sum(rows, Row::a);
        String to = sum(rows, Row::b);
        return from.equals(to)
                ? Optional.empty()
                : Optional.of("Linoleic and linolenic acid, which air turns rancid soonest: " + from + " → " + to
                        + " % of the known acids.");
    }

    private static String sum(List<Row> rows, Function<Row, Optional<Double>> side) {
        return Figures.fixed(
                rows.stream().mapToDouble(row -> side.apply(row).orElse(0.0)).sum(), 1);
    }

    private Optional<Row> changed(String path) {
        return comparison.row(path).filter(Row::differs);
    }

    /** A swap of one oil for another reads as such; anything else as a list. */
    private Optional<String> oils() {
        List<Row> changed =
                comparison.of(Group.OILS).stream().filter(Row::differs).toList();
        if (changed.isEmpty()) {
            return Optional.empty();
        }
        List<Row> gone = changed.stream().filter(row -> is(row.b(), 0)).toList();
        List<Row> come = changed.stream().filter(row -> is(row.a(), 0)).toList();
        if (changed.size() == 2 && gone.size() == 1 && come.size() == 1) {
            return Optional.of(share(gone.get(0), gone.get(0).a()) + " → "
                    + share(come.get(0), come.get(0).b()));
        }
        return Optional.of(changed.stream()
                .map(row -> row.label() + " " + fromTo(row) + " %")
                .collect(Collectors.joining(", ")));
    }

    private static boolean is(Optional<Double> value, double other) {
        return value.isPresent() && value.get() == other;
    }

    private static String share(Row row, Optional<Double> percent) {
        return row.label() + " "
                + percent.map(p -> Figures.upTo(p, row.decimals())).orElse("0") + " %";
    }

    private static String fromTo(Row row) {
        return fromTo(row, row.decimals());
    }

    private static String fromTo(Row row, int decimals) {
        return shown(row.a(), decimals) + " → " + shown(row.b(), decimals);
    }

    private static String shown(Optional<Double> value, int decimals) {
        return value.map(v -> Figures.upTo(v, decimals)).orElse("-");
    }

    private Optional<String> alkali() {
        boolean stock = comparison.a().formula().alkali().stock().isPresent()
                || comparison.b().formula().alkali().stock().isPresent();
        List<String> needs = new ArrayList<>();
        // a stock lye's mass says little beside flakes, so then both are told as pure alkali
        needs(stock ? "naohPureGrams" : "naohGrams", stock ? "pure NaOH" : "NaOH")
                .ifPresent(needs::add);
        needs(stock ? "kohPureGrams" : "kohGrams", stock ? "pure KOH" : "KOH").ifPresent(needs::add);
        return needs.isEmpty()
                ? Optional.empty()
                : Optional.of((given() ? "has " : "needs ") + String.join(" and ", needs) + " per kilogram of oils");
    }

    /** Alkali that is written is no need: the superfat gives way instead. */
    private boolean given() {
        return comparison.a().formula().alkali().givenMoles().isPresent()
                || comparison.b().formula().alkali().givenMoles().isPresent();
    }

    private Optional<String> needs(String figure, String what) {
        return changed("perKgOils." + figure).flatMap(Row::shownDifference).map(change -> amount(change) + " " + what);
    }

    private static String amount(BigDecimal change) {
        return change.abs().toPlainString() + " g " + (change.signum() > 0 ? "more" : "less");
    }

    /** What is the same, in one sentence; empty where nothing is. */
    public Optional<String> same() {
        List<String> same = new ArrayList<>();
        for (Group group : Group.values()) {
            List<Row> rows = comparison.of(group);
            List<Row> alike = rows.stream().filter(row -> !row.differs()).toList();
            if (group == Group.FATTY_ACIDS) {
                acids(alike.size(), rows.size()).ifPresent(same::add);
            } else {
                alike.forEach(row -> same.add(alike(row)));
            }
        }
        return same.isEmpty()
                ? Optional.empty()
                : Optional.of("The same in both, to the last digit shown: " + String.join("; ", same) + ".");
    }

    private static Optional<String> acids(int alike, int all) {
        if (alike == 0) {
            return Optional.empty();
        }
        return Optional.of(alike == all ? "all fatty acids" : alike + " of " + all + " fatty acids");
    }

    private static String alike(Row row) {
        String unit = row.unit().equals("% of oils") ? "%" : row.unit();
        return (row.label() + " " + shown(row.a(), row.decimals()) + " " + unit).strip();
    }

    /** Where no figure differs. */
    public String nothing() {
        boolean same = comparison
                .a()
                .formula()
                .formula()
                .equals(comparison.b().formula().formula());
        return same
                ? "Nothing differs: the two formulas are one and the same."
                : "No figure and no caution differs. The two are not written alike: look at their names, notes, remarks,"
                        + " order and process.";
    }
}
