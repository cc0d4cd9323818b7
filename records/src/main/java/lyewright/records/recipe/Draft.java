package lyewright.records.recipe;

import java.time.Instant;
import java.util.Optional;
import lyewright.records.store.Author;

/**
 * What somebody is typing, as far as they got.
 *
 * @param id its id
 * @param recipeId the recipe it will change; empty for a new one
 * @param basedOn the version it began from; 0 for a new recipe
 * @param form the form as typed, JSON that only the pages read
 * @param revision counts every keeping, from 1
 * @param changedAt when it was kept last
 * @param by who typed last; empty in what was typed before that was kept
 */
public record Draft(
        String id,
        Optional<String> recipeId,
        int basedOn,
        String form,
        int revision,
        Instant changedAt,
        Optional<Author> by) {}
