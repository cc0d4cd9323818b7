package lyewright.web.make;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.fill.CutPlan;
import lyewright.formula.MaterialNames;
import lyewright.formula.OilLine;
import lyewright.records.equipment.JugUse;
import lyewright.records.equipment.KeptJug;
import lyewright.web.Frame;
import lyewright.web.Hints;
import lyewright.web.make.MakeChoice.Much;
import lyewright.words.Figures;

/**
 * The page on which a recipe becomes a sheet.
 *
 * @param frame around it
 * @param answer what the choice comes to
 * @param versions numbers of the recipe's versions, the newest first
 * @param moulds to choose from
 * @param ways of saying how much
 * @param planned how the mould is cut unless told otherwise; empty where it is not
 * @param jugs which jug stands for which vessel, where the workshop has any
 * @param oils of the recipe
 * @param others every oil that may come in place of one
 * @param hints in the units of the workshop
 */
public record MakePage(
        Frame frame,
        MakeAnswer answer,
        List<Integer> versions,
        List<Option> moulds,
        List<Option> ways,
        String planned,
        List<JugChoice> jugs,
        List<Option> oils,
        List<String> others,
        Hints hints) {

    /** Copies its lists. */
    public MakePage {
        versions = List.copyOf(versions);
        moulds = List.copyOf(moulds);
        ways = List.copyOf(ways);
        jugs = List.copyOf(jugs);
        oils = List.copyOf(oils);
        others = List.copyOf(others);
    }

    /**
     * Something to choose.
     *
     * @param value as in the address
     * @param label as it reads
     * @param chosen whether it is
     */
    public record Option(String value, String label, boolean chosen) {}

    /**
     * A vessel and the jugs that may stand for it.
     *
     * @param name of the field
     * @param label what the vessel is called
     * @param options the jugs
     */
    public record JugChoice(String name, String label, List<Option> options) {

        /** An id for the field. */
        public String id() {
            return "f-" + name.replaceAll("[^A-Za-z0-9-]", "-");
        }
    }

    static MakePage of(Bench bench, MakeAnswer answer, Frame frame) {
        MakeChoice choice = bench.choice();
        return new MakePage(
                frame,
                answer,
                bench.versions().stream().map(version -> version.number()).toList(),
                moulds(bench),
                ways(bench),
                bench.mould()
                        .flatMap(mould -> mould.cutPlan())
                        .map(MakePage::plan)
                        .orElse(""),
                jugs(bench),
                bench.formula().oils().stream()
                        .map(OilLine::key)
                        .map(key ->
                                new Option(key, Swap.name(bench.names(), key), key.equals(choice.text(MakeChoice.OUT))))
                        .toList(),
                bench.names().all(MaterialNames.Place.OILS).stream()
                        .map(named -> Swap.name(bench.names(), named.key()))
                        .toList(),
                Hints.of(bench.workshop().units()));
    }

    private static List<Option> moulds(Bench bench) {
        String chosen = bench.choice().text(MakeChoice.MOULD);
        List<Option> moulds = new ArrayList<>();
        bench.moulds()
                .forEach(mould -> moulds.add(
                        new Option(mould.id(), mould.name(), mould.id().equals(chosen))));
        moulds.add(new Option(
                MakeChoice.TYPED, "another, typed here", bench.choice().mouldIsTyped()));
        moulds.add(new Option("", "none", chosen.isEmpty()));
        if (moulds.stream().noneMatch(Option::chosen)) {
            moulds.add(new Option(chosen, "one that is not here any more", true));
        }
        return moulds;
    }

    private static List<Option> ways(Bench bench) {
        List<Option> ways = new ArrayList<>();
        Optional<Much> chosen = bench.choice().much();
        for (Much way : Much.values()) {
            if (way != Much.WRITTEN || bench.formula().inMasses() || chosen.equals(Optional.of(way))) {
                ways.add(new Option(way.word(), way.label(), chosen.equals(Optional.of(way))));
            }
        }
        if (chosen.isEmpty()) {
            ways.add(0, new Option("", "choose", true));
        }
        return ways;
    }

    private static String plan(CutPlan plan) {
        String bar = millimetres(plan.thickness())
                + plan.across().map(across -> " × " + millimetres(across)).orElse("") + " mm";
        return bar + loss(plan.blade(), "each cut") + loss(plan.ends(), "each end") + loss(plan.trim(), "the top");
    }

    private static String loss(double millimetres, String to) {
        return millimetres > 0 ? ", " + millimetres(millimetres) + " mm lost to " + to : "";
    }

    private static String millimetres(double length) {
        return Figures.upTo(length, 1);
    }

    private static List<JugChoice> jugs(Bench bench) {
        List<JugChoice> choices = new ArrayList<>();
        add(choices, bench, "lye jug", JugUse.LYE_JUG, "Lye jug");
        add(choices, bench, "oil pot", JugUse.OIL_POT, "Oil pot");
        bench.formula()
                .portions()
                .forEach(portion ->
                        add(choices, bench, "jug " + portion.name(), JugUse.PORTION_JUG, "Jug for " + portion.name()));
        return choices;
    }

    /** A single lye jug or pot is taken without asking. */
    private static void add(List<JugChoice> choices, Bench bench, String vessel, JugUse use, String label) {
        List<KeptJug> fit =
                bench.jugs().stream().filter(jug -> jug.use() == use).toList();
        if (fit.isEmpty() || (fit.size() == 1 && use != JugUse.PORTION_JUG)) {
            return;
        }
        String chosen = bench.choice().text(MakeChoice.JUG + vessel);
        List<Option> options = new ArrayList<>();
        options.add(new Option("", "tared", chosen.isEmpty()));
        fit.forEach(jug -> options.add(new Option(
                jug.id(), jug.name() + ", " + jug.emptyWeight(), jug.id().equals(chosen))));
        choices.add(new JugChoice(MakeChoice.JUG + vessel, label, options));
    }

    /** Whether anything of the finer choices is made. */
    public boolean finer() {
        return java.util.stream.Stream.of(MakeChoice.CUT, MakeChoice.BLADE, MakeChoice.ENDS, MakeChoice.TRIM)
                        .anyMatch(name -> !answer.choice().text(name).isEmpty()
                                || !answer.field(name).troubles().isEmpty())
                || !answer.field(MakeChoice.HOLD_BACK).troubles().isEmpty()
                || !answer.choice().jugs().isEmpty();
    }

    /** Whether another oil is asked about. */
    public boolean swapping() {
        return Swap.isAsked(answer.choice());
    }
}
