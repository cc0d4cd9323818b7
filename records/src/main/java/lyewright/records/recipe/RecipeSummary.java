package lyewright.records.recipe;

import java.time.Instant;
import java.util.Optional;
import lyewright.formula.Use;

/**
 * A recipe as it stands in a list.
 *
 * @param id its id
 * @param name its name, which is that of its newest version
 * @param hasNamesake whether another recipe has the same name, so that the list must say more to tell them apart
 * @param use what the newest version is for
 * @param newestVersion the newest version's number
 * @param text the newest version's formula file
 * @param addedAt when it was first saved
 * @param changedAt when it was last saved or renamed
 * @param photograph its photograph's name, if it has one
 * @param draftId the draft that is being typed of it, if there is one
 */
public record RecipeSummary(
        String id,
        String name,
        boolean hasNamesake,
        Use use,
        int newestVersion,
        String text,
        Instant addedAt,
        Instant changedAt,
        Optional<String> photograph,
        Optional<String> draftId) {}
