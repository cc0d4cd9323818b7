package lyewright.web.stores;

import java.util.ArrayList;
import java.util.List;
import lyewright.formula.ResolvedFormula;
import lyewright.material.Tables;
import lyewright.words.Figures;

/**
 * What is shown beside a material's form.
 *
 * @param sentences what a sheet makes of what is typed
 * @param name what the tables call the key; empty where they do not know it
 * @param facts what the tables say of the key
 * @param address of the tables' own page of it, or empty
 */
public record MaterialShown(List<String> sentences, String name, List<Fact> facts, String address) {

    /** What a maker compares a certificate with. */
    private static final List<String> COMPARED = List.of(
            "Saponification value",
            "A sheet computes with",
            "Acid value",
            "Iodine value",
            "Density",
            "Water in it",
            "Fat in it",
            "Saponification value of that fat",
            "Sugar in it",
            "Salt in it",
            "Takes alkali");

    /** Copies its lists. */
    public MaterialShown {
        sentences = List.copyOf(sentences);
        facts = List.copyOf(facts);
    }

    /** Of a key of the tables alone there is nothing to say that the tables do not. */
    private static boolean saysSomething(MaterialForm form) {
        return form.kind() != MaterialKind.OF_TABLES
                || form.says(MaterialField.SAPONIFICATION_VALUE)
                || form.says(MaterialField.ACID_VALUE);
    }

    static MaterialShown of(MaterialForm form, MaterialReading.Read read, Tables tables) {
        List<String> sentences = new ArrayList<>();
        read.resolved()
                .filter(r -> saysSomething(form))
                .map(ResolvedFormula::oils)
                .map(oils -> oils.get(0))
                .ifPresent(oil -> {
                    sentences.add("With this a sheet computes with " + Figures.fixed(oil.saponificationValue(), 1)
                            + " mg KOH/g"
                            + (oil.acidPart() > 0
                                    ? ", " + Figures.fixed(oil.acidPart(), 1) + " of it free acid."
                                    : "."));
                });
        String key = form.key().strip();
        List<Fact> facts = tables.oil(key)
                .map(TableCards::of)
                .or(() -> tables.additive(key).map(TableCards::of))
                .orElse(List.of());
        String name = tables.oil(key)
                .map(oil -> oil.name())
                .or(() -> tables.additive(key).map(add -> add.name()))
                .orElse("");
        return new MaterialShown(
                sentences,
                name,
                facts.stream().filter(fact -> COMPARED.contains(fact.label())).toList(),
                name.isEmpty() ? "" : TablesPages.ADDRESS + "/" + key);
    }
}
