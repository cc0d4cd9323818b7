package lyewright.records.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import lyewright.measure.Outcome;
import lyewright.records.OnBoth;
import lyewright.records.Workbench;
import lyewright.records.stock.Supplier;
import org.junit.jupiter.api.Test;

/** Somebody writes at the bench while a large file is taken in. */
@OnBoth
class SecondWriterTest extends Workbench {

    private static final int LOTS = 1_300;

    @Test
    void whoever_writes_meanwhile_waits_and_is_not_refused_and_the_file_goes_in_whole() throws Exception {
        StringBuilder text = new StringBuilder("material,kind,supplier lot,received,amount\n");
        for (int i = 0; i < LOTS; i++) {
            text.append("Moon oil,oil,L").append(i).append(",2026-11-25,5 kg\n");
        }
        CsvFile file = CsvFile.read(text.toString().getBytes(StandardCharsets.UTF_8), Optional.empty())
                .orThrow();
        CompletableFuture<CsvImport.Result> first = CompletableFuture.supplyAsync(
                () -> CsvImport.take(records, records.author(), file, file.guess(), "GBP"));
        int added = 0;
        while (!first.isDone() || added == 0) {
            Outcome<Supplier> second = records.suppliers().add("Somebody " + added, "", "");
            assertThat(second.problems()).isEmpty();
            // all of the file is there, or nothing of it
            assertThat(records.lots().held())
                    .hasSizeBetween(0, LOTS)
                    .satisfies(held -> assertThat(held.size() % LOTS).isZero());
            added++;
        }

        assertThat(first.get(1, TimeUnit.MINUTES).fresh()).isEqualTo(LOTS);
        assertThat(records.lots().held()).hasSize(LOTS);
        assertThat(records.suppliers().list()).hasSize(added);
        assertThat(records.ledger().verify(Optional.empty()).isWhole()).isTrue();
    }
}
