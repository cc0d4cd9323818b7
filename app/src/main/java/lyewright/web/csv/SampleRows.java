package lyewright.web.csv;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import lyewright.records.csv.CsvImport;
import lyewright.records.csv.CsvKind;
import lyewright.records.stock.Counting;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.StockRow;
import lyewright.records.stock.StockRow.MaterialSaid;
import lyewright.records.stock.StockVerdict;
import lyewright.records.stock.StockVerdict.Fate;
import lyewright.web.csv.PreviewPage.Sample;

/** A few of the new rows, as they will be kept. */
final class SampleRows {

    private static final int SHOWN = 5;

    private SampleRows() {}

    static Sample of(CsvKind kind, CsvImport.Result result) {
        List<List<String>> rows = result.verdicts().stream()
                .filter(verdict -> verdict.fate() == Fate.NEW)
                .limit(SHOWN)
                .map(SampleRows::row)
                .toList();
        return new Sample(
                switch (kind) {
                    case SUPPLIERS -> List.of("Row", "Supplier", "How they are reached");
                    case MATERIALS -> List.of("Row", "Material", "Kind", "In recipes", "INCI name", "Supplier");
                    case LOTS ->
                        List.of("Row", "Lot", "Material", "How much", "Came", "Best before", "Supplier", "Their lot");
                },
                rows);
    }

    private static List<String> row(StockVerdict verdict) {
        String row = Integer.toString(verdict.row().number());
        if (verdict.row().what() instanceof StockRow.OfSupplier of) {
            return List.of(row, of.name(), of.contact());
        }
        if (verdict.row().what() instanceof StockRow.OfMaterial of) {
            MaterialSaid said = of.said();
            return List.of(
                    row,
                    said.name(),
                    said.kind().map(ItemKind::word).orElse(""),
                    said.identity().materialKey().orElse(""),
                    said.identity().inci(),
                    said.supplier());
        }
        StockRow.OfLot of = (StockRow.OfLot) verdict.row().what();
        return List.of(
                row,
                verdict.as(),
                of.material().name(),
                amount(of.amount()),
                of.said().received().toString(),
                day(of.said().bestBefore()),
                of.supplier(),
                of.said().supplierLot());
    }

    private static String day(Optional<?> day) {
        return day.map(Object::toString).orElse("");
    }

    private static String amount(StockRow.Amount amount) {
        if (amount.counting() == Counting.PIECES) {
            return Long.toString(amount.number());
        }
        BigDecimal grams = BigDecimal.valueOf(amount.number(), 3).stripTrailingZeros();
        return grams.toPlainString() + " g";
    }
}
