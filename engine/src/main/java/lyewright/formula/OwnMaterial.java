package lyewright.formula;

import java.util.List;
import java.util.Optional;
import lyewright.material.Alkali;
import lyewright.measure.Density;
import lyewright.measure.Share;

/**
 * A material of the maker's own, or what a certificate says of one of the tables' materials. Whatever is empty comes from
 * the tables where the key is theirs, else from the defaults of its kind.
 *
 * @param key its key
 * @param kind {@code oil}, {@code wax}, {@code fatty-acid}, {@code oils}, {@code lye}, or an additive's kind; may be empty for
 *     a key of the tables
 * @param saponificationValue mg KOH/g
 * @param acidValue mg KOH/g
 * @param iodineValue g iodine/100 g
 * @param density g/ml
 * @param water percent
 * @param fat percent
 * @param fatSaponificationValue mg KOH/g
 * @param sugar percent
 * @param salt percent
 * @param acid which acid, how much
 * @param strength of a stock lye
 * @param oils of premixed oils
 * @param inci INCI name, or empty
 * @param cas CAS number, or empty
 * @param supplier supplier, or empty
 * @param source where the figures come from, or empty
 */
public record OwnMaterial(
        String key,
        String kind,
        Optional<WrittenFigure> saponificationValue,
        Optional<WrittenFigure> acidValue,
        Optional<WrittenFigure> iodineValue,
        Optional<Density> density,
        Optional<WrittenFigure> water,
        Optional<WrittenFigure> fat,
        Optional<WrittenFigure> fatSaponificationValue,
        Optional<WrittenFigure> sugar,
        Optional<WrittenFigure> salt,
        Optional<Acid> acid,
        Optional<Strength> strength,
        List<BlendPart> oils,
        String inci,
        String cas,
        String supplier,
        String source) {

    /** Kind of a glyceride oil or fat. */
    public static final String OIL = "oil";

    /** Kind of a wax. */
    public static final String WAX = "wax";

    /** Kind of a fatty acid. */
    public static final String FATTY_ACID = "fatty-acid";

    /** Kind of premixed oils. */
    public static final String OILS = "oils";

    /** Kind of stock lye. */
    public static final String LYE = "lye";

    /** Copies its list. */
    public OwnMaterial {
        oils = List.copyOf(oils);
    }

    /**
     * A material of which nothing but its kind matters.
     *
     * @param key its key
     * @param kind its kind
     * @return the material
     */
    public static OwnMaterial of(String key, String kind) {
        return certified(key, kind, Certified.NOTHING, "");
    }

    /**
     * Stock lye or premixed oils.
     *
     * @param key its key
     * @param kind its kind
     * @param strength of a lye
     * @param oils of a premix
     * @param source where that comes from
     * @return the material
     */
    public static OwnMaterial made(
            String key, String kind, Optional<Strength> strength, List<BlendPart> oils, String source) {
        return plain(key, kind, Certified.NOTHING.withStrength(strength), oils, source);
    }

    /**
     * What a certificate says of one of the tables' materials.
     *
     * @param key its key
     * @param kind its kind; may be empty for a key of the tables
     * @param figures what the certificate says
     * @param source which certificate
     * @return the material
     */
    public static OwnMaterial certified(String key, String kind, Certified figures, String source) {
        return plain(key, kind, figures, List.of(), source);
    }

    private static OwnMaterial plain(String key, String kind, Certified figures, List<BlendPart> oils, String source) {
        return new OwnMaterial(
                key,
                kind,
                figures.saponificationValue(),
                figures.acidValue(),
                figures.iodineValue(),
                Optional.empty(),
                figures.water(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                figures.strength(),
                oils,
                "",
                "",
                "",
                source);
    }

    /**
     * The figures that a lot's certificate may have.
     *
     * @param saponificationValue mg KOH/g
     * @param acidValue mg KOH/g
     * @param iodineValue g iodine/100 g
     * @param water percent
     * @param strength of an alkali: its purity
     */
    public record Certified(
            Optional<WrittenFigure> saponificationValue,
            Optional<WrittenFigure> acidValue,
            Optional<WrittenFigure> iodineValue,
            Optional<WrittenFigure> water,
            Optional<Strength> strength) {

        /** No figure. */
        public static final Certified NOTHING =
                new Certified(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

        private Certified withStrength(Optional<Strength> other) {
            return new Certified(saponificationValue, acidValue, iodineValue, water, other);
        }
    }

    /**
     * The least formula that holds this material, so that the rules and the file of formulas serve for a material alone. Its oil is
     * one of the tables', and nothing in it uses the material.
     *
     * @return the formula
     */
    public Formula alone() {
        return new Formula(
                "material",
                1,
                Use.OWN,
                "",
                List.of(new OilLine("olive-virgin", new OilLine.Rest())),
                new AlkaliChoice.Single(Alkali.SODIUM),
                Optional.of(Share.ofPercent("5")),
                new WaterRule.LyeStrength(Share.ofPercent("33"), false),
                Optional.empty(),
                Optional.empty(),
                Process.COLD,
                List.of(),
                List.of(),
                List.of(this),
                Comments.NONE);
    }

    /**
     * An acid in a material.
     *
     * @param share percent of the material's mass
     * @param name its name, such as {@code citric acid}
     */
    public record Acid(WrittenFigure share, String name) {}

    /**
     * A stock lye's strength.
     *
     * @param pure pure alkali, percent of the lye's mass
     * @param alkali which alkali
     */
    public record Strength(WrittenFigure pure, Alkali alkali) {}

    /**
     * One oil of a premix.
     *
     * @param key the oil's key
     * @param share percent of the premix
     * @param saponificationValue mg KOH/g of what went in, where its certificate says it; else it comes from the tables or the formula
     */
    public record BlendPart(String key, Share share, Optional<WrittenFigure> saponificationValue) {

        /** Of which nothing is known but its share. */
        public BlendPart(String key, Share share) {
            this(key, share, Optional.empty());
        }

        /**
         * As it is written behind the oil's name.
         *
         * @return such as {@code 60 %} or {@code 60 % of 189.6 ± 0.8 mg KOH/g}
         */
        public String amount() {
            return share
                    + saponificationValue
                            .map(figure -> " of " + figure + " mg KOH/g")
                            .orElse("");
        }
    }

    /**
     * The same without what certificates say of the oils in it, for it to be known to recipes by its shares.
     *
     * @return itself where it is no premix
     */
    public OwnMaterial bySharesAlone() {
        return withOils(oils.stream()
                .map(part -> new BlendPart(part.key(), part.share()))
                .toList());
    }

    private OwnMaterial withOils(List<BlendPart> others) {
        return new OwnMaterial(
                key,
                kind,
                saponificationValue,
                acidValue,
                iodineValue,
                density,
                water,
                fat,
                fatSaponificationValue,
                sugar,
                salt,
                acid,
                strength,
                others,
                inci,
                cas,
                supplier,
                source);
    }
}
