package lyewright.picture;

import java.util.List;
import lyewright.picture.Mark.Anchor;

/** A mould whose inside nobody measured: what it holds is drawn, its outline only guessed at, and so dashed. */
public final class UnmeasuredView {

    private static final double TOP = 16;
    private static final double DEEP = 84;
    private static final double LEFT = 80;
    private static final double SLOPE = 14;
    private static final double RIGHT = MouldPicture.WIDTH - LEFT;

    private UnmeasuredView() {}

    /**
     * Of a mould that is known by what it takes.
     *
     * @param holds what it takes, as {@code 1453 ml}
     * @return its picture
     */
    public static Picture of(String holds) {
        double foot = TOP + DEEP;
        double[] sides = {LEFT, TOP, RIGHT, TOP, RIGHT - SLOPE, foot, LEFT + SLOPE, foot};
        Canvas canvas = new Canvas();
        canvas.path("f-soft", Canvas.outline(sides));
        canvas.path("f-clear o o-dash", Canvas.outline(sides));
        canvas.line("f-clear mould", LEFT - SLOPE / 2, TOP, RIGHT + SLOPE / 2, TOP);
        canvas.text("t t-strong", MouldPicture.WIDTH / 2.0, TOP + DEEP / 2 + 5, Anchor.MIDDLE, holds);
        return new Picture(
                canvas.drawing(
                        "pic-mould",
                        "A mould whose inside is not measured",
                        "It takes " + holds + "; its shape is not known.",
                        MouldPicture.WIDTH,
                        foot + 8),
                "",
                List.of("Dashed: its shape is not known, only what it takes."),
                new FigureTable(
                        "The mould",
                        List.of(FigureTable.words("What"), FigureTable.figures("Measure")),
                        List.of(List.of("Takes", holds))));
    }
}
