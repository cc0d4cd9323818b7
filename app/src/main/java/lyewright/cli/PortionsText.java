package lyewright.cli;

import java.util.ArrayList;
import java.util.List;
import lyewright.chemistry.BatchComposition;
import lyewright.chemistry.BatchComposition.Portion;
import lyewright.chemistry.Composition;
import lyewright.chemistry.Composition.Kind;
import lyewright.chemistry.Composition.Substance;
import lyewright.chemistry.WorstBar;

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
        List<Kind> differing = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            if (differs(kind)) {
                differing.add(kind);
            }
        }
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

    /** By more than rounding, and so that it shows. */
    private boolean differs(Kind kind) {
        double[] percents = batch.portions().stream()
                .mapToDouble(p -> p.cured().percent(kind))
                .sorted()
                .toArray();
        double least = percents[0];
        double most = percents[percents.length - 1];
        return most - least >= APART && !Figures.fixed(least, 1).equals(Figures.fixed(most, 1));
    }

    private void table(List<Kind> kinds) {
        TextTable.Column[] columns = new TextTable.Column[kinds.size() + 1];
        columns[0] = TextTable.words(toppings() ? "Portions, without toppings, %" : "Portions once cured, %");
        for (int k = 0; k < kinds.size(); k++) {
            columns[k + 1] = TextTable.figures(CompositionWords.brief(kinds.get(k)));
        }
        TextTable table = new TextTable(0, columns);
        for (Portion portion : batch.portions()) {
            String[] cells = new String[columns.length];
            cells[0] = portion.name();
            for (int k = 0; k < kinds.size(); k++) {
                cells[k + 1] = Figures.fixed(portion.cured().percent(kinds.get(k)), 1);
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
            if (byName && worst.percent() - least(s) >= APART) {
                most.add(s.name() + " " + Figures.percent(worst.percent(), 2) + " in " + worst.portion());
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
