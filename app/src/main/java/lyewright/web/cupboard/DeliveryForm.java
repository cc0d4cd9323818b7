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
 * @param quarantine whether nothing of it is to be used until somebody judged it
 * @param lines what came; lines with nothing in them count for nothing
 */
record DeliveryForm(String supplier, String day, boolean quarantine, List<Line> lines) {

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
     */
    record Line(String material, String kind, String amount, String lot, String bestBefore, String price) {

        static final Line EMPTY = new Line("", "", "", "", "", "");

        boolean isEmpty() {
            return (material + amount + lot + bestBefore + price).isBlank();
        }
    }

    static DeliveryForm empty(String day) {
        return new DeliveryForm("", day, false, Collections.nCopies(LINES, Line.EMPTY));
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
                    Typed.line(ctx, line + "price")));
        }
        return new DeliveryForm(
                Typed.line(ctx, "supplier"), Typed.line(ctx, "day"), Typed.ticked(ctx, "quarantine"), lines);
    }

    /** With room for more. */
    DeliveryForm withMore() {
        List<Line> more = new ArrayList<>(lines);
        more.addAll(Collections.nCopies(Math.min(LINES, MOST_LINES - lines.size()), Line.EMPTY));
        return new DeliveryForm(supplier, day, quarantine, more);
    }
}
