package lyewright.stock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lyewright.formula.Addition;
import lyewright.formula.AlkaliChoice;
import lyewright.formula.Formula;
import lyewright.formula.OilLine;
import lyewright.material.Alkali;
import lyewright.material.Tables;

/**
 * A lot of a recipe's material that is past its best before, or will be before a batch that is made now is cured.
 *
 * @param key what recipes call the material
 * @param lot the lot; it may be used but for its day, and holds something
 * @param isOver whether its best before is over
 * @param others whether there is some of it that is good for longer
 */
public record Expiry(String key, Lot lot, boolean isOver, boolean others) {

    /**
     * How long a batch that is made now usually cures at most; common practice, by the tables.
     *
     * @param tables which
     * @return weeks
     */
    public static int weeksOfCure(Tables tables) {
        return (int) Math.round(tables.practice("cure-plain").high());
    }

    /**
     * What a recipe takes from a cupboard: its oils, additions, what they are dispersed in, its alkali.
     *
     * @param formula a recipe
     * @return their keys; a premix and a stock lye count as they are, not as what they were made of
     */
    public static Set<String> takenBy(Formula formula) {
        Set<String> keys = new LinkedHashSet<>();
        formula.oils().stream().map(OilLine::key).forEach(keys::add);
        for (Addition addition : formula.additions()) {
            keys.add(addition.of());
            addition.disperse().ifPresent(disperse -> keys.add(disperse.in()));
        }
        keys.addAll(alkalis(formula.alkali()));
        return keys;
    }

    private static List<String> alkalis(AlkaliChoice choice) {
        String soda = Alkali.SODIUM.key();
        String potash = Alkali.POTASSIUM.key();
        if (choice instanceof AlkaliChoice.Single single) {
            return List.of(single.alkali().key());
        }
        if (choice instanceof AlkaliChoice.Stock lye) {
            return List.of(lye.key());
        }
        if (choice instanceof AlkaliChoice.Given given) {
            List<String> keys = new ArrayList<>();
            given.sodium().ifPresent(any -> keys.add(soda));
            given.potassium().ifPresent(any -> keys.add(potash));
            return keys;
        }
        return List.of(soda, potash);
    }

    /**
     * What of a cupboard is old for a recipe.
     *
     * @param keys what the recipe takes
     * @param lots all lots by what recipes call them
     * @param day today
     * @param weeks how long it has to be good for
     * @return what is over or will be, in the order of the keys, what expires first before the others
     */
    public static List<Expiry> of(Collection<String> keys, Map<String, List<Lot>> lots, LocalDate day, int weeks) {
        LocalDate until = day.plusWeeks(weeks);
        List<Expiry> old = new ArrayList<>();
        for (String key : keys) {
            List<Lot> own = lots.getOrDefault(key, List.of()).stream()
                    .filter(lot -> lot.status() == LotStatus.USABLE && lot.left() > 0)
                    .sorted(Lot.FIRST_EXPIRED_FIRST)
                    .toList();
            boolean others = own.stream().anyMatch(lot -> !isOld(lot, until));
            own.stream()
                    .filter(lot -> isOld(lot, until))
                    .forEach(lot -> old.add(new Expiry(key, lot, lot.isExpired(day), others)));
        }
        return old;
    }

    private static boolean isOld(Lot lot, LocalDate until) {
        return lot.bestBefore().filter(last -> last.isBefore(until)).isPresent();
    }

    /**
     * Of several, the one that presses most: what is over before what will be, what has no other before what has.
     *
     * @param all of a recipe
     * @return it, empty of none
     */
    public static Optional<Expiry> mostPressing(List<Expiry> all) {
        return all.stream().min(Expiry::compare);
    }

    private static int compare(Expiry one, Expiry other) {
        return one.isOver() != other.isOver()
                ? Boolean.compare(other.isOver(), one.isOver())
                : Boolean.compare(one.others(), other.others());
    }
}
