package lyewright.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import lyewright.chemistry.BatchComposition;
import lyewright.chemistry.BatchComposition.Portion;
import lyewright.chemistry.Composition;
import lyewright.chemistry.Composition.Kind;
import lyewright.chemistry.Composition.Substance;
import lyewright.chemistry.WorstBar;

/**
 * What differs between portions once cured, and which bar has most of what.
 *
 * @param intro what the table shows, or that there is nothing to show
 * @param heads of the columns; none where the portions are alike
 * @param rows a cell for each column, a row for each portion
 * @param mostInOneBar what some bar has more of than the others
 */
public record PortionsApart(String intro, List<String> heads, List<List<String>> rows, Optional<String> mostInOneBar) {

    /** Percent apart from which two portions print differently. */
    private static final double APART = 0.05;

    /** Copies its lists. */
    public PortionsApart {
        heads = List.copyOf(heads);
        rows = rows.stream().map(List::copyOf).toList();
    }

    static PortionsApart of(BatchComposition batch) {
        List<Told> differing = told().stream()
                .filter(told -> differs(batch, told) || (told.kind() == Kind.FREE_ALKALI && alkaliSomewhere(batch)))
                .toList();
        if (differing.isEmpty()) {
            return new PortionsApart(
                    "The portions are alike, to a tenth of a percent.", List.of(), List.of(), Optional.empty());
        }
        List<String> heads = new ArrayList<>(List.of("portion"));
        differing.forEach(told -> heads.add(told.head()));
        String most = mostInOneBar(batch);
        return new PortionsApart(
                "What differs between the portions once cured, " + (toppings(batch) ? "without toppings, " : "")
                        + "in percent; the rest is alike.",
                heads,
                batch.portions().stream()
                        .map(portion -> row(portion, differing))
                        .toList(),
                most.isEmpty() ? Optional.empty() : Optional.of(most));
    }

    private static List<String> row(Portion portion, List<Told> told) {
        List<String> cells = new ArrayList<>(List.of(portion.name()));
        told.forEach(one -> cells.add(one.in(portion.cured())));
        return cells;
    }

    /** Whether something lies on the whole that is in no portion. */
    private static boolean toppings(BatchComposition batch) {
        double portions = batch.portions().stream()
                .mapToDouble(p -> p.moments().get(0).totalGrams())
                .sum();
        return batch.at(Composition.Moment.POUR).totalGrams() - portions >= APART;
    }

    /** Free alkali is told however little it is: a portion may have some though the batch has none. */
    private static boolean alkaliSomewhere(BatchComposition batch) {
        return batch.portions().stream().anyMatch(p -> p.cured().grams(Kind.FREE_ALKALI) >= BarBecomes.ALKALI_SHOWN);
    }

    /** By more than rounding, and so that it shows. */
    private static boolean differs(BatchComposition batch, Told told) {
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
            boolean trace = kind == Kind.FREE_ALKALI && share < APART && cured.grams(kind) >= BarBecomes.ALKALI_SHOWN;
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

    /** Only of what a maker puts in by name, where it differs: that is what limits are read against. */
    private static String mostInOneBar(BatchComposition batch) {
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
                    ? s.grams() >= BarBecomes.ALKALI_SHOWN
                    : worst.percent() - least(batch, s) >= APART;
            if (byName && told) {
                String share = worst.percent() < 0.005 ? "under 0.01 %" : Figures.percent(worst.percent(), 2);
                most.add(s.name() + " " + share + " in " + worst.portion());
            }
        }
        return String.join("; ", most);
    }

    private static double least(BatchComposition batch, Substance substance) {
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
