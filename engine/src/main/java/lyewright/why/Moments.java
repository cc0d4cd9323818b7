package lyewright.why;

import java.util.List;
import java.util.function.Supplier;
import lyewright.chemistry.Composition;
import lyewright.chemistry.Composition.Moment;
import lyewright.chemistry.Composition.Substance;
import lyewright.formula.Process;
import lyewright.formula.ResolvedFormula.DispersingLiquid.From;
import lyewright.material.Tables;
import lyewright.why.Term.Given;

/** What batter and bar consist of when poured, cut and cured: of the batch or of one portion. */
final class Moments {

    private final Scope scope;
    private final List<Composition> moments;

    private Moments(Scope scope, List<Composition> moments) {
        this.scope = scope;
        this.moments = moments;
    }

    static void addTo(Figures figures, Scope scope, List<Composition> moments) {
        Moments all = new Moments(scope, moments);
        for (int m = 0; m < moments.size(); m++) {
            all.add(figures, m);
        }
    }

    /** Whether a line's water is the rule's, or comes beside it. */
    static boolean isAdded(Ledger ledger, Line line) {
        return switch (line.line().kind()) {
            case OIL -> false;
            case WATER -> true;
            case DISPERSING_LIQUID -> ledger.batch().liquidFrom(line.line()) == From.WATER;
            case ADDITION ->
                ledger.formula().additions().get(line.line().place()).written().replacesWater();
            case ALKALI -> ledger.formula().alkali().stock().isPresent();
        };
    }

    /** The path of a moment. */
    static String path(Scope scope, int m) {
        return scope.path() + "composition[" + m + "]";
    }

    private String path(int m) {
        return path(scope, m);
    }

    private void add(Figures figures, int m) {
        Composition moment = moments.get(m);
        String path = path(m);
        String when = when(scope, moment);
        figures.called(path, scope.name() + "composition." + moment.moment().word());
        figures.called(
                path + ".water", scope.name() + "composition." + moment.moment().word() + ".water");
        figures.add(path + ".totalGrams", "Everything of " + when, "g", moment.totalGrams(), () -> total(moment));
        figures.add(
                path + ".reactedLowPercent",
                "Least that has reacted of " + when,
                "%",
                moment.reactedLowPercent(),
                () -> reacted(moment, moment.reactedLowPercent(), "least"));
        figures.add(
                path + ".reactedHighPercent",
                "Most that has reacted of " + when,
                "%",
                moment.reactedHighPercent(),
                () -> reacted(moment, moment.reactedHighPercent(), "most"));
        addSubstances(figures, m);
        addShares(figures, m);
        Kinds.addTo(figures, scope, moment, path);
        new MomentWater(scope, moments, m).addTo(figures);
    }

    /** A moment in words. */
    static String when(Scope scope, Composition moment) {
        return switch (moment.moment()) {
            case POUR -> scope.words() + " as poured";
            case CUT -> scope.words() + " when it is cut";
            case CURED -> scope.words() + " once cured";
        };
    }

    private void addSubstances(Figures figures, int m) {
        Composition moment = moments.get(m);
        Supplier<Substances> terms = once(() -> Substances.of(scope, moment.moment() == Moment.CURED));
        for (int s = 0; s < moment.substances().size(); s++) {
            Substance substance = moment.substances().get(s);
            String path = path(m) + ".substances[" + s + "]";
            String word = moment.moment().word();
            String name = Substances.wordFor(substance, moment.substances());
            figures.called(path, scope.name() + "composition." + word + "." + name);
            String title = substance.name() + " in " + when(scope, moment);
            figures.add(
                    path + ".grams",
                    title,
                    "g",
                    substance.grams(),
                    () -> isWaterOfBar(moment, substance)
                            ? new MomentWater(scope, moments, m).left()
                            : new Account(sentence(substance), terms.get().grams(substance)));
            figures.add(
                    path + ".percent",
                    title + ", share of everything",
                    "%",
                    substance.percent(),
                    () -> percent(path, substance, m));
        }
    }

    private static <T> Supplier<T> once(Supplier<T> make) {
        Object[] made = new Object[1];
        return () -> {
            if (made[0] == null) {
                made[0] = make.get();
            }
            @SuppressWarnings("unchecked")
            T known = (T) made[0];
            return known;
        };
    }

    private static boolean isWaterOfBar(Composition moment, Substance substance) {
        return moment.moment() == Moment.CURED && substance.kind() == Composition.Kind.WATER;
    }

    private static String sentence(Substance substance) {
        return switch (substance.kind()) {
            case SOAP -> "Fat or acid that finds alkali, with the alkali joined to it, less what that sets free.";
            case GLYCEROL -> "A third of a molecule for each alkali that a glyceride takes, or what was added.";
            case OIL_LEFT -> "What finds no alkali, or has not met it yet.";
            case ACID_LEFT -> "Acid that finds no alkali, or has not met it yet.";
            case ACID_SALT -> "Acid of an addition with the alkali it takes, less the water that forms.";
            case UNSAPONIFIABLE -> "Half of what the oil's standard allows, since standards give only a maximum.";
            case SALT -> "The common salt in it.";
            case WATER -> "The water in it.";
            case FREE_ALKALI -> "Alkali that nothing takes, or that nothing has taken yet.";
            case INERT, OTHER -> "What is neither water, salt, fat nor acid of it.";
        };
    }

    private Given totalFigure(int m) {
        return Ledger.figure(
                "everything", path(m) + ".totalGrams", moments.get(m).totalGrams(), "g", "everything at that moment");
    }

    private Account percent(String path, Substance substance, int m) {
        return new Account(
                "Its grams against everything.",
                Term.percent(
                        Ledger.figure("grams", path + ".grams", substance.grams(), "g", substance.name()),
                        totalFigure(m)));
    }

    private Account total(Composition moment) {
        if (moment.moment() != Moment.CURED) {
            return new Account(
                    "Everything as weighed: until then nothing is lost.", Ledger.sum(scope.lines(), scope::mass));
        }
        return new Account(
                "All that is not water, with the cured bar's water; never more than was poured.",
                new Cured(scope.reacting(), scope.lines()).grams());
    }

    private Account reacted(Composition moment, double percent, String which) {
        if (moment.moment() == Moment.POUR) {
            return new Account("When it is poured nothing is taken to have reacted.", Term.number(0));
        }
        if (moment.moment() == Moment.CURED) {
            return new Account("Once cured all has reacted that can.", Term.number(100));
        }
        Tables.Practice practice = scope.ledger().tables().practice(practice());
        return new Account(
                "How far it goes until the cut depends on warmth and time; these are the usual ends.",
                new Given(which, percent, "%", practice.what(), practice.source()));
    }

    private String practice() {
        Process process = scope.ledger().formula().formula().process();
        if (process.make() == Process.Make.COOKED) {
            return "reacted-at-cut-cooked";
        }
        boolean warm = process.make() == Process.Make.OVEN || process.oven().isPresent();
        return warm ? "reacted-at-cut-oven" : "reacted-at-cut-cold";
    }

    private void addShares(Figures figures, int m) {
        Composition moment = moments.get(m);
        String path = path(m);
        if (moment.totalFattyMatterPercent().isEmpty()) {
            String why = "While the reaction is under way nobody knows what there is.";
            figures.absent(path + ".totalFattyMatterPercent", "Total fatty matter", "%", why);
            figures.absent(path + ".chloridePercent", "Common salt", "%", why);
            return;
        }
        FattyMatter matter = new FattyMatter(scope, moment.moment() == Moment.CURED);
        figures.add(
                path + ".totalFattyMatterPercent",
                "Total fatty matter of " + when(scope, moment),
                "%",
                moment.totalFattyMatterPercent().get(),
                () -> new Account(
                        "What acid would set free of it: fatty acids, fats, free fatty acids and unsaponifiable matter"
                                + " (ISO 685).",
                        Term.percent(matter.grams(), totalFigure(m))));
        figures.add(
                path + ".chloridePercent",
                "Common salt in " + when(scope, moment),
                "%",
                moment.chloridePercent().orElse(0.0),
                () -> new Account(
                        "All common salt, toppings' too, against everything.",
                        Term.percent(Substances.of(scope, false).commonSalt(), totalFigure(m))));
    }
}
