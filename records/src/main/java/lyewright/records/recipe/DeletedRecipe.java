package lyewright.records.recipe;

import java.time.Instant;

/**
 * A recipe that was deleted and can be brought back.
 *
 * @param id its id
 * @param name its name
 * @param newestVersion its newest version's number
 * @param deletedAt when it was deleted
 */
public record DeletedRecipe(String id, String name, int newestVersion, Instant deletedAt) {}
