package lyewright.chemistry;

import lyewright.chemistry.Composition.Kind;
import lyewright.chemistry.CompositionLedger.Salts;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.material.Names;
import lyewright.material.Oil;
import lyewright.material.OilBlend;
import lyewright.material.OilKind;
import lyewright.material.ReckonedValue;
import lyewright.material.Tables;

/** What becomes of the oils: soap, glycerol, what is left, and what never reacts. */
final class CompositionOils {

    /** Cerotic acid, C26H52O2, the chief free acid of beeswax, g/mol (memory; IUPAC abridged atomic weights). */
    private static final double WAX_ACID = 396.70;

    /** Standards give a maximum of unsaponifiable matter; this much of it is taken. */
    private static final double OF_THE_MAXIMUM = 0.5;

    private static final double GRAMS_PER_KILOGRAM = 1000;

    /** Grams of glycerol that a mole of alkali sets free. */
    static final double GLYCEROL_PER_MOLE = Stoichiometry.GLYCEROL / 3;

    /** A glyceride's backbone in place of three acids' water, g/mol. */
    private static final double BACKBONE = Stoichiometry.GLYCEROL - 3 * Stoichiometry.WATER;

    static final String GLYCEROL = "Glycerol";
    static final String GLYCEROL_INCI = "Glycerin";

    private final Tables tables;
    private final CompositionLedger ledger;
    private final CompositionExtent extent;

    CompositionOils(Tables tables, CompositionLedger ledger, CompositionExtent extent) {
        this.tables = tables;
        this.ledger = ledger;
        this.extent = extent;
    }

    void add(OilPart line, double grams) {
        for (OilBlend.Part part : line.parts()) {
            add(part.oil(), line.key(), grams * part.fraction());
        }
    }

    private void add(Oil oil, String of, double grams) {
        double unsaponifiable = grams * unsaponifiable(oil);
        ledger.add(
                Kind.UNSAPONIFIABLE,
                "Unsaponifiable matter of " + Names.inSentence(oil.name()),
                "",
                of,
                unsaponifiable);
        ledger.addFattyMatter(unsaponifiable);
        double reactive = grams - unsaponifiable;
        if (!extent.begun()) {
            left(oil, of, reactive);
            return;
        }
        ReckonedValue value = oil.reckoned();
        double acidMoles = grams * Stoichiometry.molesPerGram(value.acidPart());
        double acid = Math.min(reactive, freeAcid(oil, grams, acidMoles));
        acid(oil, of, acid, acidMoles);
        double esterMoles = grams * Stoichiometry.molesPerGram(value.milligramsKohPerGram() - value.acidPart());
        if (esterMoles > 0) {
            ester(soaps(oil), of, reactive - acid, esterMoles);
            left(oil, of, (reactive - acid) * (1 - extent.ester()));
        } else {
            left(oil, of, reactive - acid);
        }
    }

    private void left(Oil oil, String of, double grams) {
        boolean waxLeft = oil.kind() == OilKind.WAX && extent.begun();
        String name = waxLeft ? Composition.waxLeft(Names.inSentence(oil.name())) : oil.name();
        ledger.add(Kind.OIL_LEFT, name, oil.names().inci(), of, grams);
        ledger.addFattyMatter(grams);
    }

    private void acid(Oil oil, String of, double grams, double moles) {
        double reacted = extent.oilAcid();
        ledger.addSalts(Kind.SOAP, soaps(oil), of, grams * reacted, moles * reacted, Stoichiometry.WATER, extent);
        boolean allAcid = oil.kind() == OilKind.FATTY_ACID;
        ledger.add(
                Kind.ACID_LEFT,
                allAcid ? oil.name() : "Free acid of " + Names.inSentence(oil.name()),
                allAcid ? oil.names().inci() : "",
                of,
                grams * (1 - reacted));
        ledger.addFattyMatter(grams);
    }

    /** So many grams of glycerides that could take so many moles; what has reacted of them. */
    void ester(Salts soaps, String of, double grams, double moles) {
        double reacted = grams * extent.ester();
        double taken = moles * extent.ester();
        ledger.addSalts(Kind.SOAP, soaps, of, reacted, taken, GLYCEROL_PER_MOLE, extent);
        ledger.add(Kind.GLYCEROL, GLYCEROL, GLYCEROL_INCI, of, taken * GLYCEROL_PER_MOLE);
        ledger.addFattyAcidsOfSoap(reacted, taken, GLYCEROL_PER_MOLE);
    }

    private static double unsaponifiable(Oil oil) {
        return oil.unsaponifiableMax().isPresent()
                ? OF_THE_MAXIMUM * oil.unsaponifiableMax().get().middle() / GRAMS_PER_KILOGRAM
                : 0;
    }

    private static double freeAcid(Oil oil, double grams, double moles) {
        return switch (oil.kind()) {
            case FATTY_ACID -> grams;
            case WAX -> moles * WAX_ACID;
            case TRIGLYCERIDE -> moles == 0 ? 0 : moles * meanAcid(oil);
        };
    }

    /** Mean molar mass of a glyceride's acids: from its acids, else from its saponification value. */
    private static double meanAcid(Oil oil) {
        return oil.acids().known()
                ? oil.acids().numberAverageMolarMass()
                : Stoichiometry.MILLIGRAMS_KOH_PER_MOLE / oil.reckoned().milligramsKohPerGram() - BACKBONE / 3;
    }

    private Salts soaps(Oil oil) {
        Oil named = named(oil);
        String name = Names.inSentence(oil.name());
        return new Salts(
                "Sodium soap of " + name,
                named.names().sodiumSoap(),
                "Potassium soap of " + name,
                named.names().potassiumSoap());
    }

    /** A maker's own oil has the soap names of the tables' oil of the same INCI name. */
    private Oil named(Oil oil) {
        if (!oil.names().sodiumSoap().isEmpty() || oil.names().inci().isEmpty()) {
            return oil;
        }
        for (Oil other : tables.oils()) {
            if (other.names().inci().equalsIgnoreCase(oil.names().inci())) {
                return other;
            }
        }
        return oil;
    }
}
