package lyewright.why;

import java.util.ArrayList;
import java.util.List;
import lyewright.chemistry.BatchComposition;
import lyewright.chemistry.Composition.Substance;
import lyewright.chemistry.WorstBar;

/** Where portions become bars of their own: the bar that has most of a substance. */
final class WorstBars {

    private WorstBars() {}

    static void addTo(Figures figures, BatchComposition composition) {
        for (int i = 0; i < composition.worstBar().size(); i++) {
            WorstBar worst = composition.worstBar().get(i);
            String path = "worstBar[" + i + "]";
            figures.called(path, "worstBar." + worst.substance().name());
            figures.add(
                    path + ".percent",
                    worst.substance().name() + " in the bar that has most of it, " + worst.portion(),
                    "%",
                    worst.percent(),
                    () -> new Account(
                            "The most among the portions' cured bars, toppings left out.",
                            most(composition, worst.substance())));
        }
    }

    private static Term most(BatchComposition composition, Substance wanted) {
        List<Term> percents = new ArrayList<>();
        for (int p = 0; p < composition.portions().size(); p++) {
            List<Substance> substances = composition.portions().get(p).cured().substances();
            for (int s = 0; s < substances.size(); s++) {
                if (alike(substances.get(s), wanted)) {
                    percents.add(Ledger.figure(
                            "in portion " + (p + 1),
                            path(composition.portions().get(p), p, s),
                            substances.get(s).percent(),
                            "%",
                            "in portion " + composition.portions().get(p).name()));
                }
            }
        }
        return percents.size() == 1 ? percents.get(0) : Term.call(Function.MAX, percents.toArray(Term[]::new));
    }

    private static String path(BatchComposition.Portion portion, int p, int s) {
        int cured = portion.moments().indexOf(portion.cured());
        return "portions[" + p + "].composition[" + cured + "].substances[" + s + "].percent";
    }

    private static boolean alike(Substance one, Substance other) {
        return one.kind() == other.kind()
                && one.name().equals(other.name())
                && one.of().equals(other.of());
    }
}
