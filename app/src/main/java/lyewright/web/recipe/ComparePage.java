package lyewright.web.recipe;

import java.util.List;
import java.util.Optional;
import lyewright.picture.Picture;
import lyewright.web.Frame;
import lyewright.web.Piece;

/**
 * Two versions, or two recipes, beside each other.
 *
 * @param frame around it
 * @param sides the two; none where one of them makes no sheet
 * @param troubles why there are none
 * @param summary what it comes to
 * @param pictures of both over one scale
 * @param typed what was typed on either side
 * @param materials figures of the materials that differ, as sentences
 * @param groups figures that differ
 * @param same what does not
 * @param cautions that come, go or stay
 * @param choice which others may be compared
 */
public record ComparePage(
        Frame frame,
        List<CompareSide> sides,
        List<String> troubles,
        List<String> summary,
        List<Picture> pictures,
        AsTyped typed,
        List<String> materials,
        List<Group> groups,
        Optional<String> same,
        List<CautionLine> cautions,
        Choice choice) {

    /** Copies its lists. */
    public ComparePage {
        sides = List.copyOf(sides);
        troubles = List.copyOf(troubles);
        summary = List.copyOf(summary);
        pictures = List.copyOf(pictures);
        materials = List.copyOf(materials);
        groups = List.copyOf(groups);
        cautions = List.copyOf(cautions);
    }

    /** Only which others may be compared, and why nothing is. */
    static ComparePage of(Frame frame, List<String> troubles, Choice choice) {
        return new ComparePage(
                frame,
                List.of(),
                troubles,
                List.of(),
                List.of(),
                new AsTyped(List.of(), List.of()),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                choice);
    }

    /**
     * What was typed.
     *
     * @param rows what is not alike
     * @param same what is, each with its amount
     */
    public record AsTyped(List<Typed> rows, List<String> same) {

        /** Copies its lists. */
        public AsTyped {
            rows = List.copyOf(rows);
            same = List.copyOf(same);
        }
    }

    /**
     * One thing that was typed.
     *
     * @param name what it is
     * @param a in the first
     * @param b in the second
     * @param change in plain words, perhaps empty
     */
    public record Typed(String name, Cell a, Cell b, String change) {}

    /**
     * What one side has of it.
     *
     * @param written as typed; empty where the mass says as much
     * @param how when and how it goes in; empty where that is plain
     * @param masses what that weighs
     */
    public record Cell(String written, String how, List<Weighed> masses) {

        /** Copies its list. */
        public Cell {
            masses = List.copyOf(masses);
        }
    }

    /**
     * A mass.
     *
     * @param where the portion, or what that part is for; empty where it is all
     * @param mass as the balance shows it
     */
    public record Weighed(String where, Piece mass) {}

    /**
     * Figures that belong together.
     *
     * @param title what they are about
     * @param rows those that differ
     */
    public record Group(String title, List<Row> rows) {

        /** Copies its list. */
        public Group {
            rows = List.copyOf(rows);
        }
    }

    /**
     * A figure of both.
     *
     * @param label what it is
     * @param unit its unit, perhaps empty
     * @param sentence what it stands for, where few know it; perhaps empty
     * @param a of the first
     * @param b of the second
     * @param change from the first to the second
     */
    public record Row(String label, String unit, String sentence, Piece a, Piece b, Piece change) {}

    /**
     * A caution of either.
     *
     * @param what comes, goes and so on
     * @param level how grave
     * @param text the caution
     * @param remedy what to do; empty where it goes
     */
    public record CautionLine(String what, String level, String text, String remedy) {}

    /**
     * What may be chosen instead.
     *
     * @param action where the form goes
     * @param options in order, newest first
     * @param a chosen as the first
     * @param b chosen as the second; empty where it is not chosen yet
     * @param former where a recipe is compared with its version before; empty where that is not offered
     */
    public record Choice(String action, List<Option> options, String a, String b, Optional<String> former) {

        /** Copies its list. */
        public Choice {
            options = List.copyOf(options);
        }
    }

    /**
     * One that may be chosen.
     *
     * @param value sent
     * @param label shown
     */
    public record Option(String value, String label) {}
}
