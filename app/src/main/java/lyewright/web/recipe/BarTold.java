package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lyewright.chemistry.BatchComposition;
import lyewright.chemistry.Composition;
import lyewright.chemistry.Composition.Kind;
import lyewright.chemistry.Composition.Moment;
import lyewright.chemistry.Composition.Substance;
import lyewright.words.CompositionWords;
import lyewright.words.Figures;

/** What the cured bar consists of, each figure with the way to its why. */
final class BarTold {

    /** Lighter than this is nothing to a reader; free alkali is told however little it is. */
    private static final double SHOWN = 0.05;

    private final Ingredients.Address address;
    private final Composition cured;
    private final String path;

    BarTold(BatchComposition composition, Ingredients.Address address) {
        this.address = address;
        this.cured = composition.at(Moment.CURED);
        this.path = "composition[" + composition.moments().indexOf(cured) + "]";
    }

    /** By kind; what a kind has several of stands under its sum. */
    List<Told> substances() {
        List<Told> rows = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            List<Integer> places = places(kind);
            if (places.size() == 1) {
                rows.add(row(places.get(0), false));
            } else if (!places.isEmpty()) {
                rows.add(Told.of(CompositionWords.of(kind), share(cured.percent(kind), cured.grams(kind)), ""));
                places.forEach(place -> rows.add(row(place, true)));
            }
        }
        return rows;
    }

    private List<Integer> places(Kind kind) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < cured.substances().size(); i++) {
            Substance substance = cured.substances().get(i);
            if (substance.kind() == kind
                    && (substance.grams() >= SHOWN || (kind == Kind.FREE_ALKALI && substance.grams() > 0))) {
                places.add(i);
            }
        }
        return places;
    }

    private Told row(int place, boolean setIn) {
        Substance substance = cured.substances().get(place);
        String why = address.why(path + ".substances[" + place + "].percent");
        String value = share(substance.percent(), substance.grams());
        return setIn ? Told.partOf(part(substance), value, why) : Told.of(alone(substance), value, why);
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
        String kind = CompositionWords.of(substance.kind());
        return switch (substance.kind()) {
            case SOAP, SALT, OTHER, INERT, ACID_SALT -> substance.name();
            default -> kind;
        };
    }

    private String share(double percent, double grams) {
        String share = percent < SHOWN ? "<0.1 %" : Figures.percent(percent, 1);
        return share + ", "
                + (grams < SHOWN
                        ? Figures.fixed(grams, 3) + " g"
                        : address.units().tenths(grams));
    }

    /** What it weighs, dries off, and what standards ask for. */
    List<Told> facts() {
        List<Told> told = new ArrayList<>();
        told.add(told("All of it, cured", address.units().tenths(cured.totalGrams()), ".totalGrams"));
        told.add(told(
                "Water that dries off", address.units().tenths(cured.water().lostGrams()), ".water.lostGrams"));
        cured.totalFattyMatterPercent()
                .ifPresent(value ->
                        told.add(told("Total fatty matter", Figures.percent(value, 1), ".totalFattyMatterPercent")));
        cured.chloridePercent()
                .filter(value -> value >= SHOWN)
                .ifPresent(value -> told.add(told("Chloride, as salt", Figures.percent(value, 1), ".chloridePercent")));
        return told;
    }

    private Told told(String label, String value, String figure) {
        return Told.of(label, value, address.why(path + figure));
    }
}
