/**
 * How much to make: moulds, cut plans, and the one equation that turns any way of saying it into a mass of oils.
 *
 * <p>Lives here: {@link lyewright.fill.Fill} (what is asked) and its reading {@link lyewright.fill.FillText}, {@link lyewright.fill.Mould} and {@link
 * lyewright.fill.CutPlan}, {@link lyewright.fill.FillSolver} and its answer {@link lyewright.fill.Filled}.
 *
 * <p>May use: chemistry, formula, material, measure. Used by: makingsheet.
 *
 * <p>Change freely: package-private types. Change with a decision record: what mould mass and hold-back mean.
 */
@NullMarked
package lyewright.fill;

import org.jspecify.annotations.NullMarked;
