package lyewright.records.stock;

import java.time.Instant;
import java.util.Optional;
import lyewright.records.store.Author;

/**
 * So much that came or went.
 *
 * @param number the ledger's entry
 * @param at when it was written
 * @param author who wrote it
 * @param lotId of which lot
 * @param told what was told of it
 * @param correctedBy the number of the move that takes it back, if one does
 */
public record StockMove(long number, Instant at, Author author, String lotId, Told told, Optional<Long> correctedBy) {

    /**
     * What is told of a move.
     *
     * @param kind why it came or went
     * @param amount milligrams or pieces: above 0 where it came, below where it went; 0 only for a count that agreed
     * @param corrects the number of the move that it takes back, if it does
     * @param purpose what for, such as a recipe or a batch; perhaps empty
     * @param words how much was said in the maker's own words, such as {@code 2 teaspoons}; perhaps empty
     * @param why why, where that needs a word; perhaps empty
     */
    public record Told(MoveKind kind, long amount, Optional<Long> corrects, String purpose, String words, String why) {

        /** A move of which no more is told. */
        public static Told of(MoveKind kind, long amount) {
            return new Told(kind, amount, Optional.empty(), "", "", "");
        }

        /** With what it was for. */
        public Told withPurpose(String other) {
            return new Told(kind, amount, corrects, other, words, why);
        }

        /** With why. */
        public Told withWhy(String other) {
            return new Told(kind, amount, corrects, purpose, words, other);
        }

        /** With the maker's own words for how much. */
        public Told withWords(String other) {
            return new Told(kind, amount, corrects, purpose, other, why);
        }
    }
}
