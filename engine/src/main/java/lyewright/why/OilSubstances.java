package lyewright.why;

import java.util.stream.Collectors;
import lyewright.chemistry.Composition;
import lyewright.chemistry.Composition.Kind;
import lyewright.chemistry.Stoichiometry;
import lyewright.material.Names;
import lyewright.material.Oil;
import lyewright.material.OilKind;
import lyewright.why.Substances.Salts;
import lyewright.why.Term.Given;

/** What becomes of an oil: soap, glycerol, what is left, and what never reacts. */
final class OilSubstances {

    /** Cerotic acid, C26H52O2, the chief free acid of beeswax, g/mol (memory; IUPAC abridged atomic weights). */
    private static final double WAX_ACID = 396.70;

    /** Standards give a maximum of unsaponifiable matter; this much of it is taken. */
    private static final double OF_THE_MAXIMUM = 0.5;

    private final Substances substances;

    OilSubstances(Substances substances) {
        this.substances = substances;
    }

    static Given glycerolMolarMass() {
        return new Given(
                "M of glycerol", Stoichiometry.GLYCEROL, "g/mol", "molar mass of glycerol", Sources.ATOMIC_WEIGHTS);
    }

    static Given waterMolarMass() {
        return new Given("M of water", Stoichiometry.WATER, "g/mol", "molar mass of water", Sources.ATOMIC_WEIGHTS);
    }

    private static Term glycerolPerMole() {
        return glycerolMolarMass().over(Term.number(3));
    }

    void add(Oil oil, String of, Term mass) {
        String name = Names.inSentence(oil.name());
        boolean any = oil.unsaponifiableMax().isPresent();
        Term never = any ? mass.times(unsaponifiable(oil)) : Term.number(0);
        if (any) {
            substances.add(Kind.UNSAPONIFIABLE, "Unsaponifiable matter of " + name, of, never);
        }
        Term reactive = any ? mass.times(Term.number(1).minus(unsaponifiable(oil))) : mass;
        if (substances.cured()) {
            react(oil, of, mass, reactive);
        } else {
            substances.add(Kind.OIL_LEFT, oil.name(), of, reactive);
        }
    }

    private static Term unsaponifiable(Oil oil) {
        Given most = new Given(
                "unsaponifiable in " + Labels.of(oil),
                oil.unsaponifiableMax().orElseThrow().middle(),
                "g/kg",
                "most that its standard allows",
                oil.unsaponifiableMax().orElseThrow().source());
        Given taken = new Given(
                "of the most",
                OF_THE_MAXIMUM,
                "",
                "how much of that maximum is taken to be there",
                "this project's own rule");
        return taken.times(most).over(Term.number(1000));
    }

    private void react(Oil oil, String of, Term mass, Term reactive) {
        if (oil.kind() == OilKind.FATTY_ACID) {
            acid(oil, of, reactive, moles(mass, Contents.freeAcid(oil)));
        } else if (oil.reckoned().acidPart() > 0) {
            Term acid = Term.call(Function.MIN, reactive, freeAcid(oil, mass))
                    .as("free acid in " + Labels.of(oil), "g", "free acid of " + oil.name());
            acid(oil, of, acid, moles(mass, Contents.freeAcid(oil)));
            glycerides(oil, of, mass, reactive.minus(acid));
        } else {
            glycerides(oil, of, mass, reactive);
        }
    }

    /** What is no free acid: glycerides, or a wax's esters, which are left. */
    private void glycerides(Oil oil, String of, Term mass, Term grams) {
        Term value = ester(oil);
        if (Parts.value(value) <= 0) {
            substances.add(Kind.OIL_LEFT, left(oil), of, grams);
            return;
        }
        ester(soaps(oil), of, grams, moles(mass, value));
        Term left = Term.number(1).minus(substances.extents().ester());
        substances.add(Kind.OIL_LEFT, left(oil), of, grams.times(left));
    }

    /** What is left of an oil; of a wax that could have reacted. */
    private static String left(Oil oil) {
        return oil.kind() == OilKind.WAX ? Composition.waxLeft(Names.inSentence(oil.name())) : oil.name();
    }

    /** What of an oil's saponification value is not free acid. */
    static Term ester(Oil oil) {
        Term value = Contents.saponificationValue(oil);
        return oil.reckoned().acidPart() > 0 ? value.minus(Contents.freeAcid(oil)) : value;
    }

    private static Term moles(Term mass, Term milligrams) {
        return mass.times(milligrams).over(Reacting.milligramsPerMole());
    }

    private static Term freeAcid(Oil oil, Term mass) {
        Term moles = moles(mass, Contents.freeAcid(oil));
        return switch (oil.kind()) {
            case FATTY_ACID -> throw new IllegalStateException(oil.name() + " is all free acid");
            case WAX ->
                moles.times(new Given(
                        "M of cerotic acid", WAX_ACID, "g/mol", "chief free acid of beeswax", Sources.ATOMIC_WEIGHTS));
            case TRIGLYCERIDE -> moles.times(meanAcid(oil));
        };
    }

    /** Mean molar mass of a glyceride's acids: from its acids, else from its saponification value. */
    private static Term meanAcid(Oil oil) {
        if (oil.acids().known()) {
            return AcidFigures.meanAcid(oil);
        }
        Term backbone = glycerolMolarMass().minus(Term.number(3).times(waterMolarMass()));
        return Reacting.milligramsPerMole()
                .over(Contents.saponificationValue(oil))
                .minus(backbone.over(Term.number(3)));
    }

    private void acid(Oil oil, String of, Term grams, Term moles) {
        Term reacted = substances.extents().oilAcid();
        substances.addSalts(Kind.SOAP, soaps(oil), of, grams.times(reacted), moles.times(reacted), waterMolarMass());
        String name = oil.kind() == OilKind.FATTY_ACID ? oil.name() : "Free acid of " + Names.inSentence(oil.name());
        substances.add(Kind.ACID_LEFT, name, of, grams.times(Term.number(1).minus(reacted)));
    }

    /** So many grams of glycerides that could take so many moles. */
    void ester(Salts soaps, String of, Term grams, Term moles) {
        Term reacted = substances.extents().ester();
        Term taken = moles.times(reacted);
        substances.addSalts(Kind.SOAP, soaps, of, grams.times(reacted), taken, glycerolPerMole());
        substances.add(Kind.GLYCEROL, "Glycerol", of, taken.times(glycerolPerMole()));
    }

    private static Salts soaps(Oil oil) {
        String name = Names.inSentence(oil.name());
        return new Salts("Sodium soap of " + name, "Potassium soap of " + name);
    }

    /** Sources of an oil's fatty acids. */
    static String acidSources(Oil oil) {
        return oil.acids().acids().stream()
                .map(share -> share.share().source())
                .distinct()
                .collect(Collectors.joining(" | "));
    }
}
