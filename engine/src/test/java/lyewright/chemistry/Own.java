package lyewright.chemistry;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import lyewright.formula.OwnMaterial;
import lyewright.formula.WrittenFigure;
import lyewright.material.Alkali;
import lyewright.measure.Density;
import lyewright.measure.Share;

/** Materials of the maker's own, for tests. */
final class Own {

    private final String key;
    private final String kind;
    private Optional<WrittenFigure> saponificationValue = Optional.empty();
    private Optional<WrittenFigure> acidValue = Optional.empty();
    private Optional<Density> density = Optional.empty();
    private Optional<WrittenFigure> water = Optional.empty();
    private Optional<WrittenFigure> fat = Optional.empty();
    private Optional<WrittenFigure> fatSaponificationValue = Optional.empty();
    private Optional<OwnMaterial.Acid> acid = Optional.empty();
    private Optional<OwnMaterial.Strength> strength = Optional.empty();
    private List<OwnMaterial.BlendPart> oils = List.of();
    private String inci = "";

    private Own(String key, String kind) {
        this.key = key;
        this.kind = kind;
    }

    /** A glyceride of one saponification value. */
    static Own oil(String key, String saponificationValue) {
        return new Own(key, OwnMaterial.OIL).saponificationValue(saponificationValue);
    }

    static Own of(String key, String kind) {
        return new Own(key, kind);
    }

    /** Stock lye of so many percent. */
    static OwnMaterial lye(String key, String percent, Alkali alkali) {
        Own own = new Own(key, OwnMaterial.LYE);
        own.strength = Optional.of(new OwnMaterial.Strength(figure(percent), alkali));
        return own.material();
    }

    static OwnMaterial blend(String key, OwnMaterial.BlendPart... parts) {
        Own own = new Own(key, OwnMaterial.OILS);
        own.oils = List.of(parts);
        return own.material();
    }

    static OwnMaterial.BlendPart part(String key, String percent) {
        return new OwnMaterial.BlendPart(key, Share.ofPercent(percent));
    }

    Own saponificationValue(String value) {
        saponificationValue = Optional.of(figure(value));
        return this;
    }

    Own acidValue(String value) {
        acidValue = Optional.of(figure(value));
        return this;
    }

    Own density(String gramsPerMillilitre) {
        density = Optional.of(new Density(new BigDecimal(gramsPerMillilitre)));
        return this;
    }

    Own water(String percent) {
        water = Optional.of(figure(percent));
        return this;
    }

    Own fat(String percent, String saponificationValueOfFat) {
        fat = Optional.of(figure(percent));
        fatSaponificationValue = Optional.of(figure(saponificationValueOfFat));
        return this;
    }

    Own acid(String percent, String name) {
        acid = Optional.of(new OwnMaterial.Acid(figure(percent), name));
        return this;
    }

    Own inci(String name) {
        inci = name;
        return this;
    }

    OwnMaterial material() {
        return new OwnMaterial(
                key,
                kind,
                saponificationValue,
                acidValue,
                Optional.empty(),
                density,
                water,
                fat,
                fatSaponificationValue,
                Optional.empty(),
                Optional.empty(),
                acid,
                strength,
                oils,
                inci,
                "",
                "",
                "the test");
    }

    private static WrittenFigure figure(String value) {
        return WrittenFigure.parse(value).orThrow().figure();
    }
}
