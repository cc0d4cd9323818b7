package lyewright.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import lyewright.makingsheet.Comparison.Row;
import lyewright.measure.MassUnit;

/** The figures of a comparison in the units that a reader is used to; the change is that between the two as they are shown. */
public final class ComparedShown {

    private static final BigDecimal OUNCE = MassUnit.OUNCE.grams();
    private static final BigDecimal KILOGRAM = new BigDecimal(1000);
    private static final BigDecimal OUNCES_IN_A_POUND = new BigDecimal(16);
    private static final String MASS = "g";
    private static final String FOR_A_KILOGRAM = "g per kg oils";
    private static final int SPARE = 12;

    private final boolean ounces;

    public ComparedShown(UnitsShown units) {
        this.ounces = units.ounces();
    }

    /** A row's unit, or empty. */
    public String unit(Row row) {
        if (ounces && row.unit().equals(MASS)) {
            return "oz";
        }
        return ounces && row.unit().equals(FOR_A_KILOGRAM) ? "oz per lb oils" : row.unit();
    }

    /** A figure of a row. */
    public String value(Row row, double value) {
        return shown(row, value).toPlainString();
    }

    /** The same without decimals that say nothing. */
    String plain(Row row, double value) {
        BigDecimal stripped = shown(row, value).stripTrailingZeros();
        return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
    }

    /** From the one to the other, with its sign; empty where either has none. */
    public Optional<String> change(Row row) {
        return row.a().isEmpty() || row.b().isEmpty()
                ? Optional.empty()
                : Optional.of(signed(
                        shown(row, row.b().get()).subtract(shown(row, row.a().get()))));
    }

    private static String signed(BigDecimal change) {
        return (change.signum() > 0 ? "+" : "") + (change.signum() == 0 ? change.abs() : change).toPlainString();
    }

    private BigDecimal shown(Row row, double value) {
        BigDecimal exact = BigDecimal.valueOf(value);
        if (ounces && row.unit().equals(MASS)) {
            return exact.divide(OUNCE, SPARE, RoundingMode.HALF_UP).setScale(2, RoundingMode.HALF_UP);
        }
        return ounces && row.unit().equals(FOR_A_KILOGRAM)
                ? exact.multiply(OUNCES_IN_A_POUND).divide(KILOGRAM, 3, RoundingMode.HALF_UP)
                : exact.setScale(row.decimals(), RoundingMode.HALF_UP);
    }
}
