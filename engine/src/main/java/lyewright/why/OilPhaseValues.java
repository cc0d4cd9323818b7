package lyewright.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import lyewright.chemistry.IodineValue;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.material.AcidShare;
import lyewright.material.FattyAcid;
import lyewright.material.FattyAcidProfile;
import lyewright.material.Figure;
import lyewright.material.Oil;
import lyewright.material.OilKind;
import lyewright.why.Term.Given;

/** Saponification and iodine value of all oils, computed from their fatty acids. */
final class OilPhaseValues {

    private final AcidFigures acidFigures;
    private final OilPhaseAcids acids;

    OilPhaseValues(AcidFigures acidFigures, OilPhaseAcids acids) {
        this.acidFigures = acidFigures;
        this.acids = acids;
    }

    private static Given weightMeanAcid(Oil oil) {
        return new Given(
                "mean acid of " + Labels.of(oil),
                oil.acids().weightAverageMolarMass(),
                "g/mol",
                "mean molar mass of its acids, by weight as AOCS Cd 3a-94 takes it",
                OilSubstances.acidSources(oil));
    }

    void addTo(Figures figures) {
        value(
                figures,
                "saponificationValueFromAcids",
                "Saponification value computed from the fatty acids",
                "mg KOH/g",
                acids.saponificationValue(),
                "Each oil's, from the mean molar mass of its acids, mixed by mass. The alkali is not computed from it.",
                oil -> saponificationValue(oil, AcidFigures.meanAcid(oil)));
        value(
                figures,
                "saponificationValueCd3a94",
                "Saponification value by AOCS Cd 3a-94",
                "mg KOH/g",
                acids.saponificationValueCd3a94(),
                "The same with weight-average molar masses, formula from memory. The alkali is not computed from it.",
                oil -> saponificationValue(oil, weightMeanAcid(oil)));
        value(
                figures,
                "iodineValueFromAcids",
                "Iodine value computed from the fatty acids",
                "g iodine/100 g",
                acids.iodineValue(),
                "Each unsaturated acid times its coefficient, mixed by mass.",
                OilPhaseValues::iodineValue);
    }

    private void value(
            Figures figures,
            String field,
            String title,
            String unit,
            Optional<Double> value,
            String sentence,
            Function<Oil, Term> of) {
        String path = "oilPhase." + field;
        if (value.isEmpty()) {
            figures.absent(path, title, unit, "The acids of no oil but waxes are known.");
            return;
        }
        Predicate<Oil> counted = oil -> oil.acids().known() && oil.kind() != OilKind.WAX;
        figures.add(
                path,
                title,
                unit,
                value.get(),
                () -> new Account(
                        sentence,
                        Term.sum(acidFigures.shares(counted, of))
                                .over(Term.sum(acidFigures.shares(counted, oil -> Term.number(1)))
                                        .as(
                                                "counted",
                                                "",
                                                "share of the oils that counts: waxes and what is not known do not"))));
    }

    private static Term saponificationValue(Oil oil, Given meanAcid) {
        if (oil.kind() == OilKind.FATTY_ACID) {
            return Reacting.milligramsPerMole()
                    .over(meanAcid)
                    .as("SV of " + Labels.of(oil) + " from acids", "mg KOH/g", "free acid");
        }
        Term backbone = OilSubstances.glycerolMolarMass()
                .minus(Term.number(3).times(OilSubstances.waterMolarMass()))
                .as("backbone", "g/mol", "what glycerol adds to three acids");
        return Term.number(3)
                .times(Reacting.milligramsPerMole())
                .over(Term.number(3).times(meanAcid).plus(backbone))
                .as("SV of " + Labels.of(oil) + " from acids", "mg KOH/g", "triglyceride of its acids");
    }

    private static Term iodineValue(Oil oil) {
        boolean free = oil.kind() == OilKind.FATTY_ACID;
        List<Term> unsaturated = new ArrayList<>();
        for (AcidShare share : oil.acids().acids()) {
            if (coefficient(share.acid(), free) > 0) {
                unsaturated.add(given(share.acid(), free).times(AcidFigures.middle(oil, share)));
            }
        }
        return Term.number(100)
                .times(Term.sum(unsaturated))
                .over(AcidFigures.middles(oil))
                .as("IV of " + Labels.of(oil), "g/100 g", "iodine value of its acids, middles scaled to 100");
    }

    /** What a percent of an acid counts, asked of the engine for that acid alone. */
    private static double coefficient(FattyAcid acid, boolean free) {
        FattyAcidProfile alone = new FattyAcidProfile(List.of(new AcidShare(acid, Figure.exact(100, ""))));
        return (free ? IodineValue.ofFreeAcids(alone) : IodineValue.ofTriglycerides(alone)) / 100;
    }

    private static Given given(FattyAcid acid, boolean free) {
        return new Given(
                (free ? "free " : "") + "coefficient of " + acid.code(),
                coefficient(acid, free),
                "g/100 g",
                "iodine for each percent of it, as a " + (free ? "free acid" : "triglyceride"),
                "AOCS Cd 1c-85 (reapproved 2009), else two atoms of iodine a double bond");
    }
}
