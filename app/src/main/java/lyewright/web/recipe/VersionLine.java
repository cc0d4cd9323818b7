package lyewright.web.recipe;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import lyewright.records.recipe.VersionHeader;
import lyewright.words.Dates;

/**
 * A version in the list of all.
 *
 * @param number its number
 * @param use what it is for
 * @param why why it was saved, perhaps empty
 * @param saved when, as a date
 * @param made when a batch was first made from it, as a date
 * @param before the version before it, with which it may be compared; empty for the first
 */
public record VersionLine(
        int number, String use, String why, String saved, Optional<String> made, Optional<Integer> before) {

    /** The newest first. */
    static List<VersionLine> all(List<VersionHeader> versions, Clock clock) {
        return java.util.stream.IntStream.range(0, versions.size())
                .mapToObj(i -> {
                    VersionHeader version = versions.get(i);
                    return new VersionLine(
                            version.number(),
                            WrittenWords.use(version.use()),
                            version.why(),
                            Dates.day(version.savedAt(), clock),
                            version.madeAt().map(at -> Dates.day(at, clock)),
                            i + 1 < versions.size()
                                    ? Optional.of(versions.get(i + 1).number())
                                    : Optional.empty());
                })
                .toList();
    }
}
