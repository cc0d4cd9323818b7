package lyewright.why;

import java.util.List;
import lyewright.chemistry.Composition;
import lyewright.chemistry.Composition.Moment;
import lyewright.why.Term.Given;

/** Where the water of one moment came from and went. */
final class MomentWater {

    private final Scope scope;
    private final List<Composition> moments;
    private final Composition moment;
    private final String path;

    MomentWater(Scope scope, List<Composition> moments, int m) {
        this.scope = scope;
        this.moments = moments;
        this.moment = moments.get(m);
        this.path = Moments.path(scope, m);
    }

    void addTo(Figures figures) {
        Composition.Water water = moment.water();
        String of = " of " + Moments.when(scope, moment);
        Ledger ledger = scope.ledger();
        figures.add(
                path + ".water.addedGrams",
                "Water by the rule" + of,
                "g",
                water.addedGrams(),
                () -> new Account(
                        "Plain water, water for wetting out, a stock lye's, and what is water in liquids that replace it.",
                        scope.water(line -> Moments.isAdded(ledger, line))));
        figures.add(
                path + ".water.broughtGrams",
                "Water that other things bring" + of,
                "g",
                water.broughtGrams(),
                () -> new Account(
                        "Water in potash and in other additions.",
                        scope.water(line -> !Moments.isAdded(ledger, line))));
        figures.add(path + ".water.formedGrams", "Water that forms" + of, "g", water.formedGrams(), () -> formed());
        figures.add(path + ".water.lostGrams", "Water that has dried off" + of, "g", water.lostGrams(), () -> lost());
    }

    private Account formed() {
        if (moment.moment() == Moment.POUR) {
            return new Account("Nothing has reacted yet.", Term.number(0));
        }
        return new Account(
                "A molecule of water for each molecule of acid that alkali neutralises.",
                new Cured(scope.reacting(), scope.lines()).formed());
    }

    private Account lost() {
        if (moment.moment() != Moment.CURED) {
            return new Account("Nothing is taken to dry before the cut.", Term.number(0));
        }
        return new Account(
                "What was poured less what is left once cured.",
                totalOf(0, "poured").minus(totalOf(2, "cured")));
    }

    private Given totalOf(int m, String name) {
        return Ledger.figure(
                name,
                Moments.path(scope, m) + ".totalGrams",
                moments.get(m).totalGrams(),
                "g",
                "everything of " + Moments.when(scope, moments.get(m)));
    }

    /** The water of the bar. */
    Account left() {
        Composition.Water water = moment.water();
        return new Account(
                "What was put in and formed, less what has dried off.",
                Ledger.figure("added", path + ".water.addedGrams", water.addedGrams(), "g", "water by the rule")
                        .plus(Ledger.figure(
                                "brought", path + ".water.broughtGrams", water.broughtGrams(), "g", "water brought"))
                        .plus(Ledger.figure(
                                "formed", path + ".water.formedGrams", water.formedGrams(), "g", "water formed"))
                        .minus(Ledger.figure(
                                "lost", path + ".water.lostGrams", water.lostGrams(), "g", "water dried off")));
    }
}
