package lyewright.cli;

import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import lyewright.material.Additive;
import lyewright.material.NearestKey;
import lyewright.material.Tables;
import lyewright.words.Figures;
import lyewright.words.MaterialWords;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code additives}: additives and fragrance oils of the tables, or all that is known of some. */
final class AdditivesCommand implements Command {

    private static final int LABEL = 22;

    @Override
    public CommandSpec spec() {
        CommandSpec spec = Specs.command(
                "additives", "List additives and fragrance oils, or show all that the tables know of one.");
        spec.addPositional(Specs.name());
        Specs.footer(
                spec,
                "",
                "Examples:",
                "  lyewright additives",
                "  lyewright additives sea-salt",
                "  lyewright additives clay");
        return spec;
    }

    @Override
    public Answer answer(ParseResult typed, Path folder) {
        Tables tables = Tables.bundled();
        Lookup<Additive> lookup = new Lookup<>(
                tables.additives(),
                Additive::key,
                additive -> additive.name() + " " + additive.names().inci());
        return lookup.answer(
                Specs.nameOf(typed),
                found -> list(found, tables),
                AdditivesCommand::card,
                name -> unknown(name, tables));
    }

    private static Answer unknown(String name, Tables tables) {
        if (tables.oil(name).isPresent()) {
            return Answer.refuse("additives", "'" + name + "' is an oil", "see 'lyewright oils " + name + "'");
        }
        List<String> near = NearestKey.among(
                name, tables.additives().stream().map(Additive::key).toList());
        return Answer.refuse(
                "additives",
                "the tables have no additive '" + name + "'",
                near.isEmpty()
                        ? "see 'lyewright additives' for all, or describe it under materials in the formula"
                        : "did you mean " + String.join(" or ", near) + "?");
    }

    private static String list(Collection<Additive> additives, Tables tables) {
        TextTable table = new TextTable(
                0,
                TextTable.keys("key"),
                TextTable.words("name"),
                TextTable.words("kind"),
                TextTable.figures("% of oils"),
                TextTable.words("stage"),
                TextTable.figures("g/ml"),
                TextTable.words(""));
        for (Additive additive : additives) {
            table.row(
                    additive.key(),
                    additive.name(),
                    additive.kind().word(),
                    additive.usualDose().map(AdditivesCommand::dose).orElse(""),
                    additive.usualDose().map(Additive.UsualDose::stage).orElse(""),
                    Figures.fixed(additive.gramsPerMillilitre(), 3),
                    additive.densityAssumed() ? "?" : "");
        }
        Page page = new Page().table(table);
        page.blank();
        page.paragraph(
                "% of oils: what is usual. Stage: where it usually goes in. g/ml: density of the material itself; ?, only"
                        + " assumed. 'lyewright additives KEY' gives the sources. Tables of " + tables.edition() + ".",
                0);
        return page.toString();
    }

    private static String dose(Additive.UsualDose dose) {
        return MaterialWords.range(dose.low(), dose.high());
    }

    private static void card(Additive additive, Page page) {
        page.ends(additive.key(), additive.name());
        page.rule();
        page.pair("What it is", additive.kind().word(), LABEL);
        additive.usualDose()
                .ifPresent(d ->
                        page.pair("Usual", dose(d) + " % of oils" + at(d.stage()) + OilCard.source(d.source()), LABEL));
        page.pair("Density", MaterialWords.density(additive), LABEL);
        makeup(additive.makeup(), page);
        additive.dispersing().ifPresent(d -> page.pair("Wet out", MaterialWords.wetting(d), LABEL));
        additive.solubility().ifPresent(s -> page.pair("Dissolves", MaterialWords.dissolves(s), LABEL));
        Cards.optional("What it does", effects(additive), "", LABEL, page);
        Cards.names(additive.names(), LABEL, page);
        Cards.optional("May hurt", additive.hazard(), "", LABEL, page);
        Cards.optional("Sources", additive.sources(), "", LABEL, page);
        Cards.optional("Notes", additive.notes(), "", LABEL, page);
    }

    private static String at(String stage) {
        return stage.isBlank() ? "" : ", at stage " + stage;
    }

    private static String effects(Additive additive) {
        return additive.effects().stream()
                .sorted()
                .collect(Collectors.joining(", "))
                .toLowerCase(Locale.ROOT);
    }

    private static void makeup(Additive.Makeup makeup, Page page) {
        part("Water in it", makeup.water(), page);
        part("Fat in it", makeup.fat(), page);
        part("Sugar in it", makeup.sugar(), page);
        part("Salt in it", makeup.salt(), page);
        if (makeup.acidMolesPerGram() > 0) {
            page.pair("Takes alkali", MaterialWords.takesAlkali(makeup), LABEL);
        }
    }

    private static void part(String label, double fraction, Page page) {
        if (fraction > 0) {
            page.pair(label, Figures.upTo(100 * fraction, 2) + " %", LABEL);
        }
    }
}
