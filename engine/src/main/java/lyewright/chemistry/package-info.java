/**
 * What alkali does to oils: equivalents, alkali, water, mass balance, solutions.
 *
 * <p>Lives here: {@link lyewright.chemistry.BatchLines}, everything that is weighed for a formula as straight lines in the
 * mass of oils; {@link lyewright.chemistry.Reaction}, what given masses come to (superfat, water, cured mass); {@link
 * lyewright.chemistry.Solutions}, densities and solubilities of lye and salt; {@link lyewright.chemistry.Composition} and
 * {@link lyewright.chemistry.BatchComposition}, what batter and bar consist of; {@link
 * lyewright.chemistry.OilPhaseAcids}, the fatty acids of all oils and what follows from them, with {@link
 * lyewright.chemistry.IodineValue}, {@link lyewright.chemistry.OxidationIndices} and {@link lyewright.chemistry.Keeping}.
 *
 * <p>May use: formula, material, measure. Used by: fill, makingsheet.
 *
 * <p>Change freely: package-private types. Change with a decision record: what counts as an equivalent, and which water is
 * whose: every printed superfat hangs on them.
 */
@NullMarked
package lyewright.chemistry;

import org.jspecify.annotations.NullMarked;
