package lyewright.why;

import java.util.Set;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.material.Additive;
import lyewright.material.AdditiveKind;
import lyewright.material.Figure;
import lyewright.material.Oil;
import lyewright.material.OilBlend;
import lyewright.material.OilKind;
import lyewright.material.Tables;
import lyewright.why.Term.Given;

/** What a gram of a line brings to the chemistry: saponification value, fat, acid, water, salt. */
final class Contents {

    /** Kinds of additions whose acid nature makes, not a works. */
    private static final Set<AdditiveKind> NATURAL = Set.of(AdditiveKind.LIQUID, AdditiveKind.MILK);

    private Contents() {}

    /** The saponification value of an oil or premix, of the pot or of a dispersion. */
    static Term saponificationValue(OilPart part) {
        if (part.parts().size() == 1) {
            return saponificationValue(part.parts().get(0).oil());
        }
        return Term.sum(part.parts().stream()
                        .map(p -> share(part, p).times(saponificationValue(p.oil())))
                        .toList())
                .as("SV of " + Labels.of(part), "mg KOH/g", "saponification value of the premix");
    }

    /** The free acid of an oil or premix. */
    static Term freeAcid(OilPart part) {
        if (part.parts().size() == 1) {
            return freeAcid(part.parts().get(0).oil());
        }
        return Term.sum(part.parts().stream()
                        .filter(p -> p.oil().reckoned().acidPart() > 0)
                        .map(p -> share(part, p).times(freeAcid(p.oil())))
                        .toList())
                .as("free acid of " + Labels.of(part), "mg KOH/g", "free acid of the premix");
    }

    /** The free acid of one oil, as far as the sheet counts it. */
    static Given freeAcid(Oil oil) {
        return new Given(
                "free acid of " + Labels.of(oil),
                oil.reckoned().acidPart(),
                "mg KOH/g",
                "what of the saponification value is free acid",
                oil.kind() == OilKind.FATTY_ACID
                        ? oil.saponificationValue().source()
                        : oil.acidValue().map(Figure::source).orElse(""));
    }

    /** An oil's share of a premix. */
    static Given share(OilPart part, OilBlend.Part in) {
        return new Given(
                Labels.of(in.oil()) + " in " + Labels.of(part),
                in.fraction(),
                "",
                "share of " + part.name() + " that is " + in.oil().name(),
                "the formula's materials");
    }

    /** The saponification value of one oil, of which the sheet takes what surely reacts. */
    static Given saponificationValue(Oil oil) {
        Figure published = oil.saponificationValue();
        Given value = new Given(
                "SV of " + Labels.of(oil),
                oil.reckoned().milligramsKohPerGram(),
                "mg KOH/g",
                "saponification value: " + basis(oil),
                published.source());
        return published.low() < published.high() || oil.kind() == OilKind.WAX
                ? value.spread(spread(oil, published))
                : value;
    }

    /** Of a wax anything between the least of its free acid and all of it may react. */
    static Spread spread(Oil oil, Figure published) {
        return oil.kind() == OilKind.WAX
                ? Spread.between(oil.acidValue().map(Figure::low).orElse(0.0), published.high(), published.source())
                : Spread.of(published, 1);
    }

    private static String basis(Oil oil) {
        String doubt = oil.reckoned().remembered() ? "is memory" : "is wide";
        return switch (oil.reckoned().basis()) {
            case CERTIFICATE -> "the maker's own";
            case MIDDLE -> "middle of the published range";
            case LOWER_MIDDLE -> "middle of the range, which " + doubt + " and gives the lower value";
            case FATTY_ACIDS -> "from its fatty acids, since the range " + doubt + " and its middle is higher";
            case WAX_ACID ->
                oil.reckoned().acidPart() > 0
                        ? "only the wax's free acid surely reacts"
                        : "nothing of it surely reacts";
        };
    }

    /** What the saponification value of an oil is called, the oil being named in words. */
    static String saponificationName(Ledger ledger, String oil) {
        return ledger.formula().oils().stream()
                .flatMap(part -> part.parts().stream())
                .filter(part -> part.oil().name().equals(oil))
                .map(part -> saponificationValue(part.oil()).name())
                .findFirst()
                .orElse("");
    }

    static OilPart oil(Ledger ledger, Line line) {
        return ledger.formula().oils().stream()
                .filter(part -> part.key().equals(line.line().key()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(line.line().key() + " is no oil of the formula"));
    }

    private static Additive additive(Ledger ledger, Line line) {
        return ledger.formula().additions().get(line.line().place()).material();
    }

    private static Given part(Additive additive, String what, double amount, String unit, String meaning) {
        return new Given(
                what + " of " + Labels.of(additive),
                amount,
                unit,
                meaning + " of " + additive.name(),
                Sources.physical(additive));
    }

    /** Milligrams of potassium hydroxide that the fat of a gram of an addition takes. */
    static Term fat(Ledger ledger, Line line) {
        return fat(additive(ledger, line));
    }

    static Term fat(Additive additive) {
        double value = additive.makeup().fatSaponificationValue();
        return fatShare(additive)
                .times(part(additive, "SV of the fat", value, "mg KOH/g", "saponification value of the fat"));
    }

    /** Fat in a gram of an addition. */
    static Given fatShare(Additive additive) {
        return part(additive, "fat", additive.makeup().fat(), "", "share of fat");
    }

    /** Alkali that the acid of a gram of an addition takes. */
    static Given acidOf(Ledger ledger, Line line) {
        return acid(ledger.tables(), additive(ledger, line));
    }

    /** The same, of which juices, vinegars and milks have now more, now less. */
    static Given acid(Tables tables, Additive additive) {
        Additive.Makeup makeup = additive.makeup();
        String name = makeup.acidName().isBlank() ? "" : " (" + makeup.acidName() + ")";
        double moles = makeup.acidMolesPerGram();
        Given acid = part(additive, "acid", moles, "mol/g", "alkali taken by each gram" + name);
        if (!NATURAL.contains(additive.kind())) {
            return acid;
        }
        Tables.Practice usual = tables.practice("acid-of-liquids");
        return acid.spread(Spread.between(
                moles * usual.low() / 100, moles * usual.high() / 100, usual.source() + ": " + usual.what()));
    }

    /** Water in a gram of an addition. */
    static Given water(Additive additive) {
        return part(additive, "water", additive.makeup().water(), "", "share of water");
    }

    /** Water in a gram of any line. */
    static Term water(Ledger ledger, Line line) {
        return switch (line.line().kind()) {
            case OIL -> Term.number(0);
            case WATER -> Term.number(1);
            case DISPERSING_LIQUID -> liquidWater(ledger, line);
            case ADDITION -> water(additive(ledger, line));
            case ALKALI -> alkaliWater(ledger, line);
        };
    }

    /** Plain water, or the glycerin of the tables. */
    private static Term liquidWater(Ledger ledger, Line line) {
        Additive glycerin = ledger.glycerin();
        return line.line().water() == 1 || ledger.isOil(line)
                ? Term.number(line.line().water())
                : water(glycerin);
    }

    /** A stock lye is water for the rest; what potash's purity leaves out is water, what soda's does is not. */
    private static Term alkaliWater(Ledger ledger, Line line) {
        return line.line().water() == 0 ? Term.number(0) : Term.number(1).minus(Alkalis.strength(ledger, line));
    }

    /** Density of an addition, which turns a volume into a mass. */
    static Given density(Additive material) {
        return new Given(
                "density of " + Labels.of(material),
                material.gramsPerMillilitre(),
                "g/ml",
                "density of " + material.name() + (material.densityAssumed() ? ", only assumed" : ""),
                Sources.physical(material));
    }

    /** Common salt in a gram of an addition. */
    static Term salt(Ledger ledger, Line line) {
        return salt(additive(ledger, line));
    }

    static Given salt(Additive additive) {
        return part(additive, "salt", additive.makeup().salt(), "", "share of common salt");
    }
}
