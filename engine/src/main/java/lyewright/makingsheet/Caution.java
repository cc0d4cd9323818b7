package lyewright.makingsheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * Something to beware of, as data and as a sentence. The sentence is put together only when it is asked for.
 *
 * @param id which caution, stable
 * @param level how grave
 * @param sentence what is so, with {@code {}} where the figures go
 * @param remedy what to do about it
 * @param source who says so, or common practice
 * @param figures what goes into the sentence, in order: text, {@link Shown} numbers or {@link Weight} masses
 */
public record Caution(String id, Level level, String sentence, String remedy, String source, List<Object> figures) {

    /** The source of what the trade knows and nobody published. */
    static final String COMMON_PRACTICE = "common practice";

    private static final double LARGE = 10_000;
    private static final double KILOGRAM = 1000;

    /** How grave. Later is graver. */
    public enum Level {
        /** Good to know. */
        NOTE,
        /** Look at it before making. */
        CARE,
        /** Not to be made as it stands. */
        STOP;

        /**
         * As written.
         *
         * @return note, care or stop
         */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /**
     * A number in a sentence.
     *
     * @param value the number
     * @param decimals how many decimals it is shown with
     */
    record Shown(double value, int decimals) {
        @Override
        public String toString() {
            return BigDecimal.valueOf(value)
                    .setScale(decimals, RoundingMode.HALF_UP)
                    .toPlainString();
        }
    }

    /**
     * A mass in a sentence.
     *
     * @param grams the mass
     * @param inGrams how it reads in grams
     */
    record Weight(double grams, String inGrams) {
        @Override
        public String toString() {
            return inGrams;
        }
    }

    /** Says a mass in the units that a reader wants. */
    public interface MassWords {

        /**
         * In words.
         *
         * @param grams the mass
         * @param inGrams how it reads in grams
         * @return how it is to read
         */
        String say(double grams, String inGrams);
    }

    /** A number to one decimal. */
    static Shown tenths(double value) {
        return new Shown(value, 1);
    }

    /** A number to two decimals. */
    static Shown hundredths(double value) {
        return new Shown(value, 2);
    }

    /** A mass in whole grams; from 10 kg on in kilograms with as many digits. */
    static Weight mass(double grams) {
        return grams < LARGE ? gram(grams) : new Weight(grams, new Shown(grams / KILOGRAM, 3) + " kg");
    }

    /** A mass in whole grams. */
    static Weight gram(double grams) {
        return new Weight(grams, whole(grams) + " g");
    }

    /** A mass to the tenth of a gram. */
    static Weight tenthsOfGram(double grams) {
        return new Weight(grams, tenths(grams) + " g");
    }

    /** A whole number. */
    static Shown whole(double value) {
        return new Shown(value, 0);
    }

    /**
     * The same caution with its masses said otherwise.
     *
     * @param words how a mass is said
     * @return a caution of the same id, level and remedy
     */
    public Caution in(MassWords words) {
        return new Caution(
                id,
                level,
                sentence,
                remedy,
                source,
                figures.stream()
                        .map(figure ->
                                figure instanceof Weight weight ? words.say(weight.grams(), weight.inGrams()) : figure)
                        .toList());
    }

    /**
     * The sentence with its figures in it.
     *
     * @return one sentence, ending in a full stop
     */
    public String text() {
        StringBuilder text = new StringBuilder(sentence.length() + 40);
        int from = 0;
        for (Object figure : figures) {
            int hole = sentence.indexOf("{}", from);
            text.append(sentence, from, hole).append(figure);
            from = hole + 2;
        }
        return text.append(sentence, from, sentence.length()).toString();
    }
}
