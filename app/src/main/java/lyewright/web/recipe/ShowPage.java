package lyewright.web.recipe;

import java.util.List;
import java.util.Optional;
import lyewright.web.Frame;

/**
 * A recipe's page, of its newest version or of an old one.
 *
 * @param frame around it
 * @param head which recipe
 * @param look what it comes to; empty where no sheet can be made of it
 * @param troubles why none can, as sentences
 * @param newer where the workshop's own figures are others than its own
 * @param old what of the cupboard is old for it
 * @param in what is in it
 * @param versions all of them, the newest first
 * @param photographTroubles what is wrong with a photograph that was just given
 */
public record ShowPage(
        Frame frame,
        RecipeHead head,
        Optional<Look> look,
        List<String> troubles,
        NewerFigures newer,
        List<StockAges.Old> old,
        Ingredients in,
        List<VersionLine> versions,
        List<String> photographTroubles) {

    /** How many versions stand in the list before the others are folded away. */
    static final int VERSIONS_SHOWN = 8;

    /** Copies its lists. */
    public ShowPage {
        troubles = List.copyOf(troubles);
        old = List.copyOf(old);
        versions = List.copyOf(versions);
        photographTroubles = List.copyOf(photographTroubles);
    }

    /** How long it is reckoned that a batch cures. */
    public String practice() {
        return StockAges.practice();
    }

    /** The versions that are seen at once. */
    public List<VersionLine> shown() {
        return versions.subList(0, Math.min(VERSIONS_SHOWN, versions.size()));
    }

    /** The versions before those. */
    public List<VersionLine> folded() {
        return versions.subList(Math.min(VERSIONS_SHOWN, versions.size()), versions.size());
    }
}
