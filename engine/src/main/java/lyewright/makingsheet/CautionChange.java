package lyewright.makingsheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;

/**
 * A caution of one sheet or of both.
 *
 * @param a as the first sheet has it, if it does
 * @param b as the second has it, if it does; at least one of the two is there
 */
public record CautionChange(Optional<Caution> a, Optional<Caution> b) {

    /** What becomes of a caution. */
    public enum Change {
        /** Only the second sheet has it. */
        COMES,
        /** Only the first has it. */
        GOES,
        /** Both have it, the second as a graver one. */
        GRAVER,
        /** Both have it, the second as a milder one. */
        MILDER,
        /** Both have it, in other words: of other oils, or of another portion. */
        CHANGES,
        /** Both have it, perhaps with other figures. */
        STAYS
    }

    /**
     * Pairs the cautions of two sheets by their ids, those first that say the same.
     *
     * @param a the first sheet's
     * @param b the second sheet's
     * @return each caution once, the second sheet's order first, then what goes
     */
    static List<CautionChange> of(List<Caution> a, List<Caution> b) {
        List<Caution> left = new ArrayList<>(a);
        List<Optional<Caution>> partners = new ArrayList<>(Collections.nCopies(b.size(), Optional.empty()));
        // what is most alike goes first, lest another of its kind takes its partner
        fill(partners, left, b, CautionChange::alike);
        fill(partners, left, b, CautionChange::alikeButForNumbers);
        fill(partners, left, b, CautionChange::ofOneKind);
        List<CautionChange> changes = new ArrayList<>();
        for (int i = 0; i < b.size(); i++) {
            changes.add(new CautionChange(partners.get(i), Optional.of(b.get(i))));
        }
        left.forEach(caution -> changes.add(new CautionChange(Optional.of(caution), Optional.empty())));
        return changes;
    }

    private static void fill(
            List<Optional<Caution>> partners,
            List<Caution> left,
            List<Caution> b,
            BiPredicate<Caution, Caution> alike) {
        for (int i = 0; i < b.size(); i++) {
            if (partners.get(i).isEmpty()) {
                partners.set(i, take(left, b.get(i), alike));
            }
        }
    }

    private static Optional<Caution> take(List<Caution> from, Caution caution, BiPredicate<Caution, Caution> alike) {
        Optional<Caution> partner =
                from.stream().filter(other -> alike.test(caution, other)).findFirst();
        partner.ifPresent(from::remove);
        return partner;
    }

    private static boolean alike(Caution one, Caution other) {
        return ofOneKind(one, other) && one.text().equals(other.text());
    }

    private static boolean alikeButForNumbers(Caution one, Caution other) {
        return ofOneKind(one, other) && withoutNumbers(one.text()).equals(withoutNumbers(other.text()));
    }

    private static boolean ofOneKind(Caution one, Caution other) {
        return one.id().equals(other.id());
    }

    private static String withoutNumbers(String text) {
        return text.replaceAll("-?[0-9]+(\\.[0-9]+)?", "#");
    }

    /**
     * What becomes of it.
     *
     * @return from the first sheet to the second
     */
    public Change change() {
        if (a.isEmpty()) {
            return Change.COMES;
        }
        if (b.isEmpty()) {
            return Change.GOES;
        }
        int graver = b.get().level().compareTo(a.get().level());
        if (graver != 0) {
            return graver > 0 ? Change.GRAVER : Change.MILDER;
        }
        return alikeButForNumbers(a.get(), b.get()) ? Change.STAYS : Change.CHANGES;
    }

    /**
     * The caution to read.
     *
     * @return the second sheet's, else the first's
     */
    public Caution caution() {
        return b.or(() -> a).orElseThrow(() -> new IllegalStateException("a change of no caution"));
    }
}
