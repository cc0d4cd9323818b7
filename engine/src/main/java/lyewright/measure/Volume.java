package lyewright.measure;

import java.math.BigDecimal;

/**
 * A volume as somebody typed it, decimal and unit kept. Never negative.
 *
 * @param value the number as typed
 * @param unit its unit
 */
public record Volume(BigDecimal value, VolumeUnit unit) {

    /** Refuses a negative volume: that is a broken promise of the caller. */
    public Volume {
        if (value.signum() < 0) {
            throw new IllegalArgumentException("volume must not be negative: " + value + " " + unit.symbol());
        }
    }

    /**
     * Reads {@code 95 ml} or {@code 1.2l}.
     *
     * @param text the text
     * @return the volume, or why not
     */
    public static Outcome<Volume> parse(String text) {
        return Numeral.read(text)
                .then(read -> Numeral.inUnit(
                        read, VolumeUnit.values(), VolumeUnit::symbol, u -> new Volume(read.value(), u), "95 ml"));
    }

    /**
     * As a figure to compute with.
     *
     * @return millilitres
     */
    public double millilitres() {
        return value.doubleValue() * unit.millilitres();
    }

    /** As it is written in a formula file, such as {@code 95 ml}. */
    @Override
    public String toString() {
        return value.toPlainString() + " " + unit.symbol();
    }
}
