package lyewright.web.cupboard;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import lyewright.measure.MassUnit;
import lyewright.measure.Outcome;
import lyewright.records.setting.Units;
import lyewright.records.stock.Counting;
import lyewright.records.stock.Price;
import lyewright.words.Figures;

/** Amounts and prices, said and read. */
final class Amounts {

    private static final double MILLIGRAMS = 1000;
    private static final double OUNCES_IN_POUND = 16;
    private static final Pattern PRICE = Pattern.compile("[0-9]{1,9}(?:[.,][0-9]{1,3})?");

    private static final Pattern THOUSAND_OR_ONE = Pattern.compile("[1-9][0-9]{0,2}[.,][0-9]{3}");

    private Amounts() {}

    /** An amount in the workshop's units: {@code 1.25 kg}, {@code 84 g}, {@code 50 pieces}. */
    static String said(Counting counting, long amount, Units units) {
        if (counting == Counting.PIECES) {
            return Math.abs(amount) == 1 ? amount + " piece" : amount + " pieces";
        }
        double grams = amount / MILLIGRAMS;
        if (units == Units.OUNCES) {
            double ounces = grams / MassUnit.OUNCE.grams().doubleValue();
            return Math.abs(ounces) >= OUNCES_IN_POUND
                    ? Figures.upTo(ounces / OUNCES_IN_POUND, 2) + " lb"
                    : Figures.upTo(ounces, 2) + " oz";
        }
        return Figures.stocked(grams);
    }

    /** The same to the last digit that is kept, for who has to type no more than it. */
    static String exactly(Counting counting, long amount, Units units) {
        return counting == Counting.PIECES || units == Units.OUNCES
                ? said(counting, amount, units)
                : Figures.upTo(amount / MILLIGRAMS, 3) + " g";
    }

    /** The same with its sign in front. */
    static String signed(Counting counting, long amount, Units units) {
        return amount > 0
                ? "+" + said(counting, amount, units)
                : said(counting, amount, units).replace('-', '\u2212');
    }

    /** A price with its currency. */
    static String said(Price price) {
        return price.decimal() + " " + price.currency();
    }

    /** Its sign, where the keyboards of those who pay in it have one. */
    private static String sign(String currency) {
        return switch (currency) {
            case "GBP" -> "£";
            case "EUR" -> "€";
            case "JPY" -> "¥";
            // there are many dollars; on a page it is the workshop's own
            default -> currency.endsWith("D") ? "$" : "";
        };
    }

    /** Without the workshop's own currency, before or behind; another one stays, and is no price here. */
    private static String bare(String text, String currency) {
        for (String own : List.of(sign(currency), currency)) {
            if (!own.isEmpty() && text.regionMatches(true, 0, own, 0, own.length())) {
                return text.substring(own.length()).strip();
            }
            int before = text.length() - own.length();
            if (!own.isEmpty() && before > 0 && text.regionMatches(true, before, own, 0, own.length())) {
                return text.substring(0, before).strip();
            }
        }
        return text;
    }

    /** A price as typed in the workshop's currency, with its sign or without; nothing where nothing was. */
    static Outcome<Optional<Price>> price(String typed, String currency) {
        if (typed.isBlank()) {
            return Outcome.ok(Optional.empty());
        }
        String text = bare(typed.strip(), currency);
        if (Price.digits(currency) < 3 && THOUSAND_OR_ONE.matcher(text).matches()) {
            return Outcome.refused(
                    "that may be thousands or a price with three decimals",
                    "write it without what parts thousands, as in 1000, or as in 1.00");
        }
        return PRICE.matcher(text).matches()
                ? Price.of(new BigDecimal(text.replace(',', '.')), currency)
                        .then(price -> Outcome.ok(Optional.of(price)))
                : Outcome.refused("that is not a price in " + currency, "write it as in 42.50");
    }

    /** How much of what came is there, whole percent from 0 to 100; 0 where nothing came. */
    static int level(long there, long came) {
        return came <= 0 ? 0 : (int) Math.max(0, Math.min(100, Math.round(100.0 * there / came)));
    }
}
