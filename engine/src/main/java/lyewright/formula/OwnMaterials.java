package lyewright.formula;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lyewright.material.Additive;
import lyewright.material.AdditiveKind;
import lyewright.material.FattyAcidProfile;
import lyewright.material.Figure;
import lyewright.material.LiquidDensity;
import lyewright.material.Names;
import lyewright.material.NearestKey;
import lyewright.material.Oil;
import lyewright.material.OilBlend;
import lyewright.material.OilKind;
import lyewright.material.ReckonedValue;
import lyewright.material.StockLye;
import lyewright.material.Tables;
import lyewright.measure.Problem;

/** Turns the maker's own materials into oils, additives and lyes; a key of the tables is overridden field by field. */
final class OwnMaterials {

    /** Density of an oil that has none, g/ml at 20 °C: common practice, and the sheet says so. */
    private static final double USUAL_OIL_DENSITY = 0.915;

    /** Fall of an oil's density with temperature, g/ml per kelvin (Lund's equation, JAOCS 76, 1415). */
    private static final double OIL_DENSITY_SLOPE = -0.00064;

    private final Tables tables;
    private final List<Problem> problems;
    private final Map<String, OilBlend> oils;
    private final Map<String, Additive> additives;
    private final Map<String, StockLye> lyes;

    OwnMaterials(
            Tables tables,
            List<Problem> problems,
            Map<String, OilBlend> oils,
            Map<String, Additive> additives,
            Map<String, StockLye> lyes) {
        this.tables = tables;
        this.problems = problems;
        this.oils = oils;
        this.additives = additives;
        this.lyes = lyes;
    }

    void read(List<OwnMaterial> materials) {
        for (OwnMaterial own : materials) {
            if (!own.kind().equals(OwnMaterial.OILS)) {
                readSimple(own);
            }
        }
        // premixes may hold own oils, so they come after them
        for (OwnMaterial own : materials) {
            if (own.kind().equals(OwnMaterial.OILS)) {
                oils.put(own.key(), blend(own));
            }
        }
    }

    private void readSimple(OwnMaterial own) {
        Optional<Oil> oilOfTables = tables.oil(own.key());
        Optional<Additive> additiveOfTables = tables.additive(own.key());
        switch (own.kind()) {
            case OwnMaterial.LYE -> lyes.put(own.key(), lye(own));
            case OwnMaterial.OIL -> putOil(own, oilOfTables, OilKind.TRIGLYCERIDE);
            case OwnMaterial.WAX -> putOil(own, oilOfTables, OilKind.WAX);
            case OwnMaterial.FATTY_ACID -> putOil(own, oilOfTables, OilKind.FATTY_ACID);
            case "" -> {
                if (oilOfTables.isPresent()) {
                    putOil(own, oilOfTables, oilOfTables.get().kind());
                } else {
                    additives.put(own.key(), additive(own, additiveOfTables));
                }
            }
            default -> additives.put(own.key(), additive(own, additiveOfTables));
        }
        Additive made = additives.get(own.key());
        if (made != null) {
            checkMakeup(own, made);
        }
    }

    /** What is said to be in a material but could not be counted. */
    private void checkMakeup(OwnMaterial own, Additive made) {
        boolean liquid = made.kind() == AdditiveKind.MILK || made.kind() == AdditiveKind.LIQUID;
        if (liquid && made.makeup().fat() > 0 && made.makeup().fatSaponificationValue() == 0) {
            problems.add(new Problem(
                    "materials." + own.key() + ".fat",
                    "the fat of '" + own.key() + "' takes alkali, but its saponification value is not given",
                    "write fat saponification value, about 225 mg KOH/g for milk fat"));
        }
        if (made.kind() == AdditiveKind.ACID
                && made.makeup().acidMolesPerGram() == 0
                && own.acid().isEmpty()) {
            problems.add(new Problem(
                    "materials." + own.key(),
                    "'" + own.key() + "' is an acid, but not which and how strong",
                    "write acid, as in 80 % lactic acid"));
        }
    }

    private void putOil(OwnMaterial own, Optional<Oil> base, OilKind kind) {
        if (base.isPresent() && base.get().kind() != kind) {
            // a wax called an oil would take alkali that it does not react with
            problems.add(new Problem(
                    "materials." + own.key() + ".kind",
                    "'" + own.key() + "' is of another kind in the tables than " + own.kind(),
                    "leave the kind out, or give your material a key of its own"));
            return;
        }
        Oil oil = oil(own, base, kind);
        oils.put(own.key(), new OilBlend(own.key(), oil.name(), List.of(new OilBlend.Part(oil, 1))));
    }

    private static Oil oil(OwnMaterial own, Optional<Oil> base, OilKind kind) {
        String source = sourceOf(own);
        Optional<Figure> acidValue = own.acidValue().map(f -> f.figure(source)).or(() -> base.flatMap(Oil::acidValue));
        Optional<Figure> given = own.saponificationValue().map(f -> f.figure(source));
        FattyAcidProfile acids = base.map(Oil::acids).orElse(FattyAcidProfile.UNKNOWN);
        Figure saponificationValue = given.or(() -> base.map(Oil::saponificationValue))
                .orElseThrow(() -> new IllegalStateException(own.key() + " passed without a saponification value"));
        return new Oil(
                own.key(),
                base.map(Oil::name).orElse(own.key()),
                kind,
                saponificationValue,
                acidValue,
                own.iodineValue().map(f -> f.figure(source)).or(() -> base.flatMap(Oil::iodineValue)),
                oilDensity(own, base),
                acids,
                base.flatMap(Oil::unsaponifiableMax),
                names(own, base.map(Oil::names)),
                given.isPresent()
                        ? ReckonedValue.ofCertificate(kind, saponificationValue, acidValue)
                        : ReckonedValue.ofTable(kind, saponificationValue, acidValue, acids),
                base.map(Oil::notes).orElse(""));
    }

    private static LiquidDensity oilDensity(OwnMaterial own, Optional<Oil> base) {
        if (own.density().isPresent()) {
            double value = own.density().get().gramsPerMillilitre().doubleValue();
            return new LiquidDensity(value, 20, OIL_DENSITY_SLOPE, sourceOf(own));
        }
        return base.map(Oil::density)
                .orElse(new LiquidDensity(USUAL_OIL_DENSITY, 20, OIL_DENSITY_SLOPE, "assumed, common practice"));
    }

    private Additive additive(OwnMaterial own, Optional<Additive> base) {
        AdditiveKind kind = Arrays.stream(AdditiveKind.values())
                .filter(k -> k.word().equals(own.kind()))
                .findFirst()
                .or(() -> base.map(Additive::kind))
                .orElse(AdditiveKind.OTHER);
        return new Additive(
                own.key(),
                base.map(Additive::name).orElse(own.key()),
                kind,
                own.density()
                        .map(d -> d.gramsPerMillilitre().doubleValue())
                        .or(() -> base.map(Additive::gramsPerMillilitre))
                        .orElse(usualDensity(kind)),
                own.density().isEmpty() && base.map(Additive::densityAssumed).orElse(true),
                makeup(own, base.map(Additive::makeup).orElse(Additive.Makeup.INERT)),
                base.flatMap(Additive::dispersing),
                base.flatMap(Additive::usualDose),
                base.flatMap(Additive::solubility),
                base.map(Additive::effects).orElse(Set.of()),
                names(own, base.map(Additive::names)),
                base.map(Additive::hazard).orElse(""),
                sourceOf(own),
                base.map(Additive::notes).orElse(""));
    }

    /** Density where none is given, g/ml: common practice, after the commonest of each kind in the tables. */
    private static double usualDensity(AdditiveKind kind) {
        return switch (kind) {
            case SALT -> 2.17;
            case CLAY -> 2.6;
            case COLOURANT -> 3;
            case EXFOLIANT, BOTANICAL -> 1.4;
            default -> 1;
        };
    }

    private Additive.Makeup makeup(OwnMaterial own, Additive.Makeup base) {
        double acidMoles = base.acidMolesPerGram();
        String acidName = base.acidName();
        if (own.acid().isPresent()) {
            OwnMaterial.Acid acid = own.acid().get();
            Optional<Tables.Acid> known = tables.acid(acid.name());
            if (known.isEmpty()) {
                unknownAcid(own, acid);
            } else {
                acidName = known.get().name();
                acidMoles = acid.share().figure("").middle()
                        / 100
                        * known.get().protons()
                        / known.get().molarMass();
            }
        }
        return new Additive.Makeup(
                acidMoles,
                acidName,
                fraction(own.fat(), base.fat()),
                own.fatSaponificationValue().map(f -> f.figure("").middle()).orElse(base.fatSaponificationValue()),
                fraction(own.water(), base.water()),
                fraction(own.sugar(), base.sugar()),
                fraction(own.salt(), base.salt()));
    }

    private void unknownAcid(OwnMaterial own, OwnMaterial.Acid acid) {
        List<String> near = NearestKey.among(acid.name(), tables.acidNames());
        problems.add(new Problem(
                "materials." + own.key() + ".acid",
                "'" + acid.name() + "' is not one acid of the tables",
                near.isEmpty()
                        ? "write citric acid, acetic acid, lactic acid, tartaric acid or another of the table"
                        : "did you mean " + String.join(" or ", near) + "?"));
    }

    private static double fraction(Optional<WrittenFigure> percent, double otherwise) {
        return percent.map(f -> f.figure("").middle() / 100).orElse(otherwise);
    }

    private static StockLye lye(OwnMaterial own) {
        OwnMaterial.Strength strength =
                own.strength().orElseThrow(() -> new IllegalStateException(own.key() + " passed without a strength"));
        String source = sourceOf(own);
        return new StockLye(
                own.key(), own.key(), strength.alkali(), strength.pure().figure(source), source);
    }

    private OilBlend blend(OwnMaterial own) {
        List<OilBlend.Part> parts = new ArrayList<>();
        for (OwnMaterial.BlendPart part : own.oils()) {
            Optional<Oil> oil = Optional.ofNullable(oils.get(part.key()))
                    .filter(blend -> blend.parts().size() == 1)
                    .map(blend -> blend.parts().get(0).oil())
                    .or(() -> tables.oil(part.key()));
            if (oil.isPresent()) {
                Oil inIt = part.saponificationValue()
                        .map(figure -> certified(own, oil.get(), figure.figure(sourceOf(own))))
                        .orElse(oil.get());
                parts.add(new OilBlend.Part(inIt, part.share().fraction()));
            } else {
                List<String> near = tables.nearest(part.key());
                problems.add(new Problem(
                        "materials." + own.key() + ".oils." + part.key(),
                        "'" + part.key() + "' is no oil of the tables or of the formula",
                        near.isEmpty() ? "choose an oil's key" : "did you mean " + String.join(" or ", near) + "?"));
            }
        }
        return new OilBlend(own.key(), own.key(), parts);
    }

    /** What went into a premix under a certificate is not the same as what else the recipe takes of that oil. */
    private static Oil certified(OwnMaterial premix, Oil oil, Figure saponificationValue) {
        return new Oil(
                oil.key() + " in " + premix.key(),
                oil.name() + " in " + premix.key(),
                oil.kind(),
                saponificationValue,
                oil.acidValue(),
                oil.iodineValue(),
                oil.density(),
                oil.acids(),
                oil.unsaponifiableMax(),
                oil.names(),
                ReckonedValue.ofCertificate(oil.kind(), saponificationValue, oil.acidValue()),
                oil.notes());
    }

    private static Names names(OwnMaterial own, Optional<Names> base) {
        Names names = base.orElse(Names.NONE);
        String source = sourceOf(own);
        return new Names(
                own.inci().isEmpty() ? names.inci() : own.inci(),
                own.inci().isEmpty() ? names.inciSource() : source,
                own.cas().isEmpty() ? names.cas() : own.cas(),
                own.cas().isEmpty() ? names.casSource() : source,
                names.ec(),
                names.sodiumSoap(),
                names.potassiumSoap());
    }

    private static String sourceOf(OwnMaterial own) {
        return own.source().isEmpty() ? "the formula" : own.source();
    }
}
