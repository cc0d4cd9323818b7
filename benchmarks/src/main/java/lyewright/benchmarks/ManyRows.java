package lyewright.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import lyewright.records.Records;
import lyewright.records.csv.CsvFile;
import lyewright.records.csv.CsvImport;

/** How long a CSV file of 20,000 lots takes, and how long somebody else who writes meanwhile waits for it. */
public final class ManyRows {

    private static final int ROWS = 20_000;
    private static final int MATERIALS = 300;
    private static final double MILLISECONDS = 1e6;

    private ManyRows() {}

    /**
     * Measures and prints.
     *
     * @param args how many rows, 20,000 where left out
     * @throws IOException where no folder can be made
     * @throws InterruptedException where somebody stops it
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        int rows = args.length > 0 ? Integer.parseInt(args[0]) : ROWS;
        Path folder = Files.createTempDirectory("lyewright-rows");
        try (Records records = Records.open(OtherPlace.of(folder.resolve("shop")), Clock.systemUTC())
                .orThrow()) {
            CsvFile file = CsvFile.read(text(rows).getBytes(StandardCharsets.UTF_8), Optional.empty())
                    .orThrow();
            time("looked at", () -> CsvImport.look(records, file, file.guess(), "GBP"));
            List<Double> waits = new ArrayList<>();
            AtomicBoolean over = new AtomicBoolean();
            Thread second = new Thread(() -> writes(records, waits, over));
            second.start();
            time("taken in", () -> CsvImport.take(records, records.author(), file, file.guess(), "GBP"));
            over.set(true);
            second.join();
            time("once more", () -> CsvImport.take(records, records.author(), file, file.guess(), "GBP"));
            System.out.printf(
                    Locale.ROOT,
                    "meanwhile %d suppliers were added, none refused; the longest waited %.0f ms%n",
                    waits.size(),
                    waits.stream().mapToDouble(it -> it).max().orElse(0));
        } finally {
            PagesLoad.delete(folder);
        }
    }

    private static void writes(Records records, List<Double> waits, AtomicBoolean over) {
        for (int i = 0; !over.get(); i++) {
            long start = System.nanoTime();
            records.suppliers().add("Somebody " + i + " (invented)", "", "").orThrow();
            waits.add((System.nanoTime() - start) / MILLISECONDS);
        }
    }

    private static void time(String what, java.util.function.Supplier<CsvImport.Result> work) {
        long start = System.nanoTime();
        CsvImport.Result result = work.get();
        System.out.printf(
                Locale.ROOT, "%s in %.0f ms: %s%n", what, (System.nanoTime() - start) / MILLISECONDS, result.told());
    }

    private static String text(int rows) {
        StringBuilder file =
                new StringBuilder("material,kind,supplier,supplier lot,received,best before,amount,price\n");
        for (int i = 0; i < rows; i++) {
            file.append("Stock ")
                    .append(i % MATERIALS)
                    .append(" (invented),oil,Northquay Oils,L")
                    .append(i)
                    .append(",2026-11-25,2027-11-25,5 kg,18.95\n");
        }
        return file.toString();
    }
}
