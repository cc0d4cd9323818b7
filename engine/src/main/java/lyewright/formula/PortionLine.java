package lyewright.formula;

import java.util.Optional;
import lyewright.measure.Share;

/**
 * One portion of the base batter.
 *
 * @param name what it is called
 * @param share percent of the base batter; empty means the rest
 */
public record PortionLine(String name, Optional<Share> share) {}
