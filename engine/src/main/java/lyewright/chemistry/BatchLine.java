package lyewright.chemistry;

import lyewright.formula.Linear;
import lyewright.formula.Stage;

/**
 * One thing that is weighed, as a straight line in the mass of oils, with what each gram of it brings to the chemistry.
 *
 * @param kind what it is
 * @param key its key as in the formula, else {@code water}, {@code naoh}, {@code koh}
 * @param stage when it goes in
 * @param portion place of the portion it goes into, -1 for the whole batter
 * @param place its place among the formula's oils or additions; -1 for water and alkali
 * @param mass how much
 * @param equivalents mol of alkali that the oil phase in a gram of it can take
 * @param freeAcid mol of those that are free acid
 * @param taken mol of alkali that a gram of it takes before any reaches the oil phase
 * @param alkali mol of alkali in a gram of it
 * @param water grams of water in a gram of it
 * @param gramsPerMillilitre its density in the batter
 */
public record BatchLine(
        Kind kind,
        String key,
        Stage stage,
        int portion,
        int place,
        Linear mass,
        double equivalents,
        double freeAcid,
        double taken,
        double alkali,
        double water,
        double gramsPerMillilitre) {

    /** What a line is. */
    public enum Kind {
        /** An oil for the pot. */
        OIL,
        /** An addition. */
        ADDITION,
        /** The liquid an addition is wetted out with; follows it. */
        DISPERSING_LIQUID,
        /** Plain water for the lye jug. */
        WATER,
        /** Sodium or potassium hydroxide as it comes, or stock lye. */
        ALKALI
    }

    /**
     * The same line with another mass.
     *
     * @param other the mass
     * @return the line
     */
    BatchLine with(Linear other) {
        return new BatchLine(
                kind,
                key,
                stage,
                portion,
                place,
                other,
                equivalents,
                freeAcid,
                taken,
                alkali,
                water,
                gramsPerMillilitre);
    }

    /**
     * Whether it lies on top of the batter, outside its chemistry and volume.
     *
     * @return true for toppings
     */
    public boolean onTop() {
        return stage.kind() == Stage.Kind.TOP;
    }

    /**
     * Whether it is in the lye jug when the alkali goes in.
     *
     * @return true for plain water, what goes in at stage lye, and the alkali itself
     */
    public boolean inLyeJug() {
        return stage.kind() == Stage.Kind.LYE;
    }

    /**
     * Whether it is part of the base batter, which portions are shares of.
     *
     * @return true unless it goes into portions or on top
     */
    public boolean inBaseBatter() {
        return switch (stage.kind()) {
            case LYE, OILS, TRACE -> true;
            case EVERY_PORTION, PORTION, TOP -> false;
        };
    }
}
