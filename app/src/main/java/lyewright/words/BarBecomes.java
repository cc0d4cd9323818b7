package lyewright.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.chemistry.BatchComposition;
import lyewright.chemistry.Composition;
import lyewright.chemistry.Composition.Kind;
import lyewright.chemistry.Composition.Moment;
import lyewright.chemistry.Composition.Substance;
import lyewright.material.Tables;

/**
 * What the bars of a batch consist of once cured.
 *
 * @param rows by kind, parts set in under their sum
 * @param total of all of it
 * @param footnote about the rows, where one is needed
 * @param lines on water, the cut, fatty matter and chloride
 * @param portions how portions differ, where the batter is shared out
 */
public record BarBecomes(
        List<BarRow> rows,
        BarRow total,
        Optional<String> footnote,
        List<Labelled> lines,
        Optional<PortionsApart> portions) {

    /** Lighter than this is nothing to a reader: it would print as 0.0 g. */
    private static final double SHOWN = 0.05;

    /** Free alkali is caustic, however little; lighter than this it would print as 0.000 g. */
    static final double ALKALI_SHOWN = 0.0005;

    /** Copies its lists. */
    public BarBecomes {
        rows = List.copyOf(rows);
        lines = List.copyOf(lines);
    }

    /** What a batch's bars consist of. */
    public static BarBecomes of(BatchComposition batch, Tables tables) {
        Composition cured = batch.at(Moment.CURED);
        double percent =
                cured.substances().stream().mapToDouble(Substance::percent).sum();
        return new BarBecomes(
                rows(cured),
                new BarRow("All of it", "", Figures.fixed(cured.totalGrams(), 1), Figures.fixed(percent, 1), false),
                cured.grams(Kind.UNSAPONIFIABLE) >= SHOWN
                        ? Optional.of("Of unsaponifiable matter standards give only the most; half of that is taken.")
                        : Optional.empty(),
                lines(batch, cured, tables),
                batch.portions().isEmpty() ? Optional.empty() : Optional.of(PortionsApart.of(batch)));
    }

    private static List<Labelled> lines(BatchComposition batch, Composition cured, Tables tables) {
        List<Labelled> lines = new ArrayList<>(List.of(
                new Labelled("Water", water(cured.water())),
                new Labelled("At the cut", atTheCut(batch.at(Moment.CUT))),
                new Labelled("Total fatty matter", fattyMatter(batch, cured, tables))));
        if (cured.chloridePercent().orElse(0.0) >= SHOWN) {
            lines.add(new Labelled("Chloride", chloride(cured, tables)));
        }
        return lines;
    }

    private static List<BarRow> rows(Composition cured) {
        List<BarRow> rows = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            double least = kind == Kind.FREE_ALKALI ? ALKALI_SHOWN : SHOWN;
            if (cured.grams(kind) >= least) {
                kind(rows, cured, kind, least);
            }
        }
        return rows;
    }

    private static void kind(List<BarRow> rows, Composition cured, Kind kind, double least) {
        List<Line> lines = lines(cured, kind);
        // wax that is left and oil that is left are not to be added up: only the oil is superfat
        boolean headed = lines.size() > 1 && kind != Kind.OIL_LEFT;
        if (headed) {
            rows.add(new Line(CompositionWords.of(kind), "", cured.grams(kind), cured.percent(kind)).row(false));
        }
        for (Line line : lines) {
            if (line.grams >= least) {
                rows.add(line.row(headed));
            }
        }
    }

    /** A line before it is put into words. */
    private record Line(String name, String inci, double grams, double percent) {

        BarRow row(boolean setIn) {
            String share = percent < SHOWN ? "<0.1" : Figures.fixed(percent, 1);
            return new BarRow(name, inci, Figures.fixed(grams, grams < SHOWN ? 3 : 1), share, setIn);
        }

        Line and(Line other) {
            String both =
                    inci.isEmpty() || other.inci.isEmpty() || inci.equals(other.inci) ? inci : inci + ", " + other.inci;
            return new Line(name, both, grams + other.grams, percent + other.percent);
        }
    }

    /** What is told of a kind: soap by oil, of glycerol, left oil, unsaponifiable matter and water only the sum. */
    private static List<Line> lines(Composition cured, Kind kind) {
        Map<String, Line> lines = new LinkedHashMap<>();
        for (Substance s : cured.substances()) {
            if (s.kind() == kind) {
                String name = CompositionWords.nameIn(s);
                lines.merge(name, new Line(name, CompositionWords.inci(s), s.grams(), s.percent()), Line::and);
            }
        }
        return new ArrayList<>(lines.values());
    }

    private static String water(Composition.Water water) {
        List<String> from = new ArrayList<>();
        from.add(Figures.fixed(water.addedGrams(), 1) + " g added" + counted(water));
        if (water.broughtGrams() >= SHOWN) {
            from.add(Figures.fixed(water.broughtGrams(), 1) + " g brought by materials");
        }
        if (water.formedGrams() >= SHOWN) {
            from.add(Figures.fixed(water.formedGrams(), 1) + " g formed as acids are neutralised");
        }
        String lost = water.lostGrams() >= SHOWN
                ? Figures.fixed(water.lostGrams(), 1) + " g of it dry off until the bar is cured"
                : "none of it has to dry off";
        return String.join(", ", from) + "; " + lost;
    }

    /** Why it is less than the rule's water. */
    private static String counted(Composition.Water water) {
        return water.countedGrams() < SHOWN
                ? ""
                : " (the rule's " + Figures.fixed(water.addedGrams() + water.countedGrams(), 1) + " g count "
                        + Figures.fixed(water.countedGrams(), 1)
                        + " g as water that are none: the solids of what replaces water)";
    }

    private static String atTheCut(Composition cut) {
        return Figures.upTo(cut.reactedLowPercent(), 0) + " to " + Figures.upTo(cut.reactedHighPercent(), 0)
                + " % of what will react has done so (common practice; no measurement was found). Not settled yet, so no"
                + " composition; still caustic.";
    }

    private static String fattyMatter(BatchComposition batch, Composition cured, Tables tables) {
        return Figures.percent(cured.totalFattyMatterPercent().orElse(0.0), 1) + " cured, "
                + Figures.percent(
                        batch.at(Moment.POUR).totalFattyMatterPercent().orElse(0.0), 1)
                + " as poured; counted as in ISO 685, without fragrance. " + CompositionWords.leastFattyMatter(tables);
    }

    private static String chloride(Composition cured, Tables tables) {
        return Figures.percent(cured.chloridePercent().orElse(0.0), 1) + " cured, as common salt. "
                + CompositionWords.mostChloride(tables);
    }
}
