package lyewright.why;

import java.util.ArrayList;
import java.util.List;
import lyewright.chemistry.BatchComposition;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.chemistry.Composition;
import lyewright.makingsheet.PortionSheet;
import lyewright.makingsheet.PortionSheet.PortionAddition;
import lyewright.why.Term.Given;

/** One portion of the batter: its share of what all have in common, and what goes into its jug only. */
final class Portions {

    private final Ledger ledger;
    private final int place;
    private final PortionSheet portion;
    private final String path;
    private final List<Line> base;
    private final List<Line> own;
    private final List<Composition> moments;

    private Portions(Ledger ledger, int place, List<Composition> moments) {
        this.moments = moments;
        this.ledger = ledger;
        this.place = place;
        this.portion = ledger.sheet().portions().get(place);
        this.path = "portions[" + place + "].";
        this.base = ledger.where(line -> line.line().inBaseBatter());
        this.own = ledger.where(line -> line.line().portion() == place);
    }

    static void addTo(Figures figures, Ledger ledger, BatchComposition composition) {
        for (int p = 0; p < ledger.sheet().portions().size(); p++) {
            new Portions(ledger, p, composition.portions().get(p).moments()).addTo(figures);
        }
    }

    private void addTo(Figures figures) {
        String of = " of portion " + portion.name();
        figures.called("portions[" + place + "]", "portions." + portion.name());
        figures.add(path + "sharePercent", "Share" + of, "%", portion.sharePercent(), this::share);
        figures.add(path + "baseBatterGrams", "Base batter" + of, "g", portion.baseBatterGrams(), this::baseBatter);
        figures.add(path + "oilsGrams", "Oils" + of, "g", portion.oilsGrams(), this::oils);
        figures.add(path + "waterGrams", "Water" + of, "g", portion.waterGrams(), this::water);
        figures.add(
                path + "waterPercentOfOils",
                "Water against oils" + of,
                "%",
                portion.waterPercentOfOils(),
                this::waterPercentOfOils);
        figures.add(path + "superfatPercent", "Superfat" + of, "%", portion.superfatPercent(), this::superfat);
        Scope scope = Scope.portion(ledger, place);
        Band.addTo(figures, scope, portion.band());
        addAdditions(figures);
        figures.called("sums." + path.substring(0, path.length() - 1), "sums.portions." + portion.name());
        figures.add(
                "sums." + path + "batterReadingGrams",
                "What the balance reads once the base batter is in the jug" + of,
                "g",
                portion.emptyGrams() + portion.baseBatterGrams(),
                () -> new Account("Base batter and the jug; nothing for a jug that is tared.", Term.sum(withJug())));
        figures.add(path + "totalGrams", "Everything" + of, "g", portion.totalGrams(), this::total);
        Moments.addTo(figures, scope, moments);
    }

    private Account share() {
        return new Account(
                "Its share of the base batter, as written or what the other portions leave.",
                Shares.percent(ledger.formula().formula(), place));
    }

    private Term fraction() {
        return Shares.of(ledger.formula().formula(), place);
    }

    private Account baseBatter() {
        return new Account(
                "Its share of the base batter: everything but what goes into portions and on top.",
                fraction().times(ledger.weighed(base).as("base", "g", "the base batter")));
    }

    /** A share of what the base batter has of something, and all that goes into this jug. */
    private Term shared(Term ofBase, List<Term> more) {
        Term sum = fraction().times(ofBase);
        for (Term term : more) {
            sum = sum.plus(term);
        }
        return sum;
    }

    private Account oils() {
        List<Line> ofBase = base.stream().filter(ledger::isOil).toList();
        List<Line> more = own.stream().filter(ledger::isOil).toList();
        return new Account(
                "Its share of the oils in the base batter, and oil that its own additions are wetted out with.",
                shared(
                        ledger.weighed(ofBase).as("base oils", "g", "oils in the base batter"),
                        more.stream().map(ledger::weighed).toList()));
    }

    private Account water() {
        List<Line> ofBase = base.stream().filter(Portions::wet).toList();
        List<Line> more = own.stream().filter(Portions::wet).toList();
        return new Account(
                "Its share of the water in the base batter, and what its own additions and their dispersions bring.",
                shared(
                        Ledger.sum(ofBase, this::waterOf).as("base water", "g", "water in the base batter"),
                        more.stream().map(this::waterOf).toList()));
    }

    private static boolean wet(Line line) {
        return line.line().water() > 0;
    }

    private Term waterOf(Line line) {
        return line.line().water() == 1
                ? ledger.weighed(line)
                : ledger.weighed(line).times(Contents.water(ledger, line));
    }

    private Given figure(String name, String field, double value, String unit, String meaning) {
        return Ledger.figure(name, path + field, value, unit, meaning);
    }

    private Account waterPercentOfOils() {
        return new Account(
                "Its water in percent of its oils.",
                Term.percent(
                        figure("water", "waterGrams", portion.waterGrams(), "g", "water in it"),
                        figure("oils", "oilsGrams", portion.oilsGrams(), "g", "oils in it")));
    }

    private Account superfat() {
        Reacting reacting = Reacting.asWeighed(ledger);
        Term equivalents = both(
                        reacting.named("base ").equivalents(base),
                        reacting.named("own ").equivalents(own),
                        own.stream().anyMatch(line -> line.line().equivalents() > 0))
                .as("equivalents", "mol", "alkali that its oils and fats can take");
        Term alkali = fraction().times(reacting.named("base ").alkali(base)).as("alkali", "mol", "alkali in it");
        boolean takers = portionTakes(base) || portionTakes(own);
        Term reaching = takers
                ? Term.call(Function.MAX, Term.number(0), alkali.minus(taken(reacting)))
                        .as("reaching", "mol", "alkali that reaches its oils")
                : alkali;
        return new Account(
                "The share of its oils that finds no alkali. Oil that something is wetted out with leaves the base"
                        + " batter leaner, and acid in one portion takes alkali there only.",
                Superfat.percent(reaching, equivalents));
    }

    private static boolean portionTakes(List<Line> lines) {
        return lines.stream().anyMatch(Reacting::takesFirst);
    }

    private Term taken(Reacting reacting) {
        Term ofBase = reacting.named("base ").taken(base);
        Term ofOwn = reacting.named("own ").taken(own);
        if (!portionTakes(base)) {
            return ofOwn;
        }
        return both(ofBase, ofOwn, portionTakes(own)).as("taken", "mol", "alkali that acids in it take first");
    }

    private Term both(Term ofBase, Term ofOwn, boolean any) {
        Term part = fraction().times(ofBase);
        return any ? part.plus(ofOwn) : part;
    }

    private void addAdditions(Figures figures) {
        List<Line> additions =
                own.stream().filter(line -> line.is(Kind.ADDITION)).toList();
        for (int i = 0; i < portion.additions().size(); i++) {
            add(figures, path + "additions[" + i + "].", portion.additions().get(i), additions.get(i));
        }
    }

    private void add(Figures figures, String at, PortionAddition addition, Line line) {
        String what = line.words();
        figures.called(
                at.substring(0, at.length() - 1),
                "portions." + portion.name() + "." + line.line().key());
        figures.add(
                at + "grams",
                what + ": as weighed",
                "g",
                addition.grams(),
                () -> new Account("As weighed, without the liquid it is wetted out with.", ledger.weighed(line)));
        figures.add(at + "liquidGrams", what + ": its liquid", "g", addition.liquidGrams(), () -> liquid(line));
        figures.add(
                "sums." + at + "grams",
                what + ": with what it is wetted out with",
                "g",
                addition.grams() + addition.liquidGrams(),
                () -> new Account("The addition and its liquid, as weighed.", ledger.weighed(withLiquid(line))));
        figures.add(
                at + "gramsPerKgOils",
                what + ": for each kilogram of all oils",
                "g",
                addition.gramsPerKilogramOils(),
                () -> perKilogram(line, allOils(), "all oils of the batch"));
        figures.add(
                at + "gramsPerKgPortionOils",
                what + ": for each kilogram of the portion's oils",
                "g",
                addition.gramsPerKilogramPortionOils(),
                () -> perKilogram(line, allOils().times(fraction()), "the portion's share of all oils"));
        figures.add(
                at + "readingGrams",
                what + ": what the balance reads under the jug after it",
                "g",
                addition.readingGrams(),
                () -> reading(line));
    }

    private List<Line> liquidOf(Line line) {
        return own.stream()
                .filter(other -> other.is(Kind.DISPERSING_LIQUID)
                        && other.line().place() == line.line().place())
                .toList();
    }

    private List<Line> withLiquid(Line line) {
        List<Line> both = new ArrayList<>(List.of(line));
        both.addAll(liquidOf(line));
        return both;
    }

    private Account liquid(Line line) {
        List<Line> liquid = liquidOf(line);
        return liquid.isEmpty()
                ? new Account("It is not wetted out.", Term.number(0))
                : new Account("What it is wetted out with, as weighed.", ledger.weighed(liquid));
    }

    private Given allOils() {
        return Ledger.figure("oils", "totals.oilsGrams", ledger.sheet().totals().oils(), "g", "all oils of the batch");
    }

    private Account perKilogram(Line line, Term oils, String which) {
        return new Account(
                "Grams for a kilogram of " + which + ".",
                Term.number(1000).times(ledger.weighed(line)).over(oils));
    }

    private Given baseFigure() {
        return figure("base", "baseBatterGrams", portion.baseBatterGrams(), "g", "base batter poured into its jug");
    }

    private List<Term> withJug() {
        List<Term> poured = new ArrayList<>();
        if (portion.emptyGrams() > 0) {
            poured.add(new Given(
                    "empty jug", portion.emptyGrams(), "g", "the jug's empty weight", "given with the sheet"));
        }
        poured.add(baseFigure());
        return poured;
    }

    private Account reading(Line line) {
        List<Term> poured = withJug();
        int upTo = own.indexOf(line) + liquidOf(line).size();
        own.subList(0, upTo + 1).forEach(other -> poured.add(ledger.weighed(other)));
        return new Account("Base batter and all that is tipped in by then.", Term.sum(poured));
    }

    private Account total() {
        return new Account(
                "Base batter and all that goes into its jug.",
                own.isEmpty() ? baseFigure() : baseFigure().plus(ledger.weighed(own)));
    }
}
