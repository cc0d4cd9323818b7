package lyewright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import lyewright.chemistry.BatchComposition;
import lyewright.chemistry.BatchComposition.Portion;
import lyewright.chemistry.Composition;
import lyewright.chemistry.Composition.Kind;
import lyewright.chemistry.Composition.Substance;
import lyewright.chemistry.WorstBar;
import lyewright.words.CompositionWords;
import lyewright.words.Figures;

/** What differs between portions once cured, and which bar has most of what. */
final class PortionsText {

    private static final int LABEL = 21;

    /** Percent apart from which two portions print differently. */
    private static final double APART = 0.05;

    private final BatchComposition batch;
    private final Page page;

    PortionsText(BatchComposition batch, Page page) {
        this.batch = batch;
        this.page = page;
    }

    void write() {
        List<Told> differing = told().stream()
                .filter(told -> differs(told) || (told.kind() == Kind.FREE_ALKALI && alkaliSomewhere()))
                .toList();
        page.blank();
        if (differing.isEmpty()) {
            page.line("The portions are alike, to a tenth of a percent.");
            return;
        }
        table(differing);
        String most = mostInOneBar();
        if (!most.isEmpty()) {
            page.blank();
            page.pair("Most in one bar", most, LABEL);
        }
    }

    /** Whether something lies on the whole that is in no portion. */
    private boolean toppings() {
        double portions = batch.portions().stream()
                .mapToDouble(p -> p.moments().get(0).totalGrams())
                .sum();
        return batch.at(Composition.Moment.POUR).totalGrams() - portions >= APART;
    }

    /** Free alkali is told however little it is: a portion may have some though the batch has none. */
    private boolean alkaliSomewhere() {
        return batch.portions().stream()
                .anyMatch(p -> p.cured().grams(Kind.FREE_ALKALI) >= CompositionText.ALKALI_SHOWN);
    }

    /** By more than rounding, and so that it shows. */
    private boolean differs(Told told) {
        double[] percents = batch.portions().stream()
                .mapToDouble(p -> told.percent().applyAsDouble(p.cured()))
                .sorted()
                .toArray();
        double least = percents[0];
        double most = percents[percents.length - 1];
        return most - least >= APART && !Figures.fixed(least, 1).equals(Figures.fixed(most, 1));
    }

    /** A column that could be told. */
    private record Told(Kind kind, String head, ToDoubleFunction<Composition> percent) {

        String in(Composition cured) {
            double share = percent.applyAsDouble(cured);
            boolean trace =
                    kind == Kind.FREE_ALKALI && share < APART && cured.grams(kind) >= CompositionText.ALKALI_SHOWN;
            return trace ? "<0.1" : Figures.fixed(share, 1);
        }
    }

    /** By kind, but wax that is left apart from oil that is left. */
    private static List<Told> told() {
        List<Told> told = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            if (kind == Kind.OIL_LEFT) {
                told.add(new Told(kind, CompositionWords.brief(kind), c -> c.percent(kind) - c.waxLeftPercent()));
                told.add(new Told(kind, "wax left", Composition::waxLeftPercent));
            } else {
                told.add(new Told(kind, CompositionWords.brief(kind), c -> c.percent(kind)));
            }
        }
        return told;
    }

    private void table(List<Told> told) {
        page.line("What differs between the portions once cured, " + (toppings() ? "without toppings, " : "")
                + "in percent; the rest is alike.");
        TextTable.Column[] columns = new TextTable.Column[told.size() + 1];
        columns[0] = TextTable.words("portion");
        for (int k = 0; k < told.size(); k++) {
            columns[k + 1] = TextTable.figures(told.get(k).head());
        }
        TextTable table = new TextTable(0, columns);
        for (Portion portion : batch.portions()) {
            String[] cells = new String[columns.length];
            cells[0] = portion.name();
            for (int k = 0; k < told.size(); k++) {
                cells[k + 1] = told.get(k).in(portion.cured());
            }
            table.row(cells);
        }
        page.table(table);
    }

    /** Only of what a maker puts in by name, where it differs: that is what limits are read against. */
    private String mostInOneBar() {
        List<String> most = new ArrayList<>();
        for (WorstBar worst : batch.worstBar()) {
            Substance s = worst.substance();
            boolean byName = s.kind() == Kind.INERT
                    || s.kind() == Kind.OTHER
                    || s.kind() == Kind.SALT
                    || s.kind() == Kind.ACID_SALT
                    || s.kind() == Kind.ACID_LEFT
                    || s.kind() == Kind.FREE_ALKALI;
            boolean told = s.kind() == Kind.FREE_ALKALI
                    ? s.grams() >= CompositionText.ALKALI_SHOWN
                    : worst.percent() - least(s) >= APART;
            if (byName && told) {
                String share = worst.percent() < 0.005 ? "under 0.01 %" : Figures.percent(worst.percent(), 2);
                most.add(s.name() + " " + share + " in " + worst.portion());
            }
        }
        return String.join("; ", most);
    }

    private double least(Substance substance) {
        double least = Double.POSITIVE_INFINITY;
        for (Portion portion : batch.portions()) {
            double there = 0;
            for (Substance s : portion.cured().substances()) {
                there += s.kind() == substance.kind()
                                && s.name().equals(substance.name())
                                && s.of().equals(substance.of())
                        ? s.percent()
                        : 0;
            }
            least = Math.min(least, there);
        }
        return least;
    }
}
