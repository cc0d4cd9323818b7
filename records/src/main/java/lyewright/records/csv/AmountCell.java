package lyewright.records.csv;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.measure.Outcome;
import lyewright.measure.WrittenMass;
import lyewright.records.stock.Counting;
import lyewright.records.stock.StockRow.Amount;

/** Reads how much: a mass with its unit, or a number of pieces. */
final class AmountCell {

    private static final Pattern PARTS = Pattern.compile("([0-9.,](?:[0-9.,' \u2019\u00a0\u202f]*[0-9])?)\\s*(.*)");
    private static final BigDecimal MOST = BigDecimal.TEN.pow(15);

    private static final Map<String, String> UNITS = Map.ofEntries(
            Map.entry("gram", "g"),
            Map.entry("grams", "g"),
            Map.entry("gr", "g"),
            Map.entry("kilogram", "kg"),
            Map.entry("kilograms", "kg"),
            Map.entry("kilo", "kg"),
            Map.entry("kilos", "kg"),
            Map.entry("lbs", "lb"),
            Map.entry("pound", "lb"),
            Map.entry("pounds", "lb"),
            Map.entry("ounce", "oz"),
            Map.entry("ounces", "oz"));

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
        return decimal.read(parts.group(1)).then(number -> Outcome.ok(new Parts(number, unit(parts.group(2)))));
    }

    private static String unit(String written) {
        String small = written.strip().toLowerCase(Locale.ROOT).replaceAll("\\.$", "");
        return UNITS.getOrDefault(small, small);
    }

    /**
     * An amount.
     *
     * @param usual the unit of a number that has none; empty for a number of pieces
     */
    static Outcome<Amount> read(String text, DecimalSign decimal, String usual) {
        return parts(text, decimal).then(parts -> {
            String unit = parts.unit().isEmpty() ? usual : parts.unit();
            if (unit.isEmpty() || unit.matches("pieces|piece|pcs|pc|x")) {
                return pieces(parts.number(), text).then(number -> Outcome.ok(new Amount(Counting.PIECES, number)));
            }
            return unit.matches("ml|l|cl|litres?|liters?")
                    ? Outcome.refused(
                            "'" + CellReader.shown(text) + "' is a volume", "weigh it, and write it as in 500 g")
                    : mass(parts.number(), unit)
                            .then(AmountCell::milligrams)
                            .then(number -> Outcome.ok(new Amount(Counting.MASS, number)));
        });
    }

    static Outcome<WrittenMass> mass(String number, String unit) {
        return WrittenMass.parse(number + " " + unit);
    }

    static Outcome<Long> milligrams(WrittenMass mass) {
        BigDecimal milligrams = mass.exactGrams().movePointRight(3).setScale(0, RoundingMode.HALF_UP);
        if (mass.value().signum() > 0 && milligrams.signum() == 0) {
            return Outcome.refused("'" + mass + "' is less than a milligram", "look at the number and its unit");
        }
        return milligrams.compareTo(MOST) > 0
                ? Outcome.refused("'" + mass + "' is more than there can be", "look at the number and its unit")
                : Outcome.ok(milligrams.longValueExact());
    }

    static Outcome<Long> pieces(String number, String text) {
        BigDecimal read = new BigDecimal(number);
        if (read.stripTrailingZeros().scale() > 0) {
            return Outcome.refused(
                    "'" + CellReader.shown(text) + "' has no unit, and is no whole number of pieces",
                    "write it as in 2.5 kg or 500 g, or how many");
        }
        return read.compareTo(MOST) > 0
                ? Outcome.refused(
                        "'" + CellReader.shown(text) + "' is more than there can be", "look at the number again")
                : Outcome.ok(read.longValueExact());
    }
}
