package lyewright.formula;

import java.util.Optional;

/**
 * One addition as written.
 *
 * @param of the material's key
 * @param amount how much
 * @param stage when it goes in
 * @param disperse how it is wetted out first, if it is
 * @param replacesWater whether its mass takes the place of so much water
 */
public record Addition(String of, Amount amount, Stage stage, Optional<Disperse> disperse, boolean replacesWater) {}
