package lyewright.web.make;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.stock.Cupboard;
import lyewright.stock.Lot;
import lyewright.words.Dates;

/**
 * The form on which lots are picked by hand.
 *
 * @param byHand whether any are
 * @param carried everything else that is chosen
 * @param materials what may be picked of
 * @param back the address of the same sheet, first expired, first out
 */
public record Picking(boolean byHand, Map<String, String> carried, List<Material> materials, String back) {

    /** Copies what it is given. */
    public Picking {
        materials = List.copyOf(materials);
    }

    /**
     * A material and its lots.
     *
     * @param name what it is called
     * @param field where it is said which lot comes first
     * @param asItComes whether none does
     * @param lots what holds something and may be used
     */
    public record Material(String name, String field, boolean asItComes, List<Choice> lots) {

        /** Copies its list. */
        public Material {
            lots = List.copyOf(lots);
        }
    }

    /**
     * A lot.
     *
     * @param id its id
     * @param code its own code
     * @param address its page
     * @param says what it holds, and until when it is good
     * @param first whether it is taken first
     * @param leave the field in which it is left out
     * @param out whether it is
     */
    public record Choice(
            String id, String code, String address, String says, boolean first, String leave, boolean out) {}

    static Optional<Picking> of(FromCupboard taken, MakeChoice choice, LotWords words) {
        List<Material> materials = new ArrayList<>();
        for (Cupboard.Line line : taken.cupboard().lines()) {
            List<Lot> lots = taken.stock().usable(line.need());
            // of one lot there is nothing to pick, unless it was left out before
            if (lots.size() > 1
                    || lots.stream().anyMatch(lot -> choice.leftOut().contains(lot.id()))) {
                materials.add(material(line, lots, taken, choice, words));
            }
        }
        Map<String, String> carried = new LinkedHashMap<>(choice.withoutPicks().texts());
        return materials.isEmpty()
                ? Optional.empty()
                : Optional.of(new Picking(
                        choice.picksLots(),
                        carried,
                        materials,
                        "/make?" + choice.withoutPicks().query() + "#from-cupboard"));
    }

    private static Material material(
            Cupboard.Line line, List<Lot> lots, FromCupboard taken, MakeChoice choice, LotWords words) {
        String key = line.need().key();
        String first = choice.firstLots().getOrDefault(key, "");
        List<Choice> choices = lots.stream()
                .map(lot -> new Choice(
                        lot.id(),
                        lot.code(),
                        "/stores/lots/" + lot.id(),
                        words.mass(lot.left())
                                + lot.bestBefore()
                                        .map(day -> ", best before " + Dates.day(day))
                                        .orElse("")
                                + (taken.stock().certificates().containsKey(lot.id()) ? ", certified" : ""),
                        lot.id().equals(first),
                        MakeChoice.LEAVE_LOT + lot.id(),
                        choice.leftOut().contains(lot.id())))
                .toList();
        return new Material(
                line.need().name(), MakeChoice.FIRST_LOT + key, choices.stream().noneMatch(Choice::first), choices);
    }
}
