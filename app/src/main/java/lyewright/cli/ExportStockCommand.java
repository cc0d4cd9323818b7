package lyewright.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.Locale;
import lyewright.measure.Outcome;
import lyewright.records.Records;
import lyewright.records.RecordsTrouble;
import lyewright.records.csv.StockFiles;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** {@code export-stock}: everything in the cupboard as CSV files. */
final class ExportStockCommand implements Command {

    private static final String NAME = "export-stock";
    private static final String MARK = "--mark";

    @Override
    public CommandSpec spec() {
        CommandSpec spec =
                Specs.command(NAME, "Write everything in the cupboard as CSV files; the pages may be open meanwhile.");
        WorkshopFolder.addTo(spec, "A zip to write, or a folder; none of the files may be there yet.");
        spec.addOption(OptionSpec.builder(MARK)
                .description("Begin each file with a byte order mark, by which some spreadsheets know UTF-8.")
                .build());
        Specs.footer(
                spec,
                "",
                "Numbers are plain, in grams and pieces; data-dictionary.csv says what each column means.",
                "",
                "Example:",
                "  lyewright export-stock stores.zip");
        return spec;
    }

    @Override
    public Answer answer(ParseResult typed, Path folder) {
        Outcome<Records> opened =
                WorkshopFolder.place(typed, folder).then(place -> Records.openToRead(place, Clock.systemUTC()));
        if (!(opened instanceof Outcome.Ok<Records> ok)) {
            return WorkshopFolder.refused(NAME, opened.problems());
        }
        Path to = WorkshopFolder.file(typed, folder);
        try (Records records = ok.value()) {
            StockFiles files = new StockFiles(records.stockBook(), typed.hasMatchedOption(MARK));
            if (to.toString().toLowerCase(Locale.ROOT).endsWith(".zip")) {
                zip(files, to);
            } else {
                folder(files, to);
            }
            return Answer.print(String.join(", ", files.names()) + " written to " + to + ".\n");
        } catch (RecordsTrouble e) {
            return Answer.refuse(NAME, e.problem().what(), e.problem().remedy());
        } catch (IOException e) {
            return Answer.refuse(
                    NAME,
                    "'" + to + "' cannot be written, or is there already",
                    "name a file or a folder that is not there");
        }
    }

    private static void zip(StockFiles files, Path to) throws IOException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(to, StandardOpenOption.CREATE_NEW))) {
            files.zip(out);
        }
    }

    private static void folder(StockFiles files, Path to) throws IOException {
        Files.createDirectories(to);
        for (String name : files.names()) {
            Files.write(to.resolve(name), files.file(name).orElseThrow(), StandardOpenOption.CREATE_NEW);
        }
    }
}
