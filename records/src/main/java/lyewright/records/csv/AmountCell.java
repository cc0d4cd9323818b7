package lyewright.records.csv;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.measure.Outcome;
import lyewright.measure.Said;
import lyewright.measure.WrittenMass;
import lyewright.records.stock.Counting;
import lyewright.records.stock.StockRow.Amount;
import lyewright.stock.SaidAmount;

/**
 * Reads how much: a mass with its unit, or a number of pieces. Units and limits are those of {@link SaidAmount}, which reads what is
 * typed on pages. Two things differ, and on purpose: what a point or a comma says is asked of the whole file, for a page has one number
 * and a file may have a thousand that say together what one cannot; and a file's volumes and spoons are refused, for what they hold
 * hangs on a material that another row may bring.
 */
final class AmountCell {

    private static final Pattern PARTS = Pattern.compile("([0-9.,](?:[0-9.,' \u2019\u00a0\u202f]*[0-9])?)\\s*(.*)");

    private static final Pattern PIECES = Pattern.compile("|pieces?|pcs?|x", Pattern.CASE_INSENSITIVE);
    private static final Pattern VOLUME = Pattern.compile("(?:ml|cl|l|litres?|liters?)\\.?", Pattern.CASE_INSENSITIVE);

    private AmountCell() {}

    /** A number as its file writes it, and what stands after it. */
    record Parts(String number, String unit) {}

    static Outcome<Parts> parts(String text, DecimalSign decimal) {
        if (text.startsWith("-") || text.startsWith("\u2212")) {
            return Outcome.refused(
                    "'" + CellReader.shown(text) + "' is less than nothing", "write a number above nothing");
        }
        Matcher parts = PARTS.matcher(text);
        if (!parts.matches()) {
            return Outcome.refused(
                    "'" + CellReader.shown(text) + "' does not begin with a number", "write it as in 2.5 kg or 500 g");
        }
        if (parts.group(2).matches("[eE][+-]?[0-9].*")) {
            return Outcome.refused(
                    "'" + CellReader.shown(text) + "' is written as a power of ten",
                    "write the number out, as in 1000");
        }
        return decimal.read(parts.group(1))
                .then(number -> Outcome.ok(new Parts(number, parts.group(2).strip())));
    }

    /**
     * An amount.
     *
     * @param usual the unit of a number that has none; empty for a number of pieces
     */
    static Outcome<Amount> read(String text, DecimalSign decimal, String usual) {
        return parts(text, decimal).then(parts -> {
            String unit = parts.unit().isEmpty() ? usual : parts.unit();
            if (PIECES.matcher(unit).matches()) {
                return pieces(parts.number(), text).then(number -> Outcome.ok(new Amount(Counting.PIECES, number)));
            }
            return VOLUME.matcher(unit).matches()
                    ? Outcome.refused(
                            "'" + CellReader.shown(text) + "' is a volume", "weigh it, and write it as in 500 g")
                    : mass(parts.number(), unit)
                            .then(SaidAmount::milligrams)
                            .then(number -> Outcome.ok(new Amount(Counting.MASS, number)));
        });
    }

    static Outcome<WrittenMass> mass(String number, String unit) {
        return WrittenMass.parse(Said.measure(number + " " + unit));
    }

    private static Outcome<Long> pieces(String number, String text) {
        BigDecimal read = new BigDecimal(number);
        return read.stripTrailingZeros().scale() > 0
                ? Outcome.refused(
                        "'" + CellReader.shown(text) + "' has no unit, and is no whole number of pieces",
                        "write it as in 2.5 kg or 500 g, or how many")
                : SaidAmount.pieces(read);
    }
}
