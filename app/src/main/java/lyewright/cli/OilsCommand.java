package lyewright.cli;

import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import lyewright.material.Figure;
import lyewright.material.NearestKey;
import lyewright.material.Oil;
import lyewright.material.Tables;
import lyewright.words.Figures;
import lyewright.words.MaterialWords;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code oils}: the oils of the tables, or all that is known of some. */
final class OilsCommand implements Command {

    @Override
    public CommandSpec spec() {
        CommandSpec spec = Specs.command("oils", "List the oils, or show all that the tables know of one.");
        spec.addPositional(Specs.name());
        Specs.footer(spec, "", "Examples:", "  lyewright oils", "  lyewright oils coconut", "  lyewright oils olive");
        return spec;
    }

    @Override
    public Answer answer(ParseResult typed, Path folder) {
        Tables tables = Tables.bundled();
        Lookup<Oil> lookup = new Lookup<>(
                tables.oils(), Oil::key, oil -> oil.name() + " " + oil.names().inci());
        return lookup.answer(
                Specs.nameOf(typed), found -> list(found, tables), OilCard::write, name -> unknown(name, tables));
    }

    private static Answer unknown(String name, Tables tables) {
        if (tables.additive(name).isPresent()) {
            return Answer.refuse("oils", "'" + name + "' is no oil", "see 'lyewright additives " + name + "'");
        }
        List<String> near =
                NearestKey.among(name, tables.oils().stream().map(Oil::key).toList());
        return Answer.refuse(
                "oils",
                "the tables have no oil '" + name + "'",
                near.isEmpty() ? "see 'lyewright oils' for all" : "did you mean " + String.join(" or ", near) + "?");
    }

    private static String list(Collection<Oil> oils, Tables tables) {
        TextTable table = new TextTable(
                0,
                TextTable.keys("key"),
                TextTable.words("name"),
                TextTable.figures("mg KOH/g"),
                TextTable.words(""),
                TextTable.figures("used"),
                TextTable.figures("iodine value"),
                TextTable.words(""),
                TextTable.figures("g/ml"),
                TextTable.words("kind"));
        for (Oil oil : oils) {
            table.row(
                    oil.key(),
                    oil.name(),
                    MaterialWords.range(oil.saponificationValue()),
                    mark(oil.saponificationValue()),
                    Figures.fixed(oil.reckoned().milligramsKohPerGram(), 1),
                    oil.iodineValue().map(MaterialWords::range).orElse(""),
                    oil.iodineValue().map(OilsCommand::mark).orElse(""),
                    Figures.fixed(oil.density().gramsPerMillilitre(), 3),
                    MaterialWords.word(oil.kind()));
        }
        Page page = new Page().table(table);
        page.blank();
        page.paragraph(
                "mg KOH/g: saponification value, the range as published; m, from memory. Used: what a sheet computes with."
                        + " g/ml: density of the liquid. 'lyewright oils KEY' gives each figure's source. Tables of "
                        + tables.edition() + ".",
                0);
        return page.toString();
    }

    private static String mark(Figure figure) {
        return figure.remembered() ? "m" : "";
    }
}
