package lyewright.cli;

import java.nio.file.Path;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Outcome;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code sheet}: the making sheet. */
final class SheetCommand implements Command {

    private static final String JSON = "--json";

    @Override
    public CommandSpec spec() {
        CommandSpec spec = Specs.command(
                "sheet",
                "Print the making sheet: everything to weigh, in order, on your own balances.",
                "",
                "Say how much as a mould mass, a mass of oils or bars; or give what is known of the mould. Given both, the"
                        + " first rules and the mould is compared. Oils in grams are made as written when nothing is said.");
        spec.addPositional(Specs.file());
        SheetOptions.addTo(spec);
        spec.addOption(Specs.flag(JSON, "Print it as JSON (docs/sheet.schema.json)."));
        Specs.footer(
                spec,
                "",
                "Units: mg g kg oz lb (oz is weight), ml l, mm cm in.",
                "",
                "Examples:",
                "  lyewright sheet examples/tideline.yaml --total 1500g",
                "  lyewright sheet examples/tideline.yaml --bars 10x110g --cured --hold-back 2%",
                "  lyewright sheet examples/tideline.yaml --box 300x80x65mm --cut 25mm --blade 1mm",
                "  lyewright sheet examples/tideline.yaml --water-fill 1450g --purity naoh=98.5",
                "  lyewright sheet examples/tideline.yaml --usual 1520g=examples/plain-castile.yaml",
                "",
                "Exit code: 0 fine, 2 refused, 3 printed but not to be made as it stands, 1 our own fault.");
        return spec;
    }

    @Override
    public Answer answer(ParseResult typed, Path folder) {
        Outcome<MakingSheet> made = SheetOptions.sheet(typed, folder);
        if (!(made instanceof Outcome.Ok<MakingSheet> ok)) {
            return new Answer.Refused(made.problems());
        }
        MakingSheet sheet = ok.value();
        String text = typed.hasMatchedOption(JSON) ? SheetJson.of(sheet) : SheetText.of(sheet);
        return new Answer.Printed(text, sheet.stopped() ? Answer.STOPPED : Answer.FINE);
    }
}
