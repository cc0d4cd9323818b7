package lyewright.web.stores;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import lyewright.formula.OwnMaterial;
import lyewright.formula.WrittenFigure;
import lyewright.measure.Density;

/**
 * A material as typed.
 *
 * @param kind what it is
 * @param key what recipes call it
 * @param alkali of a stock lye, which
 * @param texts what is said of it
 */
record MaterialForm(MaterialKind kind, String key, String alkali, Map<MaterialField, String> texts) {

    /** Copies its map. */
    MaterialForm {
        texts = Map.copyOf(texts);
    }

    static MaterialForm empty(MaterialKind kind, String key) {
        return new MaterialForm(kind, key, "sodium", Map.of());
    }

    static MaterialForm sent(MaterialKind kind, UnaryOperator<String> field) {
        Map<MaterialField, String> texts = new EnumMap<>(MaterialField.class);
        for (MaterialField asked : MaterialField.values()) {
            texts.put(asked, field.apply(asked.path()));
        }
        return new MaterialForm(kind, field.apply("key"), field.apply("alkali"), texts);
    }

    static MaterialForm of(OwnMaterial own) {
        Map<MaterialField, String> texts = new EnumMap<>(MaterialField.class);
        figure(texts, MaterialField.SAPONIFICATION_VALUE, own.saponificationValue());
        figure(texts, MaterialField.ACID_VALUE, own.acidValue());
        figure(texts, MaterialField.IODINE_VALUE, own.iodineValue());
        own.density()
                .map(Density::gramsPerMillilitre)
                .ifPresent(d -> texts.put(MaterialField.DENSITY, d.toPlainString()));
        figure(texts, MaterialField.WATER, own.water());
        figure(texts, MaterialField.FAT, own.fat());
        figure(texts, MaterialField.FAT_SAPONIFICATION_VALUE, own.fatSaponificationValue());
        figure(texts, MaterialField.SUGAR, own.sugar());
        figure(texts, MaterialField.SALT, own.salt());
        own.acid().ifPresent(acid -> texts.put(MaterialField.ACID, acid.share() + " % " + acid.name()));
        figure(texts, MaterialField.STRENGTH, own.strength().map(OwnMaterial.Strength::pure));
        texts.put(
                MaterialField.OILS,
                own.oils().stream()
                        .map(part -> part.key() + " " + part.amount())
                        .collect(Collectors.joining("\n")));
        texts.put(MaterialField.INCI, own.inci());
        texts.put(MaterialField.CAS, own.cas());
        texts.put(MaterialField.SUPPLIER, own.supplier());
        texts.put(MaterialField.SOURCE, own.source());
        texts.values().removeIf(String::isEmpty);
        return new MaterialForm(
                MaterialKind.of(own.kind()).orElse(MaterialKind.OTHER),
                own.key(),
                own.strength().map(strength -> strength.alkali().word()).orElse(""),
                texts);
    }

    private static void figure(Map<MaterialField, String> texts, MaterialField field, Optional<WrittenFigure> figure) {
        figure.ifPresent(f -> texts.put(field, f.toString()));
    }

    String text(MaterialField field) {
        return texts.getOrDefault(field, "");
    }

    boolean says(MaterialField field) {
        return !text(field).isBlank();
    }

    /** In one order, so that equal forms have equal texts. */
    @Override
    public String toString() {
        Map<MaterialField, String> inOrder = new EnumMap<>(MaterialField.class);
        inOrder.putAll(texts);
        return kind.word() + "|" + key + "|" + alkali + "|" + inOrder;
    }
}
