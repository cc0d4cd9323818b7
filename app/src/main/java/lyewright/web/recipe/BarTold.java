package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import lyewright.chemistry.BatchComposition;
import lyewright.chemistry.Composition;
import lyewright.chemistry.Composition.Kind;
import lyewright.chemistry.Composition.Moment;
import lyewright.chemistry.Composition.Substance;
import lyewright.web.Piece;
import lyewright.words.CompositionWords;
import lyewright.words.Figures;
import lyewright.words.UnitsShown;

/** What the cured bar consists of, each figure with the way to its why. */
final class BarTold {

    /** Lighter than this is nothing to a reader; free alkali is told however little it is. */
    private static final double SHOWN = 0.05;

    private static final String WAX = "waxLeft";

    private final UnitsShown units;
    private final UnaryOperator<String> why;
    private final Composition cured;
    private final String path;

    BarTold(BatchComposition composition, UnitsShown units, UnaryOperator<String> why) {
        this.units = units;
        this.why = why;
        this.cured = composition.at(Moment.CURED);
        this.path = "composition[" + composition.moments().indexOf(cured) + "]";
    }

    /** By kind; what a kind has several of stands under its sum. Wax that is left is no superfat, so it is not added to the oil. */
    List<Told> substances() {
        List<Told> rows = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            add(rows, kind.word(), CompositionWords.of(kind), s -> s.kind() == kind && !s.waxLeft());
            if (kind == Kind.OIL_LEFT) {
                add(rows, WAX, CompositionWords.WAX_LEFT, Substance::waxLeft);
            }
        }
        return rows;
    }

    private void add(List<Told> rows, String word, String name, Predicate<Substance> which) {
        List<Integer> places = places(which);
        if (places.size() == 1) {
            rows.add(row(places.get(0), false));
        } else if (!places.isEmpty()) {
            List<Substance> all = cured.substances().stream().filter(which).toList();
            double percent = all.stream().mapToDouble(Substance::percent).sum();
            double grams = all.stream().mapToDouble(Substance::grams).sum();
            rows.add(new Told(name, share(percent, grams, ".kinds." + word), false));
            places.forEach(place -> rows.add(row(place, true)));
        }
    }

    private List<Integer> places(Predicate<Substance> which) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < cured.substances().size(); i++) {
            Substance substance = cured.substances().get(i);
            boolean caustic = substance.kind() == Kind.FREE_ALKALI && substance.grams() > 0;
            if (which.test(substance) && (substance.grams() >= SHOWN || caustic)) {
                places.add(i);
            }
        }
        return places;
    }

    private Told row(int place, boolean setIn) {
        Substance substance = cured.substances().get(place);
        List<Piece> value = share(substance.percent(), substance.grams(), ".substances[" + place + "]");
        return new Told(setIn ? part(substance) : alone(substance), value, setIn);
    }

    private static String part(Substance substance) {
        return switch (substance.kind()) {
            case GLYCEROL -> "from " + WrittenWords.name(substance.of()).toLowerCase(Locale.ROOT);
            default -> substance.name();
        };
    }

    private static String alone(Substance substance) {
        return substance.kind() == Kind.FREE_ALKALI ? CompositionWords.nameIn(substance) : headed(substance);
    }

    private static String headed(Substance substance) {
        if (substance.waxLeft()) {
            return CompositionWords.WAX_LEFT;
        }
        String kind = CompositionWords.of(substance.kind());
        return switch (substance.kind()) {
            case SOAP, SALT, OTHER, INERT, ACID_SALT -> substance.name();
            default -> kind;
        };
    }

    private List<Piece> share(double percent, double grams, String figure) {
        String share = percent < SHOWN ? "<0.1 %" : Figures.percent(percent, 1);
        String mass = grams < SHOWN ? units.traces(grams) : units.tenths(grams);
        return List.of(figure(share, figure + ".percent"), Piece.plain(", "), figure(mass, figure + ".grams"));
    }

    /** What it weighs, dries off, and what standards ask for. */
    List<Told> facts() {
        List<Told> told = new ArrayList<>();
        told.add(told("All of it, cured", units.tenths(cured.totalGrams()), ".totalGrams"));
        told.add(told("Water that dries off", units.tenths(cured.water().lostGrams()), ".water.lostGrams"));
        cured.totalFattyMatterPercent()
                .ifPresent(value ->
                        told.add(told("Total fatty matter", Figures.percent(value, 1), ".totalFattyMatterPercent")));
        cured.chloridePercent()
                .filter(value -> value >= SHOWN)
                .ifPresent(value -> told.add(told("Chloride, as salt", Figures.percent(value, 1), ".chloridePercent")));
        return told;
    }

    private Told told(String label, String value, String figure) {
        return Told.of(label, figure(value, figure));
    }

    private Piece figure(String text, String figure) {
        return new Piece(text, why.apply(path + figure));
    }
}
