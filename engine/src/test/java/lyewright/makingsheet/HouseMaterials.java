package lyewright.makingsheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.formula.OwnMaterial;
import lyewright.formula.WrittenFigure;
import lyewright.material.Alkali;
import lyewright.measure.Density;
import lyewright.measure.Share;

/** Materials of the workshop's own, for tests. Invented, so that the arithmetic beside a test is short. */
public final class HouseMaterials {

    /** mg KOH/g of an oil that takes 5 mmol of alkali a gram: 5 × 56.105. */
    public static final String FIVE_MILLIMOLES = "280.525";

    private HouseMaterials() {}

    /** An oil that takes 5 mmol of alkali a gram, of 0.9 g/ml: 1000 g take 5 mol, 199.985 g of NaOH. */
    public static OwnMaterial oilOfFive(String key) {
        return oil(key, FIVE_MILLIMOLES, "0.9");
    }

    public static OwnMaterial oil(String key, String saponificationValue, String density) {
        return material(
                key,
                OwnMaterial.OIL,
                Optional.of(figure(saponificationValue)),
                Optional.of(new Density(new BigDecimal(density))),
                Optional.empty(),
                List.of());
    }

    public static OwnMaterial oilWithoutDensity(String key, String saponificationValue) {
        return material(
                key,
                OwnMaterial.OIL,
                Optional.of(figure(saponificationValue)),
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    public static OwnMaterial wax(String key, String saponificationValue) {
        return material(
                key,
                OwnMaterial.WAX,
                Optional.of(figure(saponificationValue)),
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    /** What a certificate says of a key of the tables. */
    public static OwnMaterial certificate(String key, String saponificationValue) {
        return material(
                key, "", Optional.of(figure(saponificationValue)), Optional.empty(), Optional.empty(), List.of());
    }

    public static OwnMaterial stockLye(String key, String percent, Alkali alkali) {
        return material(
                key,
                OwnMaterial.LYE,
                Optional.empty(),
                Optional.empty(),
                Optional.of(new OwnMaterial.Strength(figure(percent), alkali)),
                List.of());
    }

    /** Premixed oils as {@code "coconut", "80 %", "castor", "20 %"}. */
    public static OwnMaterial premix(String key, String... keysAndShares) {
        List<OwnMaterial.BlendPart> parts = new ArrayList<>();
        for (int i = 0; i < keysAndShares.length; i += 2) {
            parts.add(new OwnMaterial.BlendPart(
                    keysAndShares[i], Share.parse(keysAndShares[i + 1]).orThrow()));
        }
        return material(key, OwnMaterial.OILS, Optional.empty(), Optional.empty(), Optional.empty(), parts);
    }

    private static OwnMaterial material(
            String key,
            String kind,
            Optional<WrittenFigure> saponificationValue,
            Optional<Density> density,
            Optional<OwnMaterial.Strength> strength,
            List<OwnMaterial.BlendPart> oils) {
        return new OwnMaterial(
                key,
                kind,
                saponificationValue,
                Optional.empty(),
                Optional.empty(),
                density,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                strength,
                oils,
                "",
                "",
                "",
                "the test");
    }

    private static WrittenFigure figure(String text) {
        return WrittenFigure.parse(text).orThrow().figure();
    }
}
