package lyewright.why;

import java.util.Optional;
import lyewright.formula.AlkaliChoice;
import lyewright.material.Alkali;
import lyewright.measure.WrittenMass;
import lyewright.why.Term.Given;

/** Each alkali's share of the moles, where there are two. */
final class AlkaliMix {

    private final Ledger ledger;

    AlkaliMix(Ledger ledger) {
        this.ledger = ledger;
    }

    /** One alkali's share of all moles. */
    Term share(Alkali alkali) {
        AlkaliChoice choice = ledger.formula().formula().alkali();
        if (choice instanceof AlkaliChoice.Mix mix && mix.by() == AlkaliChoice.Basis.MOLES) {
            return typed(mix, alkali).over(Term.number(100));
        }
        Term both = moles(Alkali.SODIUM).plus(moles(Alkali.POTASSIUM));
        return moles(alkali)
                .over(both)
                .as("share of " + Alkalis.formula(alkali), "", "its share of the alkali's moles");
    }

    private Term moles(Alkali alkali) {
        AlkaliChoice choice = ledger.formula().formula().alkali();
        Term part =
                choice instanceof AlkaliChoice.Mix mix ? part(mix, alkali) : part((AlkaliChoice.Given) choice, alkali);
        return part.over(Alkalis.molarMass(alkali));
    }

    private static Given typed(AlkaliChoice.Mix mix, Alkali alkali) {
        double percent = (alkali == Alkali.SODIUM ? mix.sodium() : mix.potassium())
                .percent()
                .doubleValue();
        return Written.percent(
                "written " + alkali.word(),
                percent,
                alkali.word() + "'s share by " + mix.by().word());
    }

    private Term part(AlkaliChoice.Mix mix, Alkali alkali) {
        Given typed = typed(mix, alkali);
        return mix.by() == AlkaliChoice.Basis.AS_WEIGHED ? typed.times(Alkalis.purity(ledger, alkali)) : typed;
    }

    private Term part(AlkaliChoice.Given given, Alkali alkali) {
        Optional<WrittenMass> mass = alkali == Alkali.SODIUM ? given.sodium() : given.potassium();
        Given written =
                Written.mass("written " + alkali.word(), mass.orElseThrow(), Alkalis.name(alkali) + " as written");
        boolean pure = given.as().isPresent() && given.as().get() == AlkaliChoice.As.PURE;
        return pure ? written : written.times(Alkalis.purity(ledger, alkali));
    }
}
