package lyewright.records.recipe;

import java.time.Instant;
import java.util.Optional;
import lyewright.formula.Use;

/**
 * A version without its text.
 *
 * @param number its number, from 1
 * @param use what it is for
 * @param why why it was saved, perhaps empty
 * @param savedAt when it was saved last
 * @param madeAt when a batch was first made from it, if one was
 */
public record VersionHeader(int number, Use use, String why, Instant savedAt, Optional<Instant> madeAt) {}
