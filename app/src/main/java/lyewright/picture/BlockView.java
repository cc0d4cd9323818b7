package lyewright.picture;

import java.util.Optional;
import lyewright.picture.Mark.Anchor;

/** A loaf or a slab: the soap in its mould, its cuts, and what is cut off hatched. */
final class BlockView {

    private static final double RIGHT = MouldPicture.WIDTH - 4.0;
    private static final double TALL = 170;
    private static final double MARGIN = 12;
    private static final double BESIDE_LEFT = 16;
    private static final double APART = 4;
    private static final double NUMBERED = 16;

    private final Canvas canvas;
    private final double left;
    private final double length;
    private final double width;
    private final double height;
    private final double level;
    private final double trim;
    private final Optional<Pieces> along;
    private final Optional<Pieces> across;
    private final Aslant view;

    private BlockView(Canvas canvas, MouldFacts facts, double length, double width, double height, boolean flat) {
        this.canvas = canvas;
        this.left = TextWidth.of(facts.say(height), Canvas.SMALL) + BESIDE_LEFT;
        this.length = length;
        this.width = width;
        this.height = height;
        this.level = height * facts.drawnLevel();
        this.trim = Math.min(level, facts.trim() * facts.drawnLevel());
        this.along = facts.along();
        this.across = facts.across();
        double right = flat ? 0.5 : 0.42;
        double up = flat ? 0.5 : 0.34;
        double most = Math.max(level, height);
        double room = RIGHT - left;
        double scale = Math.min(
                Math.min(
                        room / (length + width * right),
                        (room - TextWidth.of(facts.say(width), Canvas.SMALL) - 8) / (length + width * right / 2)),
                TALL / (most + width * up));
        this.view = new Aslant(left, MARGIN + (most + width * up) * scale, scale, right, up);
    }

    /** Draws it and gives its foot. */
    static double draw(Canvas canvas, MouldFacts facts, double length, double width, double height, boolean flat) {
        return new BlockView(canvas, facts, length, width, height, flat).draw(facts);
    }

    private double draw(MouldFacts facts) {
        walls();
        faces();
        offcuts();
        cuts();
        canvas.path("f-clear mould", view.outline(0, 0, 0, length, 0, 0, length, 0, height, 0, 0, height));
        if (level > height) {
            canvas.path(
                    "level",
                    view.line(0, 0, height, length, 0, height) + view.line(length, 0, height, length, width, height));
        }
        return measures(facts);
    }

    /** What of the mould stands higher than the soap. */
    private void walls() {
        if (level < height) {
            canvas.path(
                    "f-clear mould",
                    view.outline(0, 0, height, length, 0, height, length, width, height, 0, width, height)
                            + view.line(length, width, height, length, width, 0));
        }
    }

    private void faces() {
        canvas.path("f-mid o", view.outline(length, 0, 0, length, width, 0, length, width, level, length, 0, level));
        canvas.path("f-none o", view.outline(0, 0, level, length, 0, level, length, width, level, 0, width, level));
        canvas.path("f-soft o", view.outline(0, 0, 0, length, 0, 0, length, 0, level, 0, 0, level));
    }

    private void offcuts() {
        along.ifPresent(pieces -> {
            block(0, pieces.first());
            block(pieces.end(), length);
        });
        across.filter(pieces -> width - pieces.end() > 0).ifPresent(pieces -> {
            top(0, length, pieces.end(), width);
            side(pieces.end(), width, 0, level);
        });
        if (trim > 0) {
            front(0, length, level - trim, level);
            side(0, width, level - trim, level);
        }
    }

    /** All of it between two places of its length. */
    private void block(double from, double to) {
        front(from, to, 0, level);
        top(from, to, 0, width);
        if (to >= length && from < to) {
            side(0, width, 0, level);
        }
    }

    private void front(double from, double to, double low, double high) {
        hatch(
                view.outline(from, 0, low, to, 0, low, to, 0, high, from, 0, high),
                view.x(from, 0),
                view.y(0, high),
                (to - from) * view.scale(),
                (high - low) * view.scale(),
                Texture.Place.FLAT);
    }

    private void top(double from, double to, double near, double far) {
        double s = view.scale();
        hatch(
                view.outline(from, near, level, to, near, level, to, far, level, from, far, level),
                from * s,
                near * s,
                (to - from) * s,
                (far - near) * s,
                (x, y) -> view.at(x / s, y / s, level));
    }

    private void side(double near, double far, double low, double high) {
        double s = view.scale();
        hatch(
                view.outline(length, near, low, length, far, low, length, far, high, length, near, high),
                near * s,
                low * s,
                (far - near) * s,
                (high - low) * s,
                (x, y) -> view.at(length, x / s, y / s));
    }

    private void hatch(String outline, double x, double y, double wide, double high, Texture.Place place) {
        String lines = Texture.CLIMBING.in(x, y, wide, high, place);
        if (wide > 0 && high > 0) {
            canvas.path("f-none o", outline);
        }
        if (!lines.isEmpty()) {
            canvas.path(Texture.CLIMBING.style(), lines);
        }
    }

    private void cuts() {
        along.ifPresent(pieces -> {
            StringBuilder d = new StringBuilder();
            int step = pieces.step(view.scale(), APART);
            for (int i = step - 1; i < pieces.count() - 1; i += step) {
                double at = pieces.cut(i);
                d.append(view.line(at, 0, 0, at, 0, level)).append(view.line(at, 0, level, at, width, level));
            }
            lines(d);
            number(pieces);
        });
        across.ifPresent(pieces -> {
            StringBuilder d = new StringBuilder();
            int step = pieces.step(view.scale() * view.up(), APART);
            for (int i = step - 1; i < pieces.count() - 1; i += step) {
                double at = pieces.cut(i);
                d.append(view.line(0, at, level, length, at, level))
                        .append(view.line(length, at, 0, length, at, level));
            }
            lines(d);
        });
    }

    private void lines(StringBuilder d) {
        if (!d.isEmpty()) {
            canvas.path("cut", d.toString());
        }
    }

    /** Bars of a loaf are counted where there is room. */
    private void number(Pieces pieces) {
        double high = (level - trim) * view.scale();
        if (across.isPresent() || pieces.piece() * view.scale() < NUMBERED || high < NUMBERED || pieces.count() > 99) {
            return;
        }
        for (int i = 0; i < pieces.count(); i++) {
            double middle = view.x((pieces.from(i) + pieces.to(i)) / 2, 0);
            canvas.tiny("t", middle, view.y(0, 0) - high / 2 + 4, Anchor.MIDDLE, Integer.toString(i + 1));
        }
    }

    private double measures(MouldFacts facts) {
        double foot = view.y(0, 0);
        double right = view.x(length, 0);
        canvas.path(
                "measure",
                Canvas.line(left, foot + 9, right, foot + 9)
                        + Canvas.line(left, foot + 5, left, foot + 13)
                        + Canvas.line(right, foot + 5, right, foot + 13));
        double text = TextWidth.of(facts.say(length), Canvas.SMALL);
        double middle = Math.max((left + right) / 2, 2 + text / 2);
        canvas.small("t", middle, foot + 26, Anchor.MIDDLE, facts.say(length));
        double top = view.y(0, height);
        canvas.path(
                "measure",
                Canvas.line(left - 7, top, left - 7, foot)
                        + Canvas.line(left - 11, top, left - 3, top)
                        + Canvas.line(left - 11, foot, left - 3, foot));
        canvas.small("t", left - 13, (top + foot) / 2 + 4, Anchor.END, facts.say(height));
        canvas.small(
                "t",
                (right + view.x(length, width)) / 2 + 8,
                Math.max((foot + view.y(width, 0)) / 2 + 9, MARGIN + 12),
                Anchor.START,
                facts.say(width));
        int steps = Math.max(
                along.map(p -> p.step(view.scale(), APART)).orElse(1),
                across.map(p -> p.step(view.scale() * view.up(), APART)).orElse(1));
        return canvas.everyFew(steps, MouldPicture.WIDTH / 2.0, foot + 31);
    }
}
