package lyewright.web.stores;

import java.util.List;
import java.util.Optional;
import lyewright.picture.Drawing;
import lyewright.web.Frame;

/**
 * All that is in the stores.
 *
 * @param frame around it
 * @param moulds by name
 * @param balances by name; the usual two where there are none
 * @param usualBalances whether those are only taken for granted
 * @param jugs by name
 * @param jugNotes what sheets do with them
 * @param materials the maker's own, by key
 * @param known how much the tables know, in words
 */
public record StoresPage(
        Frame frame,
        List<MouldTile> moulds,
        List<BalanceRow> balances,
        boolean usualBalances,
        List<JugRow> jugs,
        List<String> jugNotes,
        List<MaterialRow> materials,
        String known) {

    /** Copies its lists. */
    public StoresPage {
        moulds = List.copyOf(moulds);
        balances = List.copyOf(balances);
        jugs = List.copyOf(jugs);
        jugNotes = List.copyOf(jugNotes);
        materials = List.copyOf(materials);
    }

    /**
     * A mould.
     *
     * @param id its id
     * @param name what it is called
     * @param kind what it is
     * @param drawing its shape and cut; empty for a shape that was not measured
     * @param measures its inside as typed, empty where it was not measured
     * @param sentences what it holds
     */
    public record MouldTile(
            String id, String name, String kind, Optional<Drawing> drawing, String measures, List<String> sentences) {
        /** Copies its list. */
        public MouldTile {
            sentences = List.copyOf(sentences);
        }
    }

    /**
     * A balance.
     *
     * @param id its id; empty for one that is only taken for granted
     * @param name what it is called
     * @param capacity the most it carries
     * @param step what it counts in
     * @param accuracyClass its OIML class, or what it is taken for
     */
    public record BalanceRow(String id, String name, String capacity, String step, String accuracyClass) {}

    /**
     * A jug or a pot.
     *
     * @param id its id
     * @param name what it is called
     * @param empty its empty weight
     * @param use what it is for
     */
    public record JugRow(String id, String name, String empty, String use) {}

    /**
     * A material of the maker's own.
     *
     * @param id its id
     * @param key what recipes call it
     * @param kind what it is, in words
     * @param figures what is said of it
     * @param source where that is from, or empty
     * @param overrides whether the tables know the key too
     */
    public record MaterialRow(String id, String key, String kind, String figures, String source, boolean overrides) {}
}
