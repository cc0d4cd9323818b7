/**
 * A way for the benchmarks into the engine's room of this name, whose model of the superfat is hidden.
 *
 * <p>Lives here: {@link lyewright.makingsheet.SheetDraws}, and nothing else. May use: the engine. Change freely.
 */
@NullMarked
package lyewright.makingsheet;

import org.jspecify.annotations.NullMarked;
