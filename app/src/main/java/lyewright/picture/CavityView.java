package lyewright.picture;

import lyewright.picture.Mark.Anchor;

/** Cavities from above: how many there are, not how they are shaped, which nobody said. */
final class CavityView {

    static final int MOST = 120;
    private static final int MOST_ACROSS = 12;
    private static final double WIDE = 300;
    private static final double LARGEST = 56;
    private static final double NUMBERED = 28;

    private CavityView() {}

    /** Draws them and gives the foot. */
    static double draw(Canvas canvas, int count, double level) {
        int drawn = Math.min(count, MOST);
        int across = across(drawn);
        int rows = (drawn + across - 1) / across;
        double cell = Math.min(LARGEST, WIDE / across);
        double left = (MouldPicture.WIDTH - cell * across) / 2;
        canvas.box("f-none mould", left - 6, 6, cell * across + 12, cell * rows + 12);
        for (int i = 0; i < drawn; i++) {
            double x = left + cell * (i % across + 0.5);
            int row = i / across;
            double y = 12 + cell * (row + 0.5);
            canvas.path("f-soft o", circle(x, y, cell * 0.42));
            if (cell >= NUMBERED) {
                canvas.tiny("t", x, y + 4, Anchor.MIDDLE, Integer.toString(i + 1));
            }
        }
        double foot = cell * rows + 22;
        if (drawn < count) {
            canvas.small(
                    "t t-muted",
                    MouldPicture.WIDTH / 2.0,
                    foot + 14,
                    Anchor.MIDDLE,
                    "and " + (count - drawn) + " more");
            foot += 20;
        }
        return foot;
    }

    /** Wider than tall, in full rows where that can be. */
    private static int across(int count) {
        if (count < 4) {
            return count;
        }
        int usual = Math.min(MOST_ACROSS, Math.max(1, (int) Math.ceil(Math.sqrt(count * 1.5))));
        for (int across = usual; across * across >= count && across > 1; across--) {
            if (count % across == 0) {
                return across;
            }
        }
        return usual;
    }

    private static String circle(double x, double y, double radius) {
        String half = "A" + Drawing.at(radius) + " " + Drawing.at(radius) + " 0 0 1 ";
        return "M" + Texture.Place.FLAT.at(x - radius, y) + half + Texture.Place.FLAT.at(x + radius, y) + half
                + Texture.Place.FLAT.at(x - radius, y) + "Z";
    }
}
