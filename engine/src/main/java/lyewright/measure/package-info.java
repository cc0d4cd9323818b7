/**
 * Quantities and their text: what a person types and what a balance shows.
 *
 * <p>Lives here: {@link lyewright.measure.Mass} (what is weighed, whole milligrams), the quantities as typed ({@link
 * lyewright.measure.WrittenMass}, {@link lyewright.measure.Share} and their kin, which keep the typed decimal so that
 * print and parse give the same value back), and {@link lyewright.measure.Problem} with {@link
 * lyewright.measure.Outcome}, how the whole engine says no.
 *
 * <p>May use: nothing but the JDK. Used by: every other room.
 *
 * <p>Change freely: package-private types. Change with a decision record: the text forms, which files and stored
 * sheets rely on.
 */
@NullMarked
package lyewright.measure;

import org.jspecify.annotations.NullMarked;
