package lyewright.material;

/**
 * A density that falls in a straight line with temperature.
 *
 * @param gramsPerMillilitre at its temperature
 * @param atCelsius that temperature
 * @param slopePerKelvin g/ml per kelvin, 0 or negative
 * @param source where published, and how reduced
 */
public record LiquidDensity(double gramsPerMillilitre, double atCelsius, double slopePerKelvin, String source) {

    /**
     * At another temperature.
     *
     * @param celsius degrees Celsius
     * @return g/ml
     */
    public double at(double celsius) {
        return gramsPerMillilitre + slopePerKelvin * (celsius - atCelsius);
    }
}
