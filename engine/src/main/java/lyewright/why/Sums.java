package lyewright.why;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.formula.ResolvedFormula.AdditionPart;
import lyewright.formula.ResolvedFormula.DispersingLiquid;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.formula.Stage;
import lyewright.makingsheet.LyeSheet;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.Purpose;

/** Sums that sentences and pictures of a sheet speak of, but its data leave to the reader. */
final class Sums {

    private static final double MILLILITRES = 1000;

    private final Ledger ledger;
    private final MakingSheet sheet;

    private Sums(Ledger ledger) {
        this.ledger = ledger;
        this.sheet = ledger.sheet();
    }

    static void addTo(Figures figures, Ledger ledger) {
        Sums sums = new Sums(ledger);
        sums.addTotals(figures);
        sums.addAlkali(figures);
        sums.addLyeJug(figures);
        sums.addOilPot(figures);
        sums.addPurposes(figures);
        sums.addOils(figures);
        sums.addAdditions(figures);
    }

    private void addTotals(Figures figures) {
        MakingSheet.Totals totals = sheet.totals();
        figures.add(
                "sums.heldBackGrams",
                "What stays in jugs and tools",
                "g",
                totals.batch() - totals.mould(),
                () -> new Account(
                        "Everything weighed, less what reaches the mould.",
                        figure("batch", "totals.batchGrams", totals.batch(), "everything weighed")
                                .minus(mould())));
        figures.add(
                "sums.waterPercentOfOils",
                "Water by the formula's rule against the oils",
                "%",
                100 * totals.water() / totals.oils(),
                () -> new Account(
                        "Water by the rule in percent of all oils as weighed.",
                        Term.percent(
                                figure("water", "totals.waterGrams", totals.water(), "water by the formula's rule"),
                                figure("oils", "totals.oilsGrams", totals.oils(), "all oils"))));
        figures.add(
                "sums.litres",
                "Room that what reaches the mould takes",
                "l",
                totals.mould() / sheet.batterDensity() / MILLILITRES,
                () -> new Account(
                        "Its mass over the density of the batter.",
                        mould().over(Ledger.figure(
                                        "density",
                                        "batterDensityGramsPerMl",
                                        sheet.batterDensity(),
                                        "g/ml",
                                        "density of the batter"))
                                .over(Term.number(MILLILITRES))));
    }

    private Term mould() {
        return figure("mould", "totals.mouldGrams", sheet.totals().mould(), "what reaches the mould");
    }

    private static Term figure(String name, String path, double grams, String meaning) {
        return Ledger.figure(name, path, grams, "g", meaning);
    }

    private void addAlkali(Figures figures) {
        LyeSheet lye = sheet.lye();
        figures.add(
                "sums.alkaliGrams",
                "All alkali as weighed",
                "g",
                lye.naohGrams() + lye.kohGrams(),
                () -> new Account("Both alkalis as they go on the balance.", AlkaliFigures.weighed(lye)));
        figures.add(
                "sums.pureAlkaliGrams",
                "All pure alkali",
                "g",
                lye.pureGrams(),
                () -> new Account("Both alkalis, each without what its purity leaves out.", AlkaliFigures.pure(lye)));
    }

    private void addLyeJug(Figures figures) {
        List<Line> all = ledger.where(line -> line.line().inLyeJug());
        List<Line> wet = all.stream().filter(line -> !line.is(Kind.ALKALI)).toList();
        figures.add(
                "sums.lyeJugGrams",
                "All that is in the lye jug",
                "g",
                grams(all),
                () -> new Account("Alkali and all that is in the jug with it, as weighed.", ledger.weighed(all)));
        figures.add(
                "sums.lyeJugLiquidsGrams",
                "What is in the lye jug before the alkali",
                "g",
                grams(wet),
                () -> new Account(
                        "All that is in the jug before the alkali goes in, as weighed.", ledger.weighed(wet)));
    }

    private void addOilPot(Figures figures) {
        List<Line> all = ledger.where(line -> line.line().stage().kind() == Stage.Kind.OILS);
        figures.add(
                "sums.oilPotGrams",
                "All that is in the oil pot",
                "g",
                grams(all),
                () -> new Account("Oils and what goes in with them, as weighed.", ledger.weighed(all)));
    }

    /** By what it is for a maker. */
    private void addPurposes(Figures figures) {
        Purpose[] all = Purpose.values();
        for (int p = 0; p < all.length; p++) {
            Purpose purpose = all[p];
            List<Line> lines = ledger.where(line -> Purpose.of(sheet, line.line()) == purpose);
            String path = "sums.poured[" + p + "]";
            figures.called(path, "sums.poured." + purpose.word());
            if (!lines.isEmpty()) {
                figures.add(
                        path + ".grams",
                        name(purpose) + ", as poured",
                        "g",
                        grams(lines),
                        () -> new Account("All of it as weighed, added up.", ledger.weighed(lines)));
            }
        }
    }

    private static String name(Purpose purpose) {
        return switch (purpose) {
            case OILS -> "All oils";
            case ALKALI -> "All alkali";
            case STOCK_LYE -> "Lye from stock";
            case SALT -> "All salt";
            case SOLIDS -> "Clay, colour and other solids";
            case FRAGRANCE -> "All fragrance";
            case OTHER -> "All other things";
            case LIQUIDS -> "Liquids in place of water";
            case WATER -> "All plain water";
        };
    }

    private static double grams(List<Line> lines) {
        return lines.stream().mapToDouble(Line::weighedGrams).sum();
    }

    private void addOils(Figures figures) {
        List<OilPart> oils = ledger.formula().oils();
        for (int i = 0; i < oils.size(); i++) {
            int place = i;
            OilPart oil = oils.get(i);
            figures.called("sums.oils[" + i + "]", "sums.oils." + oil.key());
            figures.add(
                    "sums.oils[" + i + "].percent",
                    oil.name() + ", share of all oils",
                    "%",
                    100 * oil.fraction(),
                    () -> new Account(
                            "As the formula asks.", Term.number(100).times(Written.share(ledger.formula(), place))));
            addAllOf(
                    figures,
                    "sums.oils[" + i + "].weighedGrams",
                    oil.name(),
                    line -> (line.is(Kind.OIL) && line.line().place() == place)
                            || (wetsOut(line, DispersingLiquid.From.OILS)
                                    && line.line().key().equals(oil.key())));
        }
        addAllOf(
                figures,
                "sums.waterGrams",
                "Water",
                line -> line.is(Kind.WATER) || wetsOut(line, DispersingLiquid.From.WATER));
    }

    /** What wets something out is weighed apart from the rest of it. */
    private void addAllOf(Figures figures, String path, String name, Predicate<Line> which) {
        List<Line> all = ledger.where(which);
        if (all.size() > 1) {
            figures.add(
                    path,
                    name + ", all of it",
                    "g",
                    grams(all),
                    () -> new Account("All of it as weighed, added up.", ledger.weighed(all)));
        }
    }

    private boolean wetsOut(Line line, DispersingLiquid.From from) {
        return line.is(Kind.DISPERSING_LIQUID) && sheet.batch().liquidFrom(line.line()) == from;
    }

    /** What goes into several portions is weighed several times. */
    private void addAdditions(Figures figures) {
        List<AdditionPart> additions = ledger.formula().additions();
        for (int a = 0; a < additions.size(); a++) {
            int place = a;
            List<Line> lines =
                    ledger.where(line -> line.is(Kind.ADDITION) && line.line().place() == place);
            if (!lines.isEmpty()) {
                addAddition(figures, additions.get(a), lines, a);
            }
        }
    }

    private void addAddition(Figures figures, AdditionPart addition, List<Line> lines, int place) {
        String path = "sums.additions[" + place + "]";
        String name = addition.material().name();
        figures.called(path, "sums.additions." + addition.written().of());
        figures.add(
                path + ".grams",
                name + ", all of it",
                "g",
                grams(lines),
                () -> new Account("What is weighed of it, of every portion together.", ledger.weighed(lines)));
        List<Line> withLiquid = ledger.where(line -> (line.is(Kind.ADDITION) || line.is(Kind.DISPERSING_LIQUID))
                && line.line().place() == place);
        figures.add(
                path + ".withLiquidGrams",
                name + ", with what it is wetted out with",
                "g",
                grams(withLiquid),
                () -> new Account("The addition and its liquid, as weighed.", ledger.weighed(withLiquid)));
        figures.add(
                path + ".percentOfOils",
                name + ", all of it against the oils",
                "%",
                lines.stream()
                        .mapToDouble(line -> line.weighing().percentOfOils())
                        .sum(),
                () -> new Account("Its shares of every portion, added up.", percents(lines)));
    }

    private static Term percents(List<Line> lines) {
        List<Term> parts = new ArrayList<>();
        for (Line line : lines) {
            parts.add(Ledger.figure(
                    line.label(),
                    line.path() + ".percentOfOils",
                    line.weighing().percentOfOils(),
                    "%",
                    line.words() + ", in percent of all oils"));
        }
        return Term.sum(parts);
    }
}
