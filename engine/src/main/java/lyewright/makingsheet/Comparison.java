package lyewright.makingsheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lyewright.formula.MaterialChange;
import lyewright.formula.ResolvedFormula.OilPart;

/**
 * What changes from one sheet to another, as rows of figures. What a formula asks for a kilogram of oils is compared before
 * rounding, so that balances are not taken for a difference; superfat, lye, masses of the batch and the cured bar are those of the
 * two sheets, to the last digit that each shows by itself.
 *
 * @param a the sheet it is from
 * @param b the sheet it is to
 * @param rows every figure compared, those that are the same included, in the order of the groups
 * @param cautions every caution of either sheet, paired where both have it
 */
public record Comparison(MakingSheet a, MakingSheet b, List<Row> rows, List<CautionChange> cautions) {

    /** Copies its lists. */
    public Comparison {
        rows = List.copyOf(rows);
        cautions = List.copyOf(cautions);
    }

    /**
     * Compares two sheets.
     *
     * @param a from
     * @param b to
     * @return what changes; of use where both were filled alike
     */
    public static Comparison of(MakingSheet a, MakingSheet b) {
        return new Comparison(a, b, ComparisonRows.of(a, b), CautionChange.of(a.cautions(), b.cautions()));
    }

    /**
     * The figures of one sheet that it would be compared by.
     *
     * @param sheet the sheet
     * @return rows, each with the same value on either side
     */
    public static List<Row> figures(MakingSheet sheet) {
        return List.copyOf(ComparisonRows.of(sheet));
    }

    /** What a row is about. */
    public enum Group {
        /** Oils, percent of all oils; a premix counts with its parts. */
        OILS,
        /** Additions, grams for a kilogram of oils. */
        ADDITIONS,
        /** Alkali and water, grams for a kilogram of oils. */
        ALKALI_AND_WATER,
        /** Superfat and the lye's strength. */
        SUPERFAT_AND_LYE,
        /** Fatty acids, percent. */
        FATTY_ACIDS,
        /** What the oils take of alkali. */
        OIL_VALUES,
        /** What bears on keeping. */
        KEEPING,
        /** What the cured bar consists of, percent. */
        CURED_BAR,
        /** What comes out. */
        BATCH
    }

    /**
     * One figure of both.
     *
     * @param path where it stands, such as {@code oils.castor}; as in the sheet's JSON where that has it
     * @param group what it is about
     * @param label what it is called
     * @param a its value in the first sheet; empty where that has none
     * @param b its value in the second
     * @param unit its unit, or empty
     * @param decimals how many of its decimals mean something
     */
    public record Row(
            String path, Group group, String label, Optional<Double> a, Optional<Double> b, String unit, int decimals) {

        /**
         * The change, unrounded.
         *
         * @return b less a; empty where either is
         */
        public Optional<Double> difference() {
            return a.isPresent() && b.isPresent() ? Optional.of(b.get() - a.get()) : Optional.empty();
        }

        /**
         * The change between the two figures as they are shown.
         *
         * @return rounded b less rounded a; empty where either is
         */
        public Optional<BigDecimal> shownDifference() {
            return a.isPresent() && b.isPresent()
                    ? Optional.of(shown(b.get()).subtract(shown(a.get())))
                    : Optional.empty();
        }

        /**
         * Whether the two differ as they are shown.
         *
         * @return true too where only one has a value
         */
        public boolean differs() {
            return a.isPresent() == b.isPresent()
                    ? shownDifference().map(d -> d.signum() != 0).orElse(false)
                    : true;
        }

        private BigDecimal shown(double value) {
            return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        }
    }

    /**
     * The rows of one group.
     *
     * @param group which
     * @return in order
     */
    public List<Row> of(Group group) {
        return rows.stream().filter(row -> row.group() == group).toList();
    }

    /**
     * One row.
     *
     * @param path its path
     * @return the row, if both sheets have it or one has
     */
    public Optional<Row> row(String path) {
        return rows.stream().filter(row -> row.path().equals(path)).findFirst();
    }

    /**
     * The premixes of either formula, whose oils are counted with the others.
     *
     * @return their names, each once
     */
    public List<String> premixes() {
        return Stream.of(a, b)
                .flatMap(sheet -> sheet.formula().oils().stream())
                .filter(part -> !part.parts().get(0).oil().key().equals(part.key())
                        || part.parts().size() > 1)
                .map(OilPart::name)
                .distinct()
                .toList();
    }

    /**
     * Figures of materials that the two do not have alike, since one carries the maker's own.
     *
     * @return of materials that both name
     */
    public List<MaterialChange> materials() {
        return MaterialChange.between(
                a.formula().formula(), b.formula().formula(), b.formula().tables());
    }

    /**
     * Whether any figure or caution differs.
     *
     * @return false if all that is compared is the same
     */
    public boolean differs() {
        return rows.stream().anyMatch(Row::differs)
                || cautions.stream().anyMatch(caution -> caution.change() != CautionChange.Change.STAYS);
    }
}
