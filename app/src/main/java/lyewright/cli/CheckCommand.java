package lyewright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import lyewright.fill.Fill;
import lyewright.formula.Formula;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Outcome;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code formula check}: says in one line that a file is sound, or everything that is wrong with it. */
final class CheckCommand implements Command {

    /** What a formula in percent is tried with, grams of oils. */
    private static final double TRIAL_GRAMS = 1000;

    @Override
    public CommandSpec spec() {
        CommandSpec spec = Specs.command("check", "Say that a formula file is sound, or all that is wrong with it.");
        spec.addPositional(Specs.file());
        Specs.footer(spec, "", "Example:", "  lyewright formula check examples/tideline.yaml");
        return spec;
    }

    @Override
    public Answer answer(ParseResult typed, Path folder) {
        Outcome<FormulaSource> read = FormulaSource.read(typed.matchedPositionalValue(0, ""), folder);
        if (!(read instanceof Outcome.Ok<FormulaSource> source)) {
            return new Answer.Refused(read.problems());
        }
        Outcome<MakingSheet> made = trial(source.value(), Purities.ASSUMED);
        if (!(made instanceof Outcome.Ok<MakingSheet> sheet)) {
            return new Answer.Refused(made.problems());
        }
        String name = name(source.value().formula());
        if (sheet.value().stopped()) {
            Caution gravest = sheet.value().cautions().get(0);
            Page page = new Page()
                    .paragraph(name + ": not to be made as it stands. " + gravest.text() + " " + gravest.remedy(), 0);
            return new Answer.Printed(page.toString(), Answer.STOPPED);
        }
        List<Caution> grave = grave(sheet.value());
        if (grave.isEmpty()) {
            return Answer.print(name + ": fine.\n");
        }
        Page page = new Page().line(name + ": can be made, but look at this first.");
        grave.forEach(caution -> write(caution, page));
        return Answer.print(page.toString());
    }

    /** What speaks against making it: all that stops it, and what says that alkali may be left over. */
    static List<Caution> grave(MakingSheet sheet) {
        return sheet.cautions().stream()
                .filter(caution ->
                        caution.level() == Caution.Level.STOP || caution.id().endsWith("free-alkali"))
                .toList();
    }

    /** A caution with its level, remedy and source. */
    static void write(Caution caution, Page page) {
        page.hanging(
                " " + Widths.left(caution.level().word().toUpperCase(Locale.ROOT), 6),
                caution.text() + " " + caution.remedy() + " [" + caution.source() + "]");
    }

    /** A formula's name and version. */
    static String name(Formula formula) {
        return formula.recipe() + ", version " + formula.version();
    }

    /**
     * Makes a sheet of it, which shows what only the masses can: alkali and superfat at odds, more water taken than there is.
     *
     * @param source the formula
     * @param purities of the alkalis at hand
     * @return the sheet of the formula as written, or of a kilogram of oils; or every problem with its place
     */
    static Outcome<MakingSheet> trial(FormulaSource source, Purities purities) {
        return trial(source, purities, Equipment.USUAL);
    }

    /**
     * The same, weighed with other balances.
     *
     * @param source the formula
     * @param purities of the alkalis at hand
     * @param equipment what there is to weigh with
     * @return the sheet, or every problem with its place
     */
    static Outcome<MakingSheet> trial(FormulaSource source, Purities purities, Equipment equipment) {
        Outcome<ResolvedFormula> resolved = source.resolve(purities);
        if (!(resolved instanceof Outcome.Ok<ResolvedFormula> formula)) {
            return new Outcome.Refused<>(resolved.problems());
        }
        Fill fill = formula.value().writtenOilsGrams().isPresent() ? Fill.AS_WRITTEN : Fill.oilMass(TRIAL_GRAMS);
        Outcome<MakingSheet> sheet = MakingSheet.of(formula.value(), fill, equipment);
        return sheet instanceof Outcome.Ok ? sheet : new Outcome.Refused<>(source.located(sheet.problems()));
    }
}
