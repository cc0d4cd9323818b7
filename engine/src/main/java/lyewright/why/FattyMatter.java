package lyewright.why;

import java.util.ArrayList;
import java.util.List;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.material.Additive;
import lyewright.material.OilBlend;

/**
 * Total fatty matter: all oils and fats there were, fatty acids among the additions; less the glycerol that soap has lost, with
 * the water that acid would put in its place.
 */
final class FattyMatter {

    private final Scope scope;
    private final boolean cured;

    FattyMatter(Scope scope, boolean cured) {
        this.scope = scope;
        this.cured = cured;
    }

    Term grams() {
        List<Term> fats = new ArrayList<>();
        List<Term> glycerides = new ArrayList<>();
        for (Line line : scope.lines()) {
            if (scope.ledger().isOil(line)) {
                fats.add(scope.mass(line));
                addGlycerides(line, glycerides);
            } else if (line.is(Kind.ADDITION)) {
                addAddition(line, fats, glycerides);
            }
        }
        Term all = Term.sum(fats).as("fats", "g", "oils, fats and fatty acids");
        if (!cured || glycerides.isEmpty()) {
            return all;
        }
        Term moles = Term.sum(glycerides)
                .over(Reacting.milligramsPerMole())
                .times(new Extents(scope).ester())
                .as("saponified", "mol", "alkali that glycerides have taken");
        Term change = OilSubstances.glycerolMolarMass()
                .over(Term.number(3))
                .minus(OilSubstances.waterMolarMass())
                .as("change", "g/mol", "glycerol lost and water put in its place");
        return all.minus(moles.times(change));
    }

    private void addGlycerides(Line line, List<Term> glycerides) {
        OilPart part = Contents.oil(scope.ledger(), line);
        for (OilBlend.Part in : part.parts()) {
            Term ester = OilSubstances.ester(in.oil());
            if (Parts.value(ester) > 0) {
                Term mass = scope.mass(line);
                glycerides.add((part.parts().size() == 1 ? mass : mass.times(Contents.share(part, in))).times(ester));
            }
        }
    }

    private void addAddition(Line line, List<Term> fats, List<Term> glycerides) {
        Ledger ledger = scope.ledger();
        Additive material =
                ledger.formula().additions().get(line.line().place()).material();
        Parts parts = new Parts(ledger.tables(), material);
        if (Parts.value(parts.fat()) > 0) {
            fats.add(scope.mass(line).times(parts.fat()));
            if (!line.line().onTop()) {
                glycerides.add(scope.mass(line).times(Contents.fat(material)));
            }
        }
        if (material.makeup().acidMolesPerGram() > 0 && parts.names().fatty()) {
            fats.add(scope.mass(line).times(parts.acid()));
        }
    }
}
