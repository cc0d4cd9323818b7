package lyewright.records.recipe;

import java.time.Instant;
import java.util.Optional;

/**
 * A recipe with its newest version.
 *
 * @param id its id
 * @param name its name, which is that of its newest version
 * @param hasNamesake whether another recipe has the same name
 * @param newest its newest version
 * @param addedAt when it was first saved
 * @param changedAt when it was last saved or renamed
 * @param deletedAt when it was deleted, if it was
 * @param photograph its photograph's name, if it has one
 * @param draftId the draft that is being typed of it, if there is one
 */
public record Recipe(
        String id,
        String name,
        boolean hasNamesake,
        RecipeVersion newest,
        Instant addedAt,
        Instant changedAt,
        Optional<Instant> deletedAt,
        Optional<String> photograph,
        Optional<String> draftId) {}
