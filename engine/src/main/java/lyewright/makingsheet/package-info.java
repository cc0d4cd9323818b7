/**
 * The making sheet: everything to weigh, in order, on the maker's own balances, with what it comes to and what to beware of.
 *
 * <p>Lives here: {@link lyewright.makingsheet.MakingSheet}, the whole answer as one value; {@link
 * lyewright.makingsheet.Equipment} and its balances; {@link lyewright.makingsheet.FadingPour}; {@link
 * lyewright.makingsheet.Caution} and the rules that raise them, each a small named method.
 *
 * <p>May use: fill, chemistry, formula, material, measure. Used by: records, app.
 *
 * <p>Change freely: package-private types, the wording of cautions. Change with a decision record: how masses are rounded,
 * the ids of cautions (stored sheets carry them).
 */
@NullMarked
package lyewright.makingsheet;

import org.jspecify.annotations.NullMarked;
