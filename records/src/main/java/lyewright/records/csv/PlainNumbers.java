package lyewright.records.csv;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import lyewright.measure.WrittenMass;
import lyewright.records.stock.Counting;
import lyewright.records.stock.Price;
import lyewright.records.stock.StockItem;

/** Amounts and prices as numbers that any program reads. */
final class PlainNumbers {

    private PlainNumbers() {}

    static Optional<BigDecimal> mass(StockItem item, long amount) {
        return item.said().counting() == Counting.MASS ? Optional.of(grams(amount)) : Optional.empty();
    }

    static Optional<Long> pieces(StockItem item, long amount) {
        return item.said().counting() == Counting.PIECES ? Optional.of(amount) : Optional.empty();
    }

    static BigDecimal grams(long milligrams) {
        return plain(BigDecimal.valueOf(milligrams, 3));
    }

    static BigDecimal grams(WrittenMass mass) {
        return plain(mass.exactGrams());
    }

    /** Without noughts at the end, and never as a power of ten. */
    private static BigDecimal plain(BigDecimal number) {
        BigDecimal brief = number.setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
        return brief.scale() < 0 ? brief.setScale(0) : brief;
    }

    static BigDecimal price(Price price) {
        return new BigDecimal(price.decimal());
    }
}
