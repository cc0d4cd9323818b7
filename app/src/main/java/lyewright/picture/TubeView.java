package lyewright.picture;

import lyewright.fill.Shape;
import lyewright.picture.Mark.Anchor;

/** A tube lying on its side: the soap in it, its cuts, and what is cut off hatched. */
final class TubeView {

    private static final double RIGHT = MouldPicture.WIDTH - 6.0;
    private static final double TALL = 120;
    private static final double BESIDE_LEFT = 16;
    private static final double MARGIN = 12;
    private static final double ROUND = 0.28;
    private static final double APART = 4;

    private final Canvas canvas;
    private final double left;
    private final Shape.Tube tube;
    private final double soap;
    private final double scale;
    private final double tall;
    private final double bulge;

    private TubeView(Canvas canvas, MouldFacts facts, Shape.Tube tube) {
        this.canvas = canvas;
        this.left = TextWidth.of(facts.say(tube.diameter()), Canvas.SMALL) + BESIDE_LEFT;
        this.tube = tube;
        this.soap = tube.length() * facts.drawnLevel();
        double most = Math.max(soap, tube.length());
        this.scale = Math.min((RIGHT - left) / (most + tube.diameter() * ROUND), TALL / tube.diameter());
        this.tall = tube.diameter() * scale;
        this.bulge = tall * ROUND / 2;
    }

    /** Draws it and gives its foot. */
    static double draw(Canvas canvas, MouldFacts facts, Shape.Tube tube) {
        return new TubeView(canvas, facts, tube).draw(facts);
    }

    private double draw(MouldFacts facts) {
        body("f-soft o", 0, soap);
        facts.along().ifPresent(pieces -> {
            offcut(0, pieces.first());
            offcut(pieces.end() / tube.length() * soap, soap);
            cuts(pieces);
        });
        canvas.path("f-mid o", ring(0));
        body("f-clear mould", 0, tube.length());
        return measures(facts);
    }

    private double x(double along) {
        return left + bulge + along * scale;
    }

    private String ring(double along) {
        return "M" + Texture.Place.FLAT.at(x(along), MARGIN) + half(along, true) + half(along, false) + "Z";
    }

    /** Half a ring, clockwise: down on its right, up on its left. */
    private String half(double along, boolean down) {
        return "A" + Drawing.at(bulge) + " " + Drawing.at(tall / 2) + " 0 0 1 "
                + Texture.Place.FLAT.at(x(along), down ? MARGIN + tall : MARGIN);
    }

    private void body(String style, double from, double to) {
        canvas.path(
                style,
                "M" + Texture.Place.FLAT.at(x(from), MARGIN) + "L" + Texture.Place.FLAT.at(x(to), MARGIN)
                        + half(to, true) + "L" + Texture.Place.FLAT.at(x(from), MARGIN + tall) + half(from, false)
                        + "Z");
    }

    private void offcut(double from, double to) {
        if (to - from <= 0) {
            return;
        }
        canvas.path(
                "f-none o",
                "M" + Texture.Place.FLAT.at(x(from), MARGIN) + "L" + Texture.Place.FLAT.at(x(to), MARGIN)
                        + half(to, true) + "L" + Texture.Place.FLAT.at(x(from), MARGIN + tall) + back(from) + "Z");
        String lines = Texture.CLIMBING.in(x(from), MARGIN, (to - from) * scale, tall, (x, y) -> {
            double off = Math.max(-1, Math.min(1, 2 * (y - MARGIN) / tall - 1));
            return Texture.Place.FLAT.at(x + bulge * Math.sqrt(1 - off * off), y);
        });
        if (!lines.isEmpty()) {
            canvas.path("h", lines);
        }
    }

    /** Up along the ring's right half. */
    private String back(double along) {
        return "A" + Drawing.at(bulge) + " " + Drawing.at(tall / 2) + " 0 0 0 "
                + Texture.Place.FLAT.at(x(along), MARGIN);
    }

    private void cuts(Pieces pieces) {
        StringBuilder d = new StringBuilder();
        double unit = soap / tube.length();
        int step = pieces.step(scale * unit, APART);
        for (int i = step - 1; i < pieces.count() - 1; i += step) {
            double at = pieces.cut(i) * unit;
            d.append('M').append(Texture.Place.FLAT.at(x(at), MARGIN)).append(half(at, true));
        }
        if (!d.isEmpty()) {
            canvas.path("cut", d.toString());
        }
    }

    private double measures(MouldFacts facts) {
        double foot = MARGIN + tall;
        double right = x(tube.length());
        canvas.path(
                "measure",
                Canvas.line(x(0), foot + 9, right, foot + 9)
                        + Canvas.line(x(0), foot + 5, x(0), foot + 13)
                        + Canvas.line(right, foot + 5, right, foot + 13));
        double text = TextWidth.of(facts.say(tube.length()), Canvas.SMALL);
        canvas.small(
                "t", Math.max((x(0) + right) / 2, 2 + text / 2), foot + 26, Anchor.MIDDLE, facts.say(tube.length()));
        canvas.path(
                "measure",
                Canvas.line(left - 7, MARGIN, left - 7, foot)
                        + Canvas.line(left - 11, MARGIN, left - 3, MARGIN)
                        + Canvas.line(left - 11, foot, left - 3, foot));
        canvas.small("t", left - 13, (MARGIN + foot) / 2 + 4, Anchor.END, facts.say(tube.diameter()));
        int step = facts.along()
                .map(p -> p.step(scale * soap / tube.length(), APART))
                .orElse(1);
        return canvas.everyFew(step, MouldPicture.WIDTH / 2.0, foot + 31);
    }
}
