/**
 * How sure a computed figure is: inputs that carry distributions, and two ways of carrying them through a model.
 *
 * <p>Lives here: {@link lyewright.uncertainty.Distribution}, how one input may lie; {@link
 * lyewright.uncertainty.MonteCarlo}, which draws inputs and gives intervals and chances (JCGM 101); {@link
 * lyewright.uncertainty.LinearPropagation}, which gives each input's share of the variance (JCGM 100). Neither knows soap.
 *
 * <p>May use: material (for its figures), measure, commons-rng. Used by: makingsheet and every room above it.
 *
 * <p>Change freely: package-private types. Change with a decision record: how blocks are seeded, how many are drawn, and in
 * which order the inputs take their random numbers, since printed intervals hang on all of that to the last digit.
 */
@NullMarked
package lyewright.uncertainty;

import org.jspecify.annotations.NullMarked;
