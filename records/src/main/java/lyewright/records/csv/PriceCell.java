package lyewright.records.csv;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.measure.Outcome;
import lyewright.records.stock.Price;

/**
 * Reads a price, with its currency or without. How many decimals a currency has and what is too much is asked of {@link Price}, as on
 * pages; a page's price stands beside the workshop's currency and names none, and a file's may.
 */
final class PriceCell {

    private static final Pattern PRICE = Pattern.compile(
            "([A-Za-z]{3}|[£€$])?\\s*([0-9.,](?:[0-9.,' \u2019\u00a0\u202f]*[0-9])?)\\s*([A-Za-z]{3}|[£€$])?");

    private PriceCell() {}

    /**
     * A price.
     *
     * @param column what the row's own column of currencies says; perhaps empty
     * @param usual the workshop's currency
     */
    static Outcome<Price> read(String text, DecimalSign decimal, String column, String usual) {
        Matcher parts = PRICE.matcher(text);
        if (!parts.matches()) {
            return Outcome.refused("'" + CellReader.shown(text) + "' is no price", "write it as in 42.50");
        }
        String said = Optional.ofNullable(parts.group(1))
                .or(() -> Optional.ofNullable(parts.group(3)))
                .orElse("");
        return currency(said, column, usual)
                .then(currency -> decimal.read(parts.group(2))
                        .then(number -> Price.of(new BigDecimal(number), currency.getCurrencyCode())));
    }

    private static Outcome<Currency> currency(String said, String column, String usual) {
        String inCell = code(said, usual);
        String beside = column.strip().toUpperCase(Locale.ROOT);
        if (!inCell.isEmpty() && !beside.isEmpty() && !inCell.equals(beside)) {
            return Outcome.refused(
                    "the price is in '" + inCell + "' and the column beside it says '" + CellReader.shown(beside) + "'",
                    "leave one of the two out");
        }
        String code = !inCell.isEmpty() ? inCell : beside.isEmpty() ? usual : beside;
        try {
            Currency currency = Currency.getInstance(code);
            return currency.getDefaultFractionDigits() < 0
                    ? Outcome.refused("nobody pays in '" + code + "'", "write a currency as in GBP")
                    : Outcome.ok(currency);
        } catch (IllegalArgumentException e) {
            return Outcome.refused("'" + CellReader.shown(code) + "' is no currency", "write it as in GBP or EUR");
        }
    }

    private static String code(String said, String usual) {
        return switch (said) {
            case "£" -> "GBP";
            case "€" -> "EUR";
            // there are many dollars; the workshop's own, where it has one
            case "$" -> usual.endsWith("D") ? usual : "USD";
            default -> said.toUpperCase(Locale.ROOT);
        };
    }
}
