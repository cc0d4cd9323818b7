package lyewright.cli;

import java.nio.file.Path;
import java.util.Optional;
import lyewright.chemistry.Reaction;
import lyewright.formula.AlkaliChoice;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.makingsheet.LyeSheet;
import lyewright.makingsheet.MakingSheet;
import lyewright.material.Alkali;
import lyewright.material.Figure;
import lyewright.material.Oil;
import lyewright.material.OilBlend;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code formula superfat}: what superfat a recipe from a notebook comes to, and how far that may be off. */
final class SuperfatCommand implements Command {

    private static final String PURITY = "--purity";
    private static final int LABEL = 19;

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
        Optional<MakingSheet> sheet = source.flatMap(s -> options.keep(CheckCommand.trial(s, purities)));
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
        page.line("Superfat " + Figures.percent(superfat(sheet), 1));
        page.paragraph(sheet.band().sentence(), 0);
        page.blank();
        page.pair("Taken from", alkaliTaken(formula), LABEL);
        Optional<Figure> sodium = purity(formula, Alkali.SODIUM);
        Optional<Figure> potassium = purity(formula, Alkali.POTASSIUM);
        sodium.ifPresent(p -> page.pair("NaOH", purity(formula, Alkali.SODIUM, p), LABEL));
        potassium.ifPresent(p -> page.pair("KOH", purity(formula, Alkali.POTASSIUM, p), LABEL));
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

    /** Of the formula as it stands, nothing rounded to a balance. */
    private static double superfat(MakingSheet sheet) {
        double[] masses = sheet.batch().massesAt(sheet.filled().oilsGrams());
        return Reaction.of(sheet.batch().lines(), masses).superfatPercent();
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
                        OilCard.range(oil.saponificationValue()),
                        OilCard.basis(oil));
            }
        }
        page.table(table);
    }
}
