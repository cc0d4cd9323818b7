package lyewright.measure;

import java.math.BigDecimal;
import java.util.List;

/**
 * A share in percent, kept as the decimal that was typed so that sums are exact. Never negative; a caller who needs it
 * under 100 checks that.
 *
 * @param percent the percentage as typed
 */
public record Share(BigDecimal percent) {

    /** The whole. */
    public static final Share WHOLE = new Share(new BigDecimal(100));

    /** Refuses a negative share: that is a broken promise of the caller. */
    public Share {
        if (percent.signum() < 0) {
            throw new IllegalArgumentException("share must not be negative: " + percent + " %");
        }
    }

    /**
     * A share in percent.
     *
     * @param percent a plain decimal, 0 or more
     * @return the share
     */
    public static Share ofPercent(String percent) {
        return new Share(new BigDecimal(percent));
    }

    /**
     * Reads {@code 18 %} or {@code 2.5%}.
     *
     * @param text the text
     * @return the share, or why not
     */
    public static Outcome<Share> parse(String text) {
        return Numeral.read(text).then(read -> {
            if (read.unit().equals("%")) {
                return Outcome.ok(new Share(read.value()));
            }
            String number = read.value().toPlainString();
            return Outcome.refused("'" + text.strip() + "' is not a percentage", "write it as " + number + " %");
        });
    }

    /**
     * As a figure to compute with.
     *
     * @return the share as a fraction of one
     */
    public double fraction() {
        return percent.doubleValue() / 100;
    }

    /**
     * All of several shares.
     *
     * @param shares the shares
     * @return their exact sum, in percent
     */
    public static BigDecimal sum(List<Share> shares) {
        return shares.stream().map(Share::percent).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** As it is written in a formula file, such as {@code 18 %}. */
    @Override
    public String toString() {
        return percent.toPlainString() + " %";
    }
}
