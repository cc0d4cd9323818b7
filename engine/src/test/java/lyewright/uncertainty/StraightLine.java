package lyewright.uncertainty;

/**
 * A straight line through points by least squares, in closed form (JCGM 100:2008, H.3.2): intercept and slope, their
 * standard deviations, their correlation, and the standard deviation of the points about the line. For tests.
 */
record StraightLine(
        double intercept,
        double slope,
        double interceptDeviation,
        double slopeDeviation,
        double correlation,
        double residualDeviation) {

    static StraightLine through(double[] x, double[] y) {
        int n = x.length;
        double meanX = mean(x);
        double meanY = mean(y);
        double spread = 0;
        double together = 0;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            spread += (x[i] - meanX) * (x[i] - meanX);
            together += (x[i] - meanX) * (y[i] - meanY);
            squares += x[i] * x[i];
        }
        double slope = together / spread;
        double intercept = meanY - slope * meanX;
        double residuals = 0;
        for (int i = 0; i < n; i++) {
            double off = y[i] - intercept - slope * x[i];
            residuals += off * off;
        }
        double deviation = Math.sqrt(residuals / (n - 2));
        return new StraightLine(
                intercept,
                slope,
                deviation * Math.sqrt(squares / n / spread),
                deviation / Math.sqrt(spread),
                -meanX * n / Math.sqrt(n * squares),
                deviation);
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }
}
