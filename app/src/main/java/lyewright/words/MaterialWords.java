package lyewright.words;

import lyewright.material.Additive;
import lyewright.material.Figure;
import lyewright.material.LiquidDensity;
import lyewright.material.Oil;
import lyewright.material.OilKind;

/** What the tables know of a material, in words that the pages and the command line share. */
public final class MaterialWords {

    private MaterialWords() {}

    /** What a member of the oil phase is, chemically, in a clause. */
    public static String kind(OilKind kind) {
        return switch (kind) {
            case TRIGLYCERIDE -> "glycerides: alkali gives soap and glycerol";
            case FATTY_ACID -> "free fatty acid: takes alkali first and wholly, gives soap and water";
            case WAX -> "wax: only its free acid surely reacts";
        };
    }

    /** The same in a word. */
    public static String word(OilKind kind) {
        return switch (kind) {
            case TRIGLYCERIDE -> "oil";
            case FATTY_ACID -> "acid";
            case WAX -> "wax";
        };
    }

    /** A figure's ends. */
    public static String range(Figure figure) {
        return range(figure.low(), figure.high());
    }

    /** Two ends, or one where they are the same. */
    public static String range(double lowEnd, double highEnd) {
        String low = Figures.upTo(lowEnd, 2);
        String high = Figures.upTo(highEnd, 2);
        return low.equals(high) ? low : low + " to " + high;
    }

    /** Why a sheet computes with the saponification value that it does. */
    public static String basis(Oil oil) {
        String doubt = oil.reckoned().remembered() ? "memory" : "wide";
        return switch (oil.reckoned().basis()) {
            case CERTIFICATE -> "the maker's own figure";
            case MIDDLE -> "middle of the published range";
            case LOWER_MIDDLE -> "middle of the range (" + doubt + ")";
            case FATTY_ACIDS -> "from its fatty acids, lower than the middle (" + doubt + ")";
            case WAX_ACID -> oil.reckoned().acidPart() > 0 ? "only the wax's free acid" : "nothing of it surely reacts";
        };
    }

    /** A liquid's density and how it falls with warmth. */
    public static String density(LiquidDensity density) {
        return Figures.upTo(density.gramsPerMillilitre(), 4) + " g/ml at " + Figures.upTo(density.atCelsius(), 0)
                + " °C, " + Figures.upTo(density.slopePerKelvin(), 5) + " for each kelvin";
    }

    /** An addition's density. */
    public static String density(Additive additive) {
        return Figures.upTo(additive.gramsPerMillilitre(), 4) + " g/ml"
                + (additive.densityAssumed() ? ", assumed" : "");
    }

    /** How a powder is wetted out. */
    public static String wetting(Additive.Dispersing dispersing) {
        return "in " + dispersing.liquid() + ", " + Figures.upTo(dispersing.lowRatio(), 1) + " to "
                + Figures.upTo(dispersing.highRatio(), 1) + " times its mass"
                + (dispersing.hours() > 0 ? ", " + Figures.upTo(dispersing.hours(), 2) + " h ahead" : "");
    }

    /** What dissolves in water. */
    public static String dissolves(double gramsInHundred) {
        return gramsInHundred > 0 ? Figures.upTo(gramsInHundred, 2) + " g in 100 g of water at 20 °C" : "not in water";
    }

    /** What an addition's acid takes. */
    public static String takesAlkali(Additive.Makeup makeup) {
        return Figures.upTo(1000 * makeup.acidMolesPerGram(), 3) + " mmol for each gram"
                + (makeup.acidName().isBlank() ? "" : " (" + makeup.acidName() + ")");
    }
}
