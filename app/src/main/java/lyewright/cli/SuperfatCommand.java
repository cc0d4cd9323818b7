package lyewright.cli;

import java.nio.file.Path;
import java.util.Optional;
import lyewright.formula.AlkaliChoice;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.LyeSheet;
import lyewright.makingsheet.MakingSheet;
import lyewright.material.Alkali;
import lyewright.material.Figure;
import lyewright.material.Oil;
import lyewright.material.OilBlend;
import lyewright.material.OilKind;
import lyewright.words.Figures;
import lyewright.words.MaterialWords;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code formula superfat}: what superfat a recipe from a notebook comes to, and how far that may be off. */
final class SuperfatCommand implements Command {

    private static final String PURITY = "--purity";
    private static final int LABEL = 19;

    /** So fine and strong that nothing shows of rounding and weighing. */
    private static final Equipment EXACT =
            Equipment.parseBalances("exact:1000000kg:1mg").orThrow();

    @Override
    public CommandSpec spec() {
        CommandSpec spec = Specs.command(
                "superfat",
                "Say what superfat a recipe comes to, from its oils and its alkali, and how far that may be off.");
        spec.addPositional(Specs.file());
        spec.addOption(Specs.value(PURITY, "LIST", "How pure the alkali is: naoh=98.5,koh=90."));
        Specs.footer(
                spec,
                "",
                "Examples:",
                "  lyewright formula superfat examples/plain-castile.yaml",
                "  lyewright formula superfat notebook.yaml --purity naoh=98.5");
        return spec;
    }

    @Override
    public Answer answer(ParseResult typed, Path folder) {
        Options options = new Options(typed);
        Purities purities = options.read(PURITY, Purities::parse).orElse(Purities.ASSUMED);
        Optional<FormulaSource> source = options.keep(FormulaSource.read(typed.matchedPositionalValue(0, ""), folder));
        Optional<MakingSheet> sheet = source.flatMap(s -> options.keep(CheckCommand.trial(s, purities, EXACT)));
        if (sheet.isEmpty() || !options.problems().isEmpty()) {
            return new Answer.Refused(options.problems());
        }
        return new Answer.Printed(text(sheet.get()), sheet.get().stopped() ? Answer.STOPPED : Answer.FINE);
    }

    private static String text(MakingSheet sheet) {
        ResolvedFormula formula = sheet.formula();
        Page page = new Page();
        page.line(CheckCommand.name(formula.formula()));
        page.blank();
        page.line("Superfat " + Figures.percent(sheet.sheetSuperfatPercent(), 1));
        page.paragraph(sheet.howSure(), 0);
        page.blank();
        CheckCommand.grave(sheet).forEach(caution -> CheckCommand.write(caution, page));
        page.blank();
        page.pair("Taken from", alkaliTaken(formula), LABEL);
        Optional<Figure> sodium = purity(formula, Alkali.SODIUM);
        Optional<Figure> potassium = purity(formula, Alkali.POTASSIUM);
        sodium.ifPresent(p -> page.pair("NaOH", purity(formula, Alkali.SODIUM, p), LABEL));
        potassium.ifPresent(p -> page.pair("KOH", purity(formula, Alkali.POTASSIUM, p), LABEL));
        page.pair("Weighing", "not counted: no balance was named; 'lyewright sheet' counts it", LABEL);
        BandText.write(sheet.band(), LABEL, page);
        LyeSheet lye = sheet.lye();
        page.pair(
                "Lye",
                Figures.percent(lye.pureStrengthPercent(), 1) + " pure"
                        + (formula.alkali().stock().isPresent()
                                ? ""
                                : ", " + Figures.percent(lye.weighedStrengthPercent(), 1) + " as weighed"),
                LABEL);
        double oils = sheet.filled().oilsGrams();
        double water = sheet.batch().waterByRule().at(oils, sheet.batch().batchAt(oils));
        page.pair("Water", Figures.percent(100 * water / oils, 1) + " of the oils", LABEL);
        page.blank();
        oils(formula, page);
        return page.toString();
    }

    private static String alkaliTaken(ResolvedFormula formula) {
        AlkaliChoice choice = formula.formula().alkali();
        if (choice instanceof AlkaliChoice.Given given) {
            return "the alkali given, " + given(given)
                    + (given.as().isPresent()
                            ? " " + (given.as().get() == AlkaliChoice.As.PURE ? "as pure alkali" : "as weighed")
                            : ", taken as weighed since the file does not say");
        }
        if (choice instanceof AlkaliChoice.Stock stock && stock.mass().isPresent()) {
            return "the stock lye given, " + stock.mass().get() + " of " + stock.key();
        }
        return "the formula, which asks for it; the alkali follows";
    }

    private static String given(AlkaliChoice.Given given) {
        String sodium = given.sodium().map(m -> m + " NaOH").orElse("");
        String potassium = given.potassium().map(m -> m + " KOH").orElse("");
        return sodium.isEmpty() || potassium.isEmpty() ? sodium + potassium : sodium + " and " + potassium;
    }

    private static Optional<Figure> purity(ResolvedFormula formula, Alkali alkali) {
        if (formula.alkali().stock().isPresent() || !formula.alkali().has(alkali)) {
            return Optional.empty();
        }
        return Optional.of(formula.purities().figure(alkali));
    }

    private static String purity(ResolvedFormula formula, Alkali alkali, Figure figure) {
        String middle = Figures.upTo(100 * formula.purities().fraction(alkali), 2) + " % pure, ";
        return formula.purities().assumed(alkali)
                ? middle + "assumed (" + Figures.upTo(figure.low(), 1) + " to " + Figures.upTo(figure.high(), 1)
                        + " % is sold); give it with --purity"
                : middle + "as given";
    }

    private static void oils(ResolvedFormula formula, Page page) {
        TextTable table = new TextTable(
                0,
                TextTable.words("oil"),
                TextTable.figures("% of oils"),
                TextTable.figures("mg KOH/g"),
                TextTable.figures("range"),
                TextTable.words("why this value"));
        for (OilPart line : formula.oils()) {
            for (OilBlend.Part part : line.parts()) {
                Oil oil = part.oil();
                table.row(
                        oil.name(),
                        Figures.fixed(100 * line.fraction() * part.fraction(), 2),
                        Figures.fixed(oil.reckoned().milligramsKohPerGram(), 1),
                        range(oil),
                        MaterialWords.basis(oil));
            }
        }
        page.table(table);
    }

    /** What the superfat's range counts with: of a wax nothing is sure but the least of its free acid. */
    private static String range(Oil oil) {
        if (oil.kind() != OilKind.WAX) {
            return MaterialWords.range(oil.saponificationValue());
        }
        double surely = oil.acidValue().map(Figure::low).orElse(0.0);
        return Figures.upTo(surely, 2) + " to "
                + Figures.upTo(oil.saponificationValue().high(), 2) + " may react";
    }
}
