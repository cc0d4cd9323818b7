package lyewright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lyewright.chemistry.BatchComposition;
import lyewright.chemistry.Composition;
import lyewright.chemistry.Composition.Kind;
import lyewright.chemistry.Composition.Moment;
import lyewright.chemistry.Composition.Substance;
import lyewright.material.Tables;
import lyewright.words.CompositionWords;
import lyewright.words.Figures;

/** The part of a sheet that says what the bar will be made of. */
final class CompositionText {

    private static final int LABEL = 21;

    /** Lighter than this is nothing to a reader: it would print as 0.0 g. */
    private static final double SHOWN = 0.05;

    /** Free alkali is caustic, however little; lighter than this it would print as 0.000 g. */
    static final double ALKALI_SHOWN = 0.0005;

    /** Spaces that a table does not strip; they leave it as common ones. */
    private static final String SET_IN = "\u00a0\u00a0";

    private final BatchComposition batch;
    private final Tables tables;
    private final Page page;

    private CompositionText(BatchComposition batch, Tables tables, Page page) {
        this.batch = batch;
        this.tables = tables;
        this.page = page;
    }

    static void write(BatchComposition batch, Tables tables, Page page) {
        new CompositionText(batch, tables, page).write();
    }

    private void write() {
        Composition cured = batch.at(Moment.CURED);
        page.heading("What the bar becomes");
        substances(cured);
        page.blank();
        pair("Water", water(cured.water()));
        pair("At the cut", atTheCut(batch.at(Moment.CUT)));
        pair("Total fatty matter", fattyMatter(cured));
        if (cured.chloridePercent().orElse(0.0) >= SHOWN) {
            pair("Chloride", chloride(cured));
        }
        if (!batch.portions().isEmpty()) {
            new PortionsText(batch, page).write();
        }
    }

    private void pair(String label, String what) {
        page.pair(label, what, LABEL);
    }

    private void substances(Composition cured) {
        TextTable table = new TextTable(
                0,
                TextTable.words("Once cured"),
                TextTable.words("INCI"),
                TextTable.figures("g"),
                TextTable.figures("%"));
        for (Kind kind : Kind.values()) {
            kind(table, cured, kind);
        }
        double percent =
                cured.substances().stream().mapToDouble(Substance::percent).sum();
        table.row("All of it", "", Figures.fixed(cured.totalGrams(), 1), Figures.fixed(percent, 1));
        table.lines(Page.WIDTH).forEach(line -> page.line(line.replace('\u00a0', ' ')));
        if (cured.grams(Kind.UNSAPONIFIABLE) >= SHOWN) {
            page.line("Of unsaponifiable matter standards give only the most; half of that is taken.");
        }
    }

    private static void kind(TextTable table, Composition cured, Kind kind) {
        List<Line> lines = lines(cured, kind);
        double least = kind == Kind.FREE_ALKALI ? ALKALI_SHOWN : SHOWN;
        if (cured.grams(kind) < least) {
            return;
        }
        // wax that is left and oil that is left are not to be added up: only the oil is superfat
        boolean headed = lines.size() > 1 && kind != Kind.OIL_LEFT;
        if (headed) {
            new Line(CompositionWords.of(kind), "", cured.grams(kind), cured.percent(kind)).row(table, "");
        }
        for (Line line : lines) {
            if (line.grams >= least) {
                line.row(table, headed ? SET_IN : "");
            }
        }
    }

    /** A line of the table. */
    private record Line(String name, String inci, double grams, double percent) {

        void row(TextTable table, String before) {
            String share = percent < SHOWN ? "<0.1" : Figures.fixed(percent, 1);
            table.row(before + name, inci, Figures.fixed(grams, grams < SHOWN ? 3 : 1), share);
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

    private String fattyMatter(Composition cured) {
        return Figures.percent(cured.totalFattyMatterPercent().orElse(0.0), 1) + " cured, "
                + Figures.percent(
                        batch.at(Moment.POUR).totalFattyMatterPercent().orElse(0.0), 1)
                + " as poured; counted as in ISO 685, without fragrance. " + CompositionWords.leastFattyMatter(tables);
    }

    private String chloride(Composition cured) {
        return Figures.percent(cured.chloridePercent().orElse(0.0), 1) + " cured, as common salt. "
                + CompositionWords.mostChloride(tables);
    }
}
