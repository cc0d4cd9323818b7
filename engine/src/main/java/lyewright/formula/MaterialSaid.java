package lyewright.formula;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.formula.MaterialChange.Said;
import lyewright.material.Additive;
import lyewright.material.Figure;
import lyewright.material.Oil;
import lyewright.material.OilKind;
import lyewright.material.Tables;

/** All that is said of one material, each by its word: by the maker's own, else by the tables. */
final class MaterialSaid {

    private final Map<String, Said> said = new LinkedHashMap<>();
    private final String ownSource;

    private MaterialSaid(String ownSource) {
        this.ownSource = ownSource;
    }

    static Map<String, Said> of(String key, Optional<OwnMaterial> own, Tables tables) {
        MaterialSaid all = new MaterialSaid(own.map(OwnMaterial::source).orElse(""));
        own.ifPresent(all::own);
        own.filter(material -> !tables.has(key)).ifPresent(material -> all.text(MaterialReader.KIND, material.kind()));
        tables.oil(key).ifPresent(all::oil);
        tables.additive(key).ifPresent(all::additive);
        return all.said;
    }

    private void own(OwnMaterial own) {
        figure(MaterialReader.SAPONIFICATION_VALUE, own.saponificationValue(), MaterialReader.MG_KOH);
        figure(MaterialReader.ACID_VALUE, own.acidValue(), MaterialReader.MG_KOH);
        figure(MaterialReader.IODINE_VALUE, own.iodineValue(), MaterialReader.G_IODINE);
        own.density().ifPresent(density -> text(MaterialReader.DENSITY, density.toString()));
        figure(MaterialReader.WATER, own.water(), MaterialReader.PERCENT);
        figure(MaterialReader.FAT, own.fat(), MaterialReader.PERCENT);
        figure(MaterialReader.FAT_SAPONIFICATION_VALUE, own.fatSaponificationValue(), MaterialReader.MG_KOH);
        figure(MaterialReader.SUGAR, own.sugar(), MaterialReader.PERCENT);
        figure(MaterialReader.SALT, own.salt(), MaterialReader.PERCENT);
        own.acid().ifPresent(acid -> text(MaterialReader.ACID, acid.share() + " % " + acid.name()));
        own.strength()
                .ifPresent(strength -> text(
                        MaterialReader.STRENGTH,
                        strength.pure() + " % " + strength.alkali().word()));
        text(
                MaterialReader.OILS,
                own.oils().stream().map(part -> part.key() + " " + part.share()).collect(Collectors.joining(", ")));
        text(MaterialReader.INCI, own.inci());
        text(MaterialReader.CAS, own.cas());
        text(MaterialReader.SUPPLIER, own.supplier());
    }

    private void text(String word, String text) {
        if (!text.isEmpty()) {
            said.put(word, new Said(text, ownSource));
        }
    }

    private void figure(String word, Optional<WrittenFigure> figure, String unit) {
        figure.ifPresent(written -> text(word, written + " " + unit));
    }

    /** What the tables say where the maker says nothing; of the saponification value what the sheet reckons with. */
    private void oil(Oil oil) {
        double used = oil.kind() == OilKind.WAX
                ? oil.saponificationValue().middle()
                : oil.reckoned().milligramsKohPerGram();
        table(MaterialReader.SAPONIFICATION_VALUE, oil.saponificationValue(), used, MaterialReader.MG_KOH);
        oil.acidValue()
                .ifPresent(value -> table(MaterialReader.ACID_VALUE, value, value.middle(), MaterialReader.MG_KOH));
        oil.iodineValue()
                .ifPresent(value -> table(MaterialReader.IODINE_VALUE, value, value.middle(), MaterialReader.G_IODINE));
        table(
                MaterialReader.DENSITY,
                number(oil.density().gramsPerMillilitre(), 3) + " g/ml",
                oil.density().source());
        names(
                oil.names().inci(),
                oil.names().inciSource(),
                oil.names().cas(),
                oil.names().casSource());
    }

    private void additive(Additive additive) {
        String source = additive.sources();
        if (!additive.densityAssumed()) {
            table(MaterialReader.DENSITY, number(additive.gramsPerMillilitre(), 3) + " g/ml", source);
        }
        percent(MaterialReader.WATER, additive.makeup().water(), source);
        percent(MaterialReader.FAT, additive.makeup().fat(), source);
        double fatValue = additive.makeup().fatSaponificationValue();
        if (fatValue > 0) {
            table(MaterialReader.FAT_SAPONIFICATION_VALUE, number(fatValue, 1) + " " + MaterialReader.MG_KOH, source);
        }
        percent(MaterialReader.SUGAR, additive.makeup().sugar(), source);
        percent(MaterialReader.SALT, additive.makeup().salt(), source);
        table(MaterialReader.ACID, additive.makeup().acidName(), source);
        names(
                additive.names().inci(),
                additive.names().inciSource(),
                additive.names().cas(),
                additive.names().casSource());
    }

    private void names(String inci, String inciSource, String cas, String casSource) {
        table(MaterialReader.INCI, inci, inciSource);
        table(MaterialReader.CAS, cas, casSource);
    }

    private void table(String word, Figure figure, double used, String unit) {
        String range = figure.low() == figure.high()
                ? ""
                : " (" + number(figure.low(), 2) + " to " + number(figure.high(), 2) + ")";
        table(word, number(used, 1) + range + " " + unit, figure.source());
    }

    private void percent(String word, double fraction, String source) {
        if (fraction > 0) {
            table(word, number(100 * fraction, 1) + " " + MaterialReader.PERCENT, source);
        }
    }

    private void table(String word, String text, String source) {
        if (!text.isEmpty()) {
            said.putIfAbsent(word, new Said(text, source));
        }
    }

    private static String number(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return rounded.toPlainString();
    }
}
