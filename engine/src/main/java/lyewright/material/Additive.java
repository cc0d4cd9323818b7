package lyewright.material;

import java.util.Optional;
import java.util.Set;

/**
 * Something added that is neither oil nor alkali: salt, clay, colour, milk, sugar, acid, fragrance and so on.
 *
 * @param key its key in formulas
 * @param name its common name
 * @param kind what it is
 * @param gramsPerMillilitre density of the material itself, not of a heap of it
 * @param densityAssumed whether that density is only assumed
 * @param makeup what it is made of, as far as soap asks
 * @param dispersing how it is wetted out first, if it is
 * @param usualDose what is usual, if known
 * @param solubility grams of it that dissolve in 100 g of water at 20 °C, if known; 0 means it does not dissolve
 * @param effects what it does to soap, words of {@code additives.csv}
 * @param names what it is called on paper
 * @param hazard what may hurt, or empty
 * @param sources where identity, physical figures and practice come from, joined by {@code " | "}
 * @param notes what else a maker should know
 */
public record Additive(
        String key,
        String name,
        AdditiveKind kind,
        double gramsPerMillilitre,
        boolean densityAssumed,
        Makeup makeup,
        Optional<Dispersing> dispersing,
        Optional<UsualDose> usualDose,
        Optional<Double> solubility,
        Set<String> effects,
        Names names,
        String hazard,
        String sources,
        String notes) {

    /** From this much water a milk, syrup or acid is a liquid and not a powder; common practice, fits the tables. */
    private static final double WATER_OF_LIQUIDS = 0.12;

    /** Copies its set. */
    public Additive {
        effects = Set.copyOf(effects);
    }

    /**
     * Whether a volume of it is measured without air in it.
     *
     * @return yes for liquids and syrups, no for powders and petals
     */
    public boolean pours() {
        return switch (kind) {
            case FRAGRANCE, LIQUID, HUMECTANT, ANTIOXIDANT -> true;
            case MILK, SUGAR, ACID, ALKALI_SALT, PROTEIN -> makeup.water() >= WATER_OF_LIQUIDS;
            default -> false;
        };
    }

    /**
     * What an addition consists of, as far as the chemistry of soap asks. Fractions of its mass, 0 to 1.
     *
     * @param acidMolesPerGram mol of alkali that its acid takes, per gram
     * @param acidName which acid, or empty
     * @param fat fat that is free to react
     * @param fatSaponificationValue mg KOH/g of that fat
     * @param water water
     * @param sugar sugar
     * @param salt sodium chloride
     */
    public record Makeup(
            double acidMolesPerGram,
            String acidName,
            double fat,
            double fatSaponificationValue,
            double water,
            double sugar,
            double salt) {

        /** Nothing in it that matters. */
        public static final Makeup INERT = new Makeup(0, "", 0, 0, 0, 0, 0);
    }

    /**
     * How a powder is wetted out.
     *
     * @param liquid water, oil or glycerin
     * @param lowRatio least liquid to powder, by mass
     * @param highRatio most
     * @param hours how long it should stand
     */
    public record Dispersing(String liquid, double lowRatio, double highRatio, double hours) {}

    /**
     * What is usual.
     *
     * @param low least, in percent of oils
     * @param high most, in percent of oils
     * @param stage where it usually goes in
     * @param source who says so
     */
    public record UsualDose(double low, double high, String stage, String source) {}
}
