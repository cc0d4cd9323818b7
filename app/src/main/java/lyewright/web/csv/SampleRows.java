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
    private static final long KILOGRAM = 1_000_000;

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
                        List.of(
                                "Row",
                                "Lot",
                                "Material",
                                "In recipes",
                                "How much",
                                "Price",
                                "Came",
                                "Best before",
                                "Supplier",
                                "Their lot",
                                "Certificate");
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
                    recipeName(verdict),
                    said.identity().inci(),
                    said.supplier());
        }
        StockRow.OfLot of = (StockRow.OfLot) verdict.row().what();
        return List.of(
                row,
                verdict.as(),
                verdict.material()
                        .map(StockVerdict.Material::name)
                        .orElse(of.material().name()),
                recipeName(verdict),
                amount(of.amount()),
                of.said()
                        .price()
                        .map(price -> price.decimal() + " " + price.currency())
                        .orElse(""),
                of.said().received().toString(),
                day(of.said().bestBefore()),
                of.supplier(),
                of.said().supplierLot(),
                certificate(of));
    }

    private static String recipeName(StockVerdict verdict) {
        return verdict.material().flatMap(StockVerdict.Material::recipeName).orElse("");
    }

    /** Which figures there are; what they are is looked at on the lot's page. */
    private static String certificate(StockRow.OfLot of) {
        if (of.said().certificate().isPresent()) {
            return "as it was written out";
        }
        return of.certificate()
                .map(said -> said.figures()
                        .saponificationValue()
                        .map(it -> "SV " + it)
                        .or(() -> said.purity().map(it -> it + " % pure"))
                        .or(() -> said.figures().acidValue().map(it -> "AV " + it))
                        .or(() -> said.figures().iodineValue().map(it -> "IV " + it))
                        .or(() -> said.figures().water().map(it -> it + " % water"))
                        .orElse("made of " + said.oils().size() + " oils"))
                .orElse("");
    }

    private static String day(Optional<?> day) {
        return day.map(Object::toString).orElse("");
    }

    private static String amount(StockRow.Amount amount) {
        if (amount.counting() == Counting.PIECES) {
            return Long.toString(amount.number());
        }
        boolean kilograms = amount.number() >= KILOGRAM;
        BigDecimal said = BigDecimal.valueOf(amount.number(), kilograms ? 6 : 3).stripTrailingZeros();
        return said.toPlainString() + (kilograms ? " kg" : " g");
    }
}
