package lyewright.web.cupboard;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A delivery as typed.
 *
 * @param supplier who it is from
 * @param day when it came
 * @param longAgo whether it is right though that is long ago, asked only then
 * @param quarantine whether nothing of it is to be used until somebody judged it
 * @param lines what came; lines with nothing in them count for nothing
 */
record DeliveryForm(String supplier, String day, boolean longAgo, boolean quarantine, List<Line> lines) {

    /** So many lines there are to begin with, and as many more each time. */
    static final int LINES = 6;

    /** The most lines a delivery has. */
    static final int MOST_LINES = 100;

    DeliveryForm {
        lines = List.copyOf(lines);
    }

    /**
     * One line.
     *
     * @param material what it is
     * @param kind what sort of thing that is, asked only where it is not known
     * @param amount how much
     * @param lot the supplier's lot
     * @param bestBefore its best before
     * @param price what all of it cost
     * @param past what to do with it though its best before is past, asked only then; {@link #KEEP} or {@link #QUARANTINE}
     * @param far whether its best before is right though it is far off, asked only then
     * @param again whether it is a further part of a lot that is there already, asked only then
     */
    record Line(
            String material,
            String kind,
            String amount,
            String lot,
            String bestBefore,
            String price,
            String past,
            boolean far,
            boolean again) {

        static final String KEEP = "keep";
        static final String QUARANTINE = "quarantine";

        static final Line EMPTY = of("", "", "");

        /** A line with nothing else in it. */
        static Line of(String material, String amount, String lot) {
            return new Line(material, "", amount, lot, "", "", "", false, false);
        }

        boolean isEmpty() {
            return (material + amount + lot + bestBefore + price).isBlank();
        }
    }

    static DeliveryForm empty(String day) {
        return new DeliveryForm("", day, false, false, Collections.nCopies(LINES, Line.EMPTY));
    }

    /** Of more of something that is there, perhaps from whom it came last. */
    static DeliveryForm ofMore(String material, String supplier, String day) {
        List<Line> lines = new ArrayList<>(Collections.nCopies(LINES, Line.EMPTY));
        lines.set(0, Line.of(material, "", ""));
        return new DeliveryForm(supplier, day, false, false, lines);
    }

    static DeliveryForm sent(Context ctx) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < MOST_LINES && ctx.formParam("lines." + i + ".material") != null; i++) {
            String line = "lines." + i + ".";
            lines.add(new Line(
                    Typed.line(ctx, line + "material"),
                    Typed.line(ctx, line + "kind"),
                    Typed.line(ctx, line + "amount"),
                    Typed.line(ctx, line + "lot"),
                    Typed.line(ctx, line + "bestBefore"),
                    Typed.line(ctx, line + "price"),
                    Typed.line(ctx, line + "past"),
                    Typed.ticked(ctx, line + "far"),
                    Typed.ticked(ctx, line + "again")));
        }
        return new DeliveryForm(
                Typed.line(ctx, "supplier"),
                Typed.line(ctx, "day"),
                Typed.ticked(ctx, "longAgo"),
                Typed.ticked(ctx, "quarantine"),
                lines);
    }

    /** With room for more. */
    DeliveryForm withMore() {
        List<Line> more = new ArrayList<>(lines);
        more.addAll(Collections.nCopies(Math.min(LINES, MOST_LINES - lines.size()), Line.EMPTY));
        return new DeliveryForm(supplier, day, longAgo, quarantine, more);
    }
}
