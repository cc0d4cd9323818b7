package lyewright.why;

import lyewright.chemistry.BatchLine;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.formula.Amount;
import lyewright.formula.Formula;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.ResolvedFormula.AdditionPart;
import lyewright.formula.ResolvedFormula.DispersingLiquid.From;
import lyewright.formula.Stage;
import lyewright.material.Additive;
import lyewright.measure.WrittenMass;
import lyewright.why.Term.Given;

/** The mass of a line before rounding, from what the formula says of it. */
final class ExactMass {

    private final Ledger ledger;
    private final ResolvedFormula formula;

    ExactMass(Ledger ledger) {
        this.ledger = ledger;
        this.formula = ledger.formula();
    }

    Account account(Line line) {
        return switch (line.line().kind()) {
            case OIL -> oil(line);
            case ADDITION -> new Account("As much as the formula asks for.", addition(line));
            case DISPERSING_LIQUID -> liquid(line);
            case WATER -> new ExactWater(ledger).account();
            case ALKALI -> new ExactAlkali(ledger).account(line);
        };
    }

    private Account oil(Line line) {
        Solved solved = new Solved(ledger);
        Term all = Written.share(formula, line.line().place()).times(solved.oils());
        Term taken = Ledger.sum(ledger.where(other -> takenFrom(line, other)), Line::exact);
        boolean none = ledger.where(other -> takenFrom(line, other)).isEmpty();
        String less = none ? "" : ", less what other things are wetted out with";
        return new Account("Its share of all oils" + less + ". " + solved.sentence(), none ? all : all.minus(taken))
                .holds(solved.equations());
    }

    private boolean takenFrom(Line oil, Line other) {
        return other.is(Kind.DISPERSING_LIQUID)
                && ledger.batch().liquidFrom(other.line()) == From.OILS
                && other.line().key().equals(oil.line().key());
    }

    private Account liquid(Line line) {
        AdditionPart addition = formula.additions().get(line.line().place());
        double ratio = addition.liquid().orElseThrow().ratio();
        String typed = addition.written().disperse().orElseThrow().ratioText();
        Line solid = ledger.where(other -> isSolidOf(line.line(), other.line())).get(0);
        return new Account(
                "What " + addition.material().name() + " is wetted out with, taken " + from(line) + ".",
                solid.exact()
                        .times(new Given(
                                "liquid to solid",
                                ratio,
                                "g/g",
                                "grams of liquid to a gram (" + typed + ")",
                                Sources.FORMULA)));
    }

    private String from(Line line) {
        return switch (ledger.batch().liquidFrom(line.line())) {
            case WATER -> "out of the batch's water";
            case OILS -> "out of the batch's oils";
            case EXTRA -> "on top of everything";
        };
    }

    private static boolean isSolidOf(BatchLine liquid, BatchLine other) {
        return other.kind() == Kind.ADDITION && other.place() == liquid.place() && other.portion() == liquid.portion();
    }

    private Term addition(Line line) {
        AdditionPart addition = formula.additions().get(line.line().place());
        Term whole = amount(addition);
        boolean shared =
                addition.stage() == Stage.Kind.EVERY_PORTION && line.line().portion() >= 0;
        return shared ? whole.times(Shares.of(formula.formula(), line.line().portion())) : whole;
    }

    private Term amount(AdditionPart addition) {
        Amount amount = addition.written().amount();
        if (amount instanceof Amount.Percent percent) {
            return percent.base() == Amount.Base.BATCH
                    ? rate(percent).times(new Solved(ledger).batch())
                    : rate(percent).times(oilsOf(percent.base(), addition));
        }
        if (amount instanceof Amount.Per per) {
            return rate(per).times(oilsOf(per.base(), addition));
        }
        if (amount instanceof Amount.Weight weight) {
            return scaled(mass(addition, weight.mass()), weight.fixed());
        }
        Amount.Bulk bulk = (Amount.Bulk) amount;
        return scaled(volume(addition, bulk), bulk.fixed());
    }

    private static Term rate(Amount.Percent percent) {
        return Written.percent("rate", percent.share().percent().doubleValue(), percent.toString())
                .over(Term.number(100));
    }

    private static Term rate(Amount.Per per) {
        double grams = per.mass().grams() / per.per().grams().doubleValue();
        return new Given("rate", grams, "g/g", per.toString(), Sources.FORMULA);
    }

    private Term oilsOf(Amount.Base base, AdditionPart addition) {
        Stage stage = addition.written().stage();
        if (base != Amount.Base.PORTION_OILS || stage.kind() != Stage.Kind.PORTION) {
            return ledger.exactOils();
        }
        return ledger.exactOils().times(Shares.of(formula.formula(), Shares.place(formula, stage.portion())));
    }

    private static Term mass(AdditionPart addition, WrittenMass mass) {
        return Written.mass("written", mass, addition.material().name() + " as written");
    }

    private static Term volume(AdditionPart addition, Amount.Bulk bulk) {
        Additive material = addition.material();
        Given millilitres = new Given(
                "written",
                bulk.volume().millilitres(),
                "ml",
                material.name() + " as written (" + bulk.volume() + ")",
                Sources.FORMULA);
        return millilitres.times(Contents.density(material));
    }

    /** What is written beside oils in masses belongs to them, and grows as they do. */
    private Term scaled(Term written, boolean fixed) {
        return scaled(ledger, written, fixed);
    }

    static Term scaled(Ledger ledger, Term written, boolean fixed) {
        Formula formula = ledger.formula().formula();
        return formula.inMasses() && !fixed
                ? written.times(ledger.exactOils()).over(Written.allOils(ledger.formula()))
                : written;
    }
}
