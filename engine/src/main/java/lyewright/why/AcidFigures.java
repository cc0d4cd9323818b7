package lyewright.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import lyewright.chemistry.Keeping;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.chemistry.OxidationIndices;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.material.AcidShare;
import lyewright.material.FattyAcid;
import lyewright.material.Figure;
import lyewright.material.Oil;
import lyewright.material.OilBlend;
import lyewright.why.Term.Given;

/** The fatty acids of all oils. */
final class AcidFigures {

    private final ResolvedFormula formula;
    private final OilPhaseAcids acids;

    AcidFigures(Ledger ledger) {
        this.formula = ledger.formula();
        this.acids =
                OilPhaseAcids.of(ledger.sheet().batch(), ledger.sheet().filled().oilsGrams());
    }

    static void addTo(Figures figures, Ledger ledger) {
        new AcidFigures(ledger).addTo(figures);
    }

    private void addTo(Figures figures) {
        for (int i = 0; i < acids.acids().size(); i++) {
            add(figures, "fattyAcids[" + i + "]", acids.acids().get(i));
        }
        figures.add(
                "unknownPercent",
                "Oils whose fatty acids are not known",
                "%",
                acids.unknownPercent(),
                () -> new Account(
                        "Their share of all oils; they count in none of the acids' figures.",
                        Term.number(100)
                                .times(Term.sum(shares(oil -> !oil.acids().known(), oil -> Term.number(1))))));
        new OilPhaseValues(this, acids).addTo(figures);
        addKeeping(figures);
    }

    private void add(Figures figures, String path, OilPhaseAcids.Share share) {
        FattyAcid acid = share.acid();
        String name = acid.commonName() + ", " + acid.code();
        figures.called(path, "fattyAcids." + acid.code());
        figures.add(path + ".lowPercent", "Least " + name, "%", share.lowPercent(), () -> end(acid, true));
        figures.add(path + ".percent", "Share of " + name, "%", share.percent(), () -> middle(acid));
        figures.add(path + ".highPercent", "Most " + name, "%", share.highPercent(), () -> end(acid, false));
    }

    /** A term of each oil that is meant, times that oil's share of all oils. */
    List<Term> shares(Predicate<Oil> which, Function<Oil, Term> of) {
        List<Term> terms = new ArrayList<>();
        for (int i = 0; i < formula.oils().size(); i++) {
            OilPart part = formula.oils().get(i);
            for (OilBlend.Part in : part.parts()) {
                if (which.test(in.oil())) {
                    terms.add(share(i, part, in, of.apply(in.oil())));
                }
            }
        }
        return terms;
    }

    private Term share(int i, OilPart part, OilBlend.Part in, Term term) {
        Term share = Written.share(formula, i);
        Term own = part.parts().size() == 1 ? share : share.times(Contents.share(part, in));
        return term instanceof Term.Plain ? own : own.times(term);
    }

    private Term known() {
        return Term.sum(shares(oil -> oil.acids().known(), oil -> Term.number(1)))
                .as("known", "", "share of the oils whose acids are known");
    }

    private static Optional<AcidShare> in(Oil oil, FattyAcid acid) {
        return oil.acids().acids().stream().filter(a -> a.acid().equals(acid)).findFirst();
    }

    private Account end(FattyAcid acid, boolean low) {
        return new Account(
                "Each oil's published " + (low ? "least" : "most")
                        + ", mixed by the oils' masses; an oil that does not list it" + " counts nothing.",
                Term.sum(shares(
                                oil -> in(oil, acid).isPresent(),
                                oil -> end(oil, in(oil, acid).orElseThrow(), low)))
                        .over(known()));
    }

    private static Given end(Oil oil, AcidShare share, boolean low) {
        Figure figure = share.share();
        return new Given(
                share.acid().code() + " in " + Labels.of(oil),
                low ? figure.low() : figure.high(),
                "%",
                (low ? "published least " : "published most ") + share.acid().commonName() + " of " + oil.name(),
                figure.source());
    }

    private Account middle(FattyAcid acid) {
        return new Account(
                        "Each oil's middle, scaled so that its acids come to 100, mixed by the oils' masses.",
                        Term.sum(shares(
                                        oil -> in(oil, acid).isPresent(),
                                        oil -> middle(oil, in(oil, acid).orElseThrow())
                                                .times(Term.number(100))
                                                .over(middles(oil))))
                                .over(known()))
                .note("'lyewright oils KEY' lists all acids of an oil.");
    }

    /** The middle of an acid's published range. */
    static Given middle(Oil oil, AcidShare share) {
        Figure figure = share.share();
        Given middle = new Given(
                share.acid().code() + " in " + Labels.of(oil),
                figure.middle(),
                "%",
                "middle of the published " + share.acid().commonName() + " of " + oil.name(),
                figure.source());
        return figure.low() < figure.high() ? middle.spread(Spread.of(figure, 1)) : middle;
    }

    static Given middles(Oil oil) {
        return new Given(
                "middles of " + Labels.of(oil),
                oil.acids().sumOfMiddles(),
                "%",
                "what the middles of all its acids come to",
                OilSubstances.acidSources(oil));
    }

    /** The mean molar mass of an oil's acids, by numbers of molecules. */
    static Given meanAcid(Oil oil) {
        return new Given(
                "mean acid of " + Labels.of(oil),
                oil.acids().numberAverageMolarMass(),
                "g/mol",
                "mean molar mass of its acids, by molecules, middles scaled to 100",
                OilSubstances.acidSources(oil));
    }

    private void addKeeping(Figures figures) {
        Optional<Keeping> keeping = Keeping.of(acids);
        if (keeping.isEmpty()) {
            figures.absent("keeping", "How the oils keep", "", "The fatty acids of no oil are known.");
            return;
        }
        OxidationIndices indices = keeping.get().indices();
        acids.iodineValue()
                .ifPresentOrElse(
                        value -> figures.add(
                                "keeping.iodineValue",
                                "Iodine value",
                                "g iodine/100 g",
                                value,
                                () -> new Account("The one computed from the fatty acids.", iodineFigure(value))),
                        () -> figures.absent(
                                "keeping.iodineValue",
                                "Iodine value",
                                "g iodine/100 g",
                                "The acids of no oil but waxes are known."));
        new KeepingFigures(acids, indices).addTo(figures);
    }

    private static Given iodineFigure(double value) {
        return Ledger.figure(
                "iodine value", "oilPhase.iodineValueFromAcids", value, "g/100 g", "iodine value from the fatty acids");
    }
}
