package lyewright.web.stores;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import lyewright.material.Additive;
import lyewright.material.Figure;
import lyewright.material.Names;
import lyewright.material.Oil;
import lyewright.words.Figures;
import lyewright.words.MaterialWords;

/** All that the tables know of one material, fact by fact with its source. */
final class TableCards {

    private static final String MG_KOH = " mg KOH/g";

    private TableCards() {}

    static List<Fact> of(Oil oil) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("What it is", MaterialWords.kind(oil.kind()), ""));
        facts.add(figure("Saponification value", oil.saponificationValue(), MG_KOH));
        facts.add(new Fact(
                "A sheet computes with",
                Figures.fixed(oil.reckoned().milligramsKohPerGram(), 1) + MG_KOH + ", " + MaterialWords.basis(oil),
                ""));
        oil.acidValue().ifPresent(value -> facts.add(figure("Acid value", value, MG_KOH)));
        oil.iodineValue().ifPresent(value -> facts.add(figure("Iodine value", value, " g iodine/100 g")));
        oil.unsaponifiableMax()
                .ifPresent(value -> facts.add(new Fact(
                        "Unsaponifiable matter",
                        "at most " + Figures.upTo(value.high(), 1) + " g/kg",
                        value.source())));
        facts.add(new Fact(
                "Density", MaterialWords.density(oil.density()), oil.density().source()));
        names(oil.names(), facts);
        Fact.put(facts, "Its sodium soap", oil.names().sodiumSoap(), "");
        Fact.put(facts, "Its potassium soap", oil.names().potassiumSoap(), "");
        Fact.put(facts, "Notes", oil.notes(), "");
        return facts;
    }

    private static Fact figure(String label, Figure figure, String unit) {
        return new Fact(label, MaterialWords.range(figure) + unit, figure.source());
    }

    private static void names(Names names, List<Fact> facts) {
        Fact.put(facts, "INCI name", names.inci(), names.inciSource());
        Fact.put(facts, "CAS number", names.cas(), names.casSource());
        Fact.put(facts, "EC number", names.ec(), "");
    }

    static List<Fact> of(Additive additive) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("What it is", additive.kind().word().replace('-', ' '), ""));
        additive.usualDose()
                .ifPresent(dose -> facts.add(new Fact(
                        "Usual",
                        MaterialWords.range(dose.low(), dose.high()) + " % of oils"
                                + (dose.stage().isBlank() ? "" : ", at stage " + dose.stage()),
                        dose.source())));
        Fact.put(facts, "May hurt", additive.hazard(), "");
        facts.add(new Fact("Density", MaterialWords.density(additive), ""));
        makeup(additive.makeup(), facts);
        additive.dispersing().ifPresent(wet -> facts.add(new Fact("Wet out", MaterialWords.wetting(wet), "")));
        additive.solubility().ifPresent(grams -> facts.add(new Fact("Dissolves", MaterialWords.dissolves(grams), "")));
        Fact.put(facts, "What it does", effects(additive), "");
        names(additive.names(), facts);
        Fact.put(facts, "Sources", additive.sources(), "");
        Fact.put(facts, "Notes", additive.notes(), "");
        return facts;
    }

    private static void makeup(Additive.Makeup makeup, List<Fact> facts) {
        part("Water in it", makeup.water(), facts);
        part("Fat in it", makeup.fat(), facts);
        if (makeup.fatSaponificationValue() > 0) {
            facts.add(new Fact(
                    "Saponification value of that fat", Figures.upTo(makeup.fatSaponificationValue(), 1) + MG_KOH, ""));
        }
        part("Sugar in it", makeup.sugar(), facts);
        part("Salt in it", makeup.salt(), facts);
        if (makeup.acidMolesPerGram() > 0) {
            facts.add(new Fact("Takes alkali", MaterialWords.takesAlkali(makeup), ""));
        }
    }

    private static void part(String label, double fraction, List<Fact> facts) {
        if (fraction > 0) {
            facts.add(new Fact(label, Figures.upTo(100 * fraction, 2) + " %", ""));
        }
    }

    private static String effects(Additive additive) {
        return additive.effects().stream()
                .sorted()
                .collect(Collectors.joining(", "))
                .toLowerCase(Locale.ROOT);
    }
}
