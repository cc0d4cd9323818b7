package lyewright.web.recipe;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import lyewright.records.people.Person;
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
 * @param by who saved it, where it was not the maker at the computer each time
 * @param before the version before it, with which it may be compared; empty for the first
 */
public record VersionLine(
        int number,
        String use,
        String why,
        String saved,
        Optional<String> made,
        Optional<String> by,
        Optional<Integer> before) {

    /** The newest first. */
    static List<VersionLine> all(List<VersionHeader> versions, Map<Integer, Person> by, Clock clock) {
        boolean alone = by.values().stream().allMatch(Person::isFirst);
        return IntStream.range(0, versions.size())
                .mapToObj(i -> {
                    VersionHeader version = versions.get(i);
                    return new VersionLine(
                            version.number(),
                            WrittenWords.use(version.use()),
                            version.why(),
                            Dates.day(version.savedAt(), clock),
                            version.madeAt().map(at -> Dates.day(at, clock)),
                            alone
                                    ? Optional.empty()
                                    : Optional.ofNullable(by.get(version.number()))
                                            .map(Person::name),
                            i + 1 < versions.size()
                                    ? Optional.of(versions.get(i + 1).number())
                                    : Optional.empty());
                })
                .toList();
    }
}
