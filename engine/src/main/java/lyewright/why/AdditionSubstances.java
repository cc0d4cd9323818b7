package lyewright.why;

import lyewright.chemistry.Composition.Kind;
import lyewright.material.AcidSalt;
import lyewright.material.Additive;
import lyewright.material.AdditiveKind;
import lyewright.material.Names;
import lyewright.why.Substances.Salts;

/** What becomes of an addition, its water apart: salt, fat, acid, and the rest. Toppings stay as they are. */
final class AdditionSubstances {

    /** A powder holds a little water without being called anything else for it. */
    private static final double DAMP = 0.02;

    private final Substances substances;

    AdditionSubstances(Substances substances) {
        this.substances = substances;
    }

    void add(Line line) {
        Ledger ledger = substances.scope().ledger();
        Additive material =
                ledger.formula().additions().get(line.line().place()).material();
        String of = line.line().key();
        Parts parts = new Parts(ledger.tables(), material);
        Term mass = substances.scope().mass(line);
        boolean reacts = substances.cured() && !line.line().onTop();
        if (Parts.value(parts.salt()) > 0) {
            substances.addCommonSalt(
                    material.kind() == AdditiveKind.SALT ? material.name() : "Sodium chloride",
                    of,
                    mass.times(parts.salt()));
        }
        addFat(material, of, mass, parts, reacts);
        addAcid(material, of, mass, parts, reacts);
        addRest(material, of, mass);
    }

    private void addFat(Additive material, String of, Term mass, Parts parts, boolean reacts) {
        if (Parts.value(parts.fat()) == 0) {
            return;
        }
        String name = Names.inSentence(material.name());
        Term fat = mass.times(parts.fat());
        if (reacts) {
            Salts soaps = new Salts("Sodium soap of the fat of " + name, "Potassium soap of the fat of " + name);
            Term moles = mass.times(Contents.fat(material)).over(Reacting.milligramsPerMole());
            new OilSubstances(substances).ester(soaps, of, fat, moles);
        }
        substances.add(
                Kind.OIL_LEFT,
                "Fat of " + name,
                of,
                reacts ? fat.times(Term.number(1).minus(substances.extents().ester())) : fat);
    }

    private void addAcid(Additive material, String of, Term mass, Parts parts, boolean reacts) {
        if (material.makeup().acidMolesPerGram() == 0) {
            return;
        }
        AcidSalt names = parts.names();
        Term acid = mass.times(parts.acid());
        if (reacts) {
            Term reacted = substances.extents().additionAcid();
            Term moles = mass.times(Contents.acid(substances.scope().ledger().tables(), material));
            substances.addSalts(
                    names.fatty() ? Kind.SOAP : Kind.ACID_SALT,
                    new Salts(names.sodiumSalt(), names.potassiumSalt()),
                    of,
                    acid.times(reacted),
                    moles.times(reacted),
                    OilSubstances.waterMolarMass());
            acid = acid.times(Term.number(1).minus(reacted));
        }
        substances.add(Kind.ACID_LEFT, names.acidLabel(), of, acid);
    }

    void addRest(Additive material, String of, Term mass) {
        Parts parts = new Parts(substances.scope().ledger().tables(), material);
        Term rest = mass.times(parts.rest());
        if (material.names().inci().equalsIgnoreCase("Glycerin")) {
            substances.add(Kind.GLYCEROL, "Glycerol", of, rest);
        } else {
            substances.add(kindOfRest(material), nameOfRest(material, parts), of, rest);
        }
    }

    private static Kind kindOfRest(Additive material) {
        return switch (material.kind()) {
            case CLAY, COLOURANT, EXFOLIANT -> Kind.INERT;
            default -> Kind.OTHER;
        };
    }

    private static String nameOfRest(Additive material, Parts parts) {
        String name = Names.inSentence(material.name());
        if (parts.mostlySalt()) {
            return "Other minerals of " + name;
        }
        if (material.makeup().water() > DAMP) {
            return "Solids of " + name;
        }
        return parts.nothingElse() ? material.name() : "Rest of " + name;
    }
}
