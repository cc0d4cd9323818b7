package lyewright.chemistry;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What batter or bar consists of at one moment, by mass balance: what was weighed is what there is, but for the water that
 * dries off. Glycerides and alkali give soap and glycerol, acids and alkali give soap or salts and water. Acids among the
 * additions take their alkali first, then the free acids of the oils, then the glycerides of all oils alike; so says {@link
 * Reaction}, and this keeps to it. Toppings are in the mass and stay as they are.
 *
 * <p>Simplified: of an oil's unsaponifiable matter half of what its standard allows is taken, since standards give only a
 * maximum, and none where no standard was found. Every acid of the additions gives a water for each alkali it takes; alum
 * gives none, borax and carbon dioxide one for two, so that what they form comes out a ninth of the alum's mass, a twentieth of
 * the borax's and two fifths of the gas's too light. Crystal water that the tables do not give, as of borax, stays with its
 * salt. Sugars and proteins, which alkali breaks down, are left as they are.
 *
 * @param moment when
 * @param totalGrams everything, of which all percentages are
 * @param settled whether its substances are known: not while the reaction is under way
 * @param reactedLowPercent least that has reacted by then, percent of what will react
 * @param reactedHighPercent most that has reacted by then
 * @param substances by kind, heaviest first; none where it is not settled
 * @param totalFattyMatterPercent fatty acids of the soaps, glycerides, free fatty acids, rosin and unsaponifiable matter, as
 *     ISO 685 counts it: what a mineral acid sets free and petroleum takes up; fragrance, of which petroleum takes up some, is
 *     left out; empty where it is not settled
 * @param chloridePercent common salt, NaCl, of which other chlorides are no part; empty where it is not settled
 * @param water where water came from and went
 */
public record Composition(
        Moment moment,
        double totalGrams,
        boolean settled,
        double reactedLowPercent,
        double reactedHighPercent,
        List<Substance> substances,
        Optional<Double> totalFattyMatterPercent,
        Optional<Double> chloridePercent,
        Water water) {

    /** The order substances are told in. */
    static final Comparator<Substance> BY_KIND_AND_SHARE =
            Comparator.comparing(Substance::kind).thenComparing(Substance::percent, Comparator.reverseOrder());

    /** What a name begins with of wax that is left: no more of it surely reacts, so it is no superfat. */
    private static final String WAX_LEFT = "Wax left of ";

    /**
     * What wax is called once its acid has reacted.
     *
     * @param wax its name within a sentence
     * @return such as {@code Wax left of beeswax (white)}
     */
    public static String waxLeft(String wax) {
        return WAX_LEFT + wax;
    }

    /** Copies its list. */
    public Composition {
        substances = List.copyOf(substances);
    }

    /**
     * What given masses are when poured, when cut and when cured.
     *
     * @param batch the batch's lines
     * @param masses grams by line, none under 0; those of a portion for the portion ({@link BatchLines#massesOfPortion})
     * @return the three moments in that order
     */
    public static List<Composition> of(BatchLines batch, double[] masses) {
        return new CompositionBuilder(batch, masses).moments();
    }

    /** The moments at which somebody asks. */
    public enum Moment {
        /** As weighed and poured, nothing reacted. */
        POUR("pour"),
        /** When it is cut: as heavy as poured, the reaction under way. */
        CUT("cut"),
        /** All reacted that can, with the formula's cured water, or the poured water where that is less. */
        CURED("cured");

        private final String word;

        Moment(String word) {
            this.word = word;
        }

        /**
         * Its word.
         *
         * @return pour, cut or cured
         */
        public String word() {
            return word;
        }
    }

    /** What a substance is. */
    public enum Kind {
        /** Soap of an oil or of a free fatty acid, with one of the alkalis. */
        SOAP("soap"),
        /** Glycerol, formed or added. */
        GLYCEROL("glycerol"),
        /** Glycerides and waxes that have not reacted. */
        OIL_LEFT("oilLeft"),
        /** Acids that have not reacted, with what else of the additions takes alkali. */
        ACID_LEFT("acidLeft"),
        /** What acids of the additions form with alkali. */
        ACID_SALT("acidSalt"),
        /** What of an oil never turns to soap. */
        UNSAPONIFIABLE("unsaponifiable"),
        /** Common salt. */
        SALT("salt"),
        /** Water. */
        WATER("water"),
        /** Alkali that nothing takes, or that nothing has taken yet. */
        FREE_ALKALI("freeAlkali"),
        /** Clays, colours, exfoliants, and what the purity of sodium hydroxide leaves out. */
        INERT("inert"),
        /** The rest: fragrance, sugar, solids of milk, botanicals and so on. */
        OTHER("other");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /**
         * Its word in data.
         *
         * @return such as {@code soap} or {@code oilLeft}
         */
        public String word() {
            return word;
        }
    }

    /**
     * One substance. No two of a composition have kind, name and key alike.
     *
     * @param kind what it is
     * @param name in plain words
     * @param inci its INCI name, empty where none is known
     * @param of key in the formula of what it comes from, else {@code water}, {@code naoh} or {@code koh}
     * @param grams how much, never under 0
     * @param percent of everything at that moment
     */
    public record Substance(Kind kind, String name, String inci, String of, double grams, double percent) {

        /**
         * Whether it is wax that does not react, or not surely: {@link Kind#OIL_LEFT} that is no superfat.
         *
         * @return true for a wax once it could have reacted
         */
        public boolean waxLeft() {
            return kind == Kind.OIL_LEFT && name.startsWith(WAX_LEFT);
        }
    }

    /**
     * Where water came from and went, grams.
     *
     * @param addedGrams by the formula's water rule: plain, for wetting out, a stock lye's, and what is water in liquids that
     *     replace it
     * @param countedGrams what is no water in liquids that replace it; the rule counts it as water all the same
     * @param broughtGrams by potash and by other additions
     * @param formedGrams by neutralisation; when cut, of all acid, since acids react first
     * @param lostGrams by drying, from poured to then
     */
    public record Water(
            double addedGrams, double countedGrams, double broughtGrams, double formedGrams, double lostGrams) {

        /**
         * What is left.
         *
         * @return grams
         */
        public double leftGrams() {
            return addedGrams + broughtGrams + formedGrams - lostGrams;
        }
    }

    /**
     * All of one kind.
     *
     * @param kind which
     * @return grams, 0 if there is none
     */
    public double grams(Kind kind) {
        double sum = 0;
        for (Substance substance : substances) {
            sum += substance.kind() == kind ? substance.grams() : 0;
        }
        return sum;
    }

    /**
     * All of one kind.
     *
     * @param kind which
     * @return percent of everything, 0 if there is none
     */
    public double percent(Kind kind) {
        double sum = 0;
        for (Substance substance : substances) {
            sum += substance.kind() == kind ? substance.percent() : 0;
        }
        return sum;
    }

    /**
     * All wax that is left once it could have reacted, which is part of {@link Kind#OIL_LEFT}.
     *
     * @return percent of everything, 0 if there is none
     */
    public double waxLeftPercent() {
        double sum = 0;
        for (Substance substance : substances) {
            sum += substance.waxLeft() ? substance.percent() : 0;
        }
        return sum;
    }
}
