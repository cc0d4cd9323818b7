package lyewright.picture;

/**
 * A block seen from the front, a little from the right and above: lengths and heights true, depths shortened.
 *
 * @param left where its front's lower left corner is drawn
 * @param foot where that is from the top
 * @param scale units for a unit of its sides
 * @param across what a unit of depth goes to the right, in units of its sides
 * @param up what it goes up
 */
record Aslant(double left, double foot, double scale, double across, double up) {

    double x(double along, double depth) {
        return left + (along + depth * across) * scale;
    }

    double y(double depth, double height) {
        return foot - (height + depth * up) * scale;
    }

    String at(double along, double depth, double height) {
        return Drawing.at(x(along, depth)) + " " + Drawing.at(y(depth, height));
    }

    /** An outline through points given as along, depth, height, and so on. */
    String outline(double... points) {
        StringBuilder d = new StringBuilder();
        for (int i = 0; i < points.length; i += 3) {
            d.append(i == 0 ? 'M' : 'L').append(at(points[i], points[i + 1], points[i + 2]));
        }
        return d.append('Z').toString();
    }

    String line(double a1, double d1, double h1, double a2, double d2, double h2) {
        return "M" + at(a1, d1, h1) + "L" + at(a2, d2, h2);
    }
}
