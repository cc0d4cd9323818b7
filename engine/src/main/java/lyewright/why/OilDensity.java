package lyewright.why;

import java.util.stream.Collectors;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.material.LiquidDensity;
import lyewright.material.Oil;
import lyewright.why.Term.Given;

/** The density of an oil at the temperature it is blended at. */
final class OilDensity {

    /** Where no temperature is written, °C: middle of the blending range, common practice. */
    static final double USUAL_TEMPERATURE = 40;

    private OilDensity() {}

    static Given of(OilPart part, double gramsPerMillilitre, double celsius) {
        String at = "density at " + Digits.figure(celsius) + " °C: ";
        boolean alone = part.parts().size() == 1;
        return new Given(
                "density of " + Labels.of(part),
                gramsPerMillilitre,
                "g/ml",
                at + (alone ? line(part.parts().get(0).oil()) : "volumes of the premix's oils added"),
                part.parts().stream()
                        .map(p -> p.oil().density().source())
                        .distinct()
                        .collect(Collectors.joining(" | ")));
    }

    private static String line(Oil oil) {
        LiquidDensity density = oil.density();
        return Digits.figure(density.gramsPerMillilitre()) + " at " + Digits.figure(density.atCelsius()) + " °C, "
                + Digits.figure(density.slopePerKelvin()) + " for each kelvin";
    }
}
