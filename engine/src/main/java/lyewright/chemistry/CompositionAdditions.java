package lyewright.chemistry;

import java.util.Optional;
import lyewright.chemistry.Composition.Kind;
import lyewright.chemistry.CompositionLedger.Salts;
import lyewright.formula.ResolvedFormula.AdditionPart;
import lyewright.material.AcidSalt;
import lyewright.material.Additive;
import lyewright.material.AdditiveKind;
import lyewright.material.Names;
import lyewright.material.Tables;

/** What becomes of the additions, water apart: salt, fat, acid, and the rest of each. */
final class CompositionAdditions {

    /** Makeups are printed to so many parts of one; closer than this, acid and water are all there is. */
    private static final double ROUNDING = 2e-4;

    /** A powder holds a little water without being called anything else for it. */
    private static final double DAMP = 0.02;

    private final Tables tables;
    private final CompositionLedger ledger;
    private final CompositionExtent extent;
    private final CompositionOils oils;

    CompositionAdditions(Tables tables, CompositionLedger ledger, CompositionExtent extent, CompositionOils oils) {
        this.tables = tables;
        this.ledger = ledger;
        this.extent = extent;
        this.oils = oils;
    }

    /** Fractions of an addition's mass beside its water; with the water they add up to 1. */
    private record Parts(double salt, double fat, double acid, double rest) {}

    void add(AdditionPart addition, double grams, boolean onTop) {
        Additive material = addition.material();
        String of = addition.written().of();
        Parts parts = parts(material.makeup());
        boolean isSalt = material.kind() == AdditiveKind.SALT;
        ledger.addCommonSalt(
                isSalt ? material.name() : "Sodium chloride",
                isSalt ? material.names().inci() : "Sodium Chloride",
                of,
                grams * parts.salt());
        addFat(material, of, grams, parts.fat(), onTop);
        addAcid(material, of, grams, parts.acid(), onTop);
        addRest(material, of, grams, parts);
    }

    void addGlycerin(Additive glycerin, double grams) {
        addRest(glycerin, glycerin.key(), grams, parts(glycerin.makeup()));
    }

    private Parts parts(Additive.Makeup makeup) {
        double room = 1 - makeup.water();
        // fat without a saponification value does not react and stays in its seed
        double fat = makeup.fatSaponificationValue() > 0 ? makeup.fat() : 0;
        double acid = acid(tables, makeup, room - makeup.salt() - fat);
        double rest = room - makeup.salt() - fat - acid;
        if (acid > 0 && Math.abs(rest) < ROUNDING) {
            return new Parts(makeup.salt(), fat, acid + rest, 0);
        }
        if (rest >= 0) {
            return new Parts(makeup.salt(), fat, acid, rest);
        }
        // a material whose parts come to more than it is: water stays, the others give way
        double fitting = Math.max(0, room) / (makeup.salt() + fat + acid);
        return new Parts(makeup.salt() * fitting, fat * fitting, acid * fitting, 0);
    }

    /** Acid by its molar mass; where its substance is not in the tables, all the room: what is not water, salt or fat. */
    static double acid(Tables tables, Additive.Makeup makeup, double room) {
        if (makeup.acidMolesPerGram() == 0) {
            return 0;
        }
        Optional<Tables.Acid> substance = tables.acidCalled(makeup.acidName())
                .or(() -> tables.acidCalled(names(tables, makeup).weighedAs()));
        return substance.isPresent()
                ? makeup.acidMolesPerGram()
                        * substance.get().molarMass()
                        / substance.get().protons()
                : Math.max(0, room);
    }

    private void addFat(Additive material, String of, double grams, double fat, boolean onTop) {
        if (fat == 0) {
            return;
        }
        String name = Names.inSentence(material.name());
        double reacted = onTop ? 0 : extent.ester();
        if (reacted > 0) {
            Salts soaps =
                    new Salts("Sodium soap of the fat of " + name, "", "Potassium soap of the fat of " + name, "");
            Additive.Makeup makeup = material.makeup();
            double moles = grams * Stoichiometry.molesPerGram(makeup.fat() * makeup.fatSaponificationValue());
            oils.ester(soaps, of, grams * fat, moles);
        }
        double left = grams * fat * (1 - reacted);
        ledger.add(Kind.OIL_LEFT, "Fat of " + name, "", of, left);
        ledger.addFattyMatter(left);
    }

    private void addAcid(Additive material, String of, double grams, double acid, boolean onTop) {
        double moles = grams * material.makeup().acidMolesPerGram();
        if (moles == 0) {
            return;
        }
        AcidSalt names = names(tables, material.makeup());
        double reacted = onTop ? 0 : extent.additionAcid();
        Salts salts = new Salts(names.sodiumSalt(), names.sodiumInci(), names.potassiumSalt(), names.potassiumInci());
        ledger.addSalts(
                names.fatty() ? Kind.SOAP : Kind.ACID_SALT,
                salts,
                of,
                grams * acid * reacted,
                moles * reacted,
                Stoichiometry.WATER,
                extent);
        ledger.add(Kind.ACID_LEFT, names.acidLabel(), names.acidInci(), of, grams * acid * (1 - reacted));
        ledger.addFattyMatter(names.fatty() ? grams * acid : 0);
    }

    private static AcidSalt names(Tables tables, Additive.Makeup makeup) {
        return tables.acidSalt(makeup.acidName())
                .orElseThrow(() -> new IllegalStateException("the tables lack the salts of " + makeup.acidName()));
    }

    private void addRest(Additive material, String of, double grams, Parts parts) {
        boolean glycerin = material.names().inci().equalsIgnoreCase(CompositionOils.GLYCEROL_INCI);
        if (glycerin) {
            ledger.add(
                    Kind.GLYCEROL, CompositionOils.GLYCEROL, CompositionOils.GLYCEROL_INCI, of, grams * parts.rest());
        } else {
            ledger.add(
                    kindOfRest(material),
                    nameOfRest(material, parts),
                    material.names().inci(),
                    of,
                    grams * parts.rest());
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
        if (parts.salt() > parts.rest()) {
            return "Other minerals of " + name;
        }
        if (material.makeup().water() > DAMP) {
            return "Solids of " + name;
        }
        return parts.salt() + parts.fat() + parts.acid() == 0 ? material.name() : "Rest of " + name;
    }
}
