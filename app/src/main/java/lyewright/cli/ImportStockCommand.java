package lyewright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.Records;
import lyewright.records.RecordsTrouble;
import lyewright.records.csv.CellTrouble;
import lyewright.records.csv.CsvChoice;
import lyewright.records.csv.CsvFile;
import lyewright.records.csv.CsvImport;
import lyewright.records.csv.DayOrder;
import lyewright.records.setting.Workshop;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** {@code import-stock}: materials, suppliers or lots from a CSV file. */
final class ImportStockCommand implements Command {

    private static final String NAME = "import-stock";
    private static final String DRY_RUN = "--dry-run";
    private static final String LEFT_OUT = "--left-out";
    private static final String DAYS = "--days";
    private static final int MOST_TOLD = 20;

    @Override
    public CommandSpec spec() {
        CommandSpec spec = Specs.command(NAME, "Take materials, suppliers or lots from a CSV file into the cupboard.");
        WorkshopFolder.addTo(spec, "The CSV file, the names of its columns in the first row.");
        spec.addOption(OptionSpec.builder(DRY_RUN)
                .description("Say what would be kept, and keep nothing.")
                .build());
        spec.addOption(Specs.value(DAYS, "ORDER", "day or month: which comes first in 03/04/2026."));
        spec.addOption(Specs.value(LEFT_OUT, "FILE", "Write the rows with problems there, each with what is wrong."));
        Specs.footer(
                spec,
                "",
                "Good rows are kept in one go, rows with problems are left out. The same file twice changes nothing.",
                "The exit code is 0 where every row is fine, 3 where rows were left out, 2 where the file was not read.",
                "",
                "Example:",
                "  lyewright import-stock examples/stock-lots.csv --dry-run");
        return spec;
    }

    @Override
    public Answer answer(ParseResult typed, Path folder) {
        Path path = WorkshopFolder.file(typed, folder);
        Outcome<CsvFile> read = read(path).then(bytes -> CsvFile.read(bytes, Optional.empty()));
        if (!(read instanceof Outcome.Ok<CsvFile> file)) {
            return WorkshopFolder.refused(NAME, read.problems());
        }
        Outcome<CsvChoice> choice = choice(typed, file.value());
        if (!(choice instanceof Outcome.Ok<CsvChoice> how)) {
            return new Answer.Refused(choice.problems());
        }
        Outcome<Records> opened =
                WorkshopFolder.place(typed, folder).then(place -> Records.open(place, Clock.systemUTC()));
        if (!(opened instanceof Outcome.Ok<Records> ok)) {
            return WorkshopFolder.refused(NAME, opened.problems());
        }
        try (Records records = ok.value()) {
            boolean dry = typed.hasMatchedOption(DRY_RUN);
            String currency =
                    records.settings().workshop().map(Workshop::currency).orElse("GBP");
            CsvImport.Result result = dry
                    ? CsvImport.look(records, file.value(), how.value(), currency)
                    : CsvImport.take(records, records.author(), file.value(), how.value(), currency);
            Optional<Path> leftOut = Optional.ofNullable(typed.<String>matchedOptionValue(LEFT_OUT, null))
                    .map(folder::resolve)
                    .filter(it -> result.wrong() > 0);
            if (leftOut.isPresent()) {
                Files.write(leftOut.get(), CsvImport.leftOut(file.value(), result));
            }
            return new Answer.Printed(
                    told(file.value(), result, dry, leftOut), result.wrong() == 0 ? Answer.FINE : Answer.STOPPED);
        } catch (RecordsTrouble e) {
            return Answer.refuse(NAME, e.problem().what(), e.problem().remedy());
        } catch (IOException e) {
            return Answer.refuse(LEFT_OUT, "the rows with problems cannot be written there", "name another file");
        }
    }

    private static Outcome<byte[]> read(Path path) {
        try (InputStream in = Files.newInputStream(path)) {
            return Outcome.ok(in.readNBytes(CsvFile.LARGEST + 1));
        } catch (NoSuchFileException e) {
            return Outcome.refused("there is no file '" + path + "'", "look at its name and folder");
        } catch (IOException e) {
            return Outcome.refused("the file '" + path + "' cannot be read", "see that it is a file and may be read");
        }
    }

    private static Outcome<CsvChoice> choice(ParseResult typed, CsvFile file) {
        CsvChoice guess = file.guess();
        String days = typed.matchedOptionValue(DAYS, DayOrder.ASKED.word());
        Optional<DayOrder> order = DayOrder.ofWord(days);
        if (order.isEmpty()) {
            return Outcome.refused(new Problem(DAYS, "'" + days + "' is neither", "write day or month"));
        }
        CsvChoice chosen = new CsvChoice(guess.kind(), guess.meanings(), guess.decimal(), order.get());
        return file.standsInTheWay(chosen).isEmpty()
                ? Outcome.ok(chosen)
                : new Outcome.Refused<>(file.standsInTheWay(chosen).stream()
                        .map(problem -> new Problem(NAME, problem.what(), "name that column as the guide says"))
                        .toList());
    }

    private static String rows(List<CellTrouble> all) {
        String told = all.stream()
                .limit(MOST_TOLD)
                .map(trouble -> "Row " + trouble.row() + (trouble.column().isEmpty() ? "" : ", " + trouble.column())
                        + ": " + trouble.problem().sentence() + ".\n")
                .collect(Collectors.joining());
        return all.size() > MOST_TOLD ? told + "And " + (all.size() - MOST_TOLD) + " more.\n" : told;
    }

    private static String told(CsvFile file, CsvImport.Result result, boolean dry, Optional<Path> leftOut) {
        StringBuilder told = new StringBuilder();
        told.append(file.encoding())
                .append(", ")
                .append(file.separator().word())
                .append(" between cells, decimal ")
                .append(file.guess().decimal().word())
                .append(".\n");
        file.remarks(file.guess()).forEach(remark -> told.append(remark).append('\n'));
        told.append(rows(result.troubles()));
        if (!result.notes().isEmpty()) {
            told.append("Worth a look, though these rows go in:\n").append(rows(result.notes()));
        }
        if (!result.found().isEmpty()) {
            told.append("Known to recipes by name: ")
                    .append(result.found().entrySet().stream()
                            .limit(MOST_TOLD)
                            .map(found -> found.getKey() + " (" + found.getValue() + ")")
                            .collect(Collectors.joining(", ")))
                    .append(result.found().size() > MOST_TOLD ? " and more.\n" : ".\n");
        }
        told.append(result.told()).append(dry ? "; nothing was kept.\n" : ".\n");
        leftOut.ifPresent(path ->
                told.append("The rows with problems are in ").append(path).append(".\n"));
        return told.toString();
    }
}
