package lyewright.words;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import lyewright.formula.Addition;
import lyewright.formula.AlkaliChoice;
import lyewright.makingsheet.Comparison;
import lyewright.makingsheet.Comparison.Group;
import lyewright.makingsheet.Comparison.Row;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Share;

/** What a comparison comes to in sentences, as one maker would tell another. */
public final class CompareWords {

    private static final Set<Group> FOR_A_KILOGRAM = EnumSet.of(Group.OILS, Group.ADDITIONS, Group.ALKALI_AND_WATER);

    private final Comparison comparison;
    private final AlkaliChange alkali;
    private final boolean weighed;
    private final ComparedShown shown;

    private CompareWords(Comparison comparison, UnitsShown units, boolean weighed) {
        this.comparison = comparison;
        this.alkali = new AlkaliChange(comparison, units, weighed);
        this.weighed = weighed;
        this.shown = new ComparedShown(units);
    }

    /** Where it stands beside what a kilogram of oils asks for: alkali is told as that is, before balances round it. */
    public static CompareWords asAsked(Comparison comparison) {
        return new CompareWords(comparison, UnitsShown.METRIC, false);
    }

    /** Where it stands beside a sheet: alkali is told as it is weighed. */
    public static CompareWords asWeighed(Comparison comparison, UnitsShown units) {
        return new CompareWords(comparison, units, true);
    }

    /** Whether both make as much of oils, so that their masses can be set beside each other. */
    boolean sameSize() {
        return alkali.sameSize();
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
        superfat().ifPresent(causes::add);
        changed("alkali.potassiumMolesPercent")
                .filter(row -> !alkali(comparison.a()).equals(alkali(comparison.b())))
                .map(row -> "potassium's share " + fromTo(row) + " %")
                .ifPresent(causes::add);
        if (!additions(comparison.a()).equals(additions(comparison.b()))) {
            causes.add("other additions");
        }
        Optional<String> needed = alkali.clause();
        return causes.isEmpty()
                ? needed.map(needs -> "B " + needs + ".")
                : Optional.of(Sentences.upperFirst(String.join("; ", causes)) + ": " + needed.orElse(alkali.noChange())
                        + ".");
    }

    /** As it is asked for; where it follows from the alkali, as the sheets show it, if more than the rounding of weights differs. */
    private Optional<String> superfat() {
        Optional<Share> from = comparison.a().formula().formula().superfat();
        Optional<Share> to = comparison.b().formula().formula().superfat();
        if (from.isPresent() && to.isPresent()) {
            return from.get().percent().compareTo(to.get().percent()) == 0
                    ? Optional.empty()
                    : Optional.of("superfat " + plain(from.get()) + " → " + plain(to.get()) + " %");
        }
        return changed("superfat.exactPercent")
                .flatMap(exact -> changed("superfat.sheetPercent"))
                .map(row -> "superfat " + fromTo(row) + " %");
    }

    private static String plain(Share share) {
        return share.percent().stripTrailingZeros().toPlainString();
    }

    private static AlkaliChoice alkali(MakingSheet sheet) {
        return sheet.formula().formula().alkali();
    }

    private static List<Addition> additions(MakingSheet sheet) {
        return sheet.formula().formula().additions();
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

    private Optional<String> oils() {
        return new TypedOils(comparison.a().formula(), comparison.b().formula()).clause();
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

    /**
     * The rows of a group that are of use: beside sheets of one size none for a kilogram of oils, since their masses can be set beside
     * each other, and no superfat but that which they show.
     */
    public List<Row> shown(Group group) {
        if (!weighed) {
            return comparison.of(group);
        }
        return FOR_A_KILOGRAM.contains(group) && sameSize()
                ? List.of()
                : comparison.of(group).stream()
                        .filter(row -> !row.path().equals("superfat.exactPercent"))
                        .toList();
    }

    /** What is the same, in one sentence; empty where nothing is. */
    public Optional<String> same() {
        List<String> same = new ArrayList<>();
        for (Group group : Group.values()) {
            List<Row> rows = shown(group);
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

    private String alike(Row row) {
        String unit = row.unit().equals("% of oils") ? "%" : shown.unit(row);
        String value = row.a().map(figure -> shown.plain(row, figure)).orElse("-");
        return (row.label() + " " + value + " " + unit).strip();
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
