package lyewright.picture;

import java.util.ArrayList;
import java.util.List;
import lyewright.picture.Mark.Anchor;
import lyewright.words.Figures;

/**
 * The figures under a band: its ends in one line, the worst in the next. Each stands on its own side of zero, and the scale is
 * given the room for that, so that none can lie on another or on the line of zero.
 */
final class BandLabels {

    /** From the bar's foot to the foot of the second line. */
    static final double HEIGHT = 37;

    private static final double FIRST = 17;
    private static final double SECOND = 33;

    /** Between two figures, and between the last and zero. */
    private static final double GAP = 10;

    /** The worst's own mark before its figure, with what lies between them. */
    private static final double SIGN = 13;

    private static final double LEAD = 4;

    private final BandFigures band;

    BandLabels(BandFigures band) {
        this.band = band;
    }

    /**
     * A figure.
     *
     * @param text what it says
     * @param percent what it is of
     * @param to what it is of as well, where two are said together
     * @param sign what stands before it
     */
    private record Label(String text, double percent, double to, double sign) {

        Label(String text, double percent) {
            this(text, percent, percent, 0);
        }

        boolean before() {
            return percent < 0;
        }

        double width() {
            return sign + TextWidth.of(text, Canvas.TEXT);
        }

        double middle(SuperfatScale scale) {
            return (scale.at(percent) + scale.at(to)) / 2;
        }
    }

    /** The room that they need on either side of zero. */
    SuperfatScale.Rooms rooms() {
        // apart they need more than together, and which it will be hangs on the scale
        List<Label> first = apart();
        return rooms(first).and(rooms(List.of(worst())));
    }

    private static SuperfatScale.Rooms rooms(List<Label> labels) {
        return new SuperfatScale.Rooms(room(labels, true), room(labels, false));
    }

    private static double room(List<Label> labels, boolean before) {
        return labels.stream()
                .filter(label -> label.before() == before)
                .mapToDouble(label -> label.width() + GAP)
                .sum();
    }

    private List<Label> apart() {
        return List.of(
                new Label(Figures.fixed(band.low(), 1), band.low()),
                new Label(Figures.fixed(band.high(), 1), band.high()));
    }

    /** The ends; as one label where they lie close, on one side of zero. */
    private List<Label> ends(SuperfatScale scale) {
        List<Label> apart = apart();
        Label low = apart.get(0);
        Label high = apart.get(1);
        double both = (low.width() + high.width()) / 2 + GAP;
        if (low.before() != high.before() || scale.at(band.high()) - scale.at(band.low()) >= both) {
            return apart;
        }
        String text = low.text.equals(high.text) ? low.text : low.text + " to " + high.text;
        Label together = new Label(text, band.low(), band.high(), 0);
        return together.width() + GAP <= room(low.before(), scale) ? List.of(together) : apart;
    }

    private Label worst() {
        return new Label("worst " + Figures.fixed(band.worst(), 1), band.worst(), band.worst(), SIGN);
    }

    private static double room(boolean before, SuperfatScale scale) {
        return before ? scale.at(0) - SuperfatPicture.LEAST_X : SuperfatPicture.MOST_X - scale.at(0);
    }

    void draw(Canvas canvas, SuperfatScale scale, double foot) {
        List<Label> ends = ends(scale);
        double[] places = places(ends, scale);
        for (int i = 0; i < places.length; i++) {
            Label label = ends.get(i);
            canvas.text("t t-strong", places[i], foot + FIRST, Anchor.MIDDLE, label.text);
            double wanted = label.middle(scale);
            canvas.line("lead", wanted, foot + 1, (2 * wanted + places[i]) / 3, foot + 1 + LEAD);
        }
        worst(canvas, scale, foot + SECOND);
    }

    private void worst(Canvas canvas, SuperfatScale scale, double y) {
        Label worst = worst();
        double left = places(List.of(worst), scale)[0] - worst.width() / 2;
        cross(canvas, left + 4, y - 4.5);
        canvas.text("t t-muted", left + SIGN, y, Anchor.START, worst.text);
    }

    static void cross(Canvas canvas, double x, double y) {
        canvas.path("worst", Canvas.line(x - 4, y - 4, x + 4, y + 4) + Canvas.line(x - 4, y + 4, x + 4, y - 4));
    }

    /** Each on its own side of zero, as little moved as may be. */
    private static double[] places(List<Label> labels, SuperfatScale scale) {
        double[] places = new double[labels.size()];
        for (boolean before : new boolean[] {true, false}) {
            List<Integer> here = new ArrayList<>();
            for (int i = 0; i < labels.size(); i++) {
                if (labels.get(i).before() == before) {
                    here.add(i);
                }
            }
            double[] placed = Spread.of(
                    here.stream().mapToDouble(i -> labels.get(i).middle(scale)).toArray(),
                    here.stream().mapToDouble(i -> labels.get(i).width() + GAP).toArray(),
                    before ? SuperfatPicture.LEAST_X - GAP / 2 : scale.at(0),
                    before ? scale.at(0) : SuperfatPicture.MOST_X + GAP / 2);
            for (int k = 0; k < placed.length; k++) {
                places[here.get(k)] = placed[k];
            }
        }
        return places;
    }
}
