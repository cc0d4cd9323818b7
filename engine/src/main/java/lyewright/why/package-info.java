/**
 * Why a figure of a sheet is what it is: its formula, the numbers put in, where each comes from and how sure it is.
 *
 * <p>Lives here: {@link lyewright.why.Why}, the door; {@link lyewright.why.Reason}, what it answers; the small notation that
 * formulas are written in; and for each group of figures the rules that explain them. A rule writes its formula as it is told
 * to a person, not as the engine computes it: tests hold the two together for every figure.
 *
 * <p>May use: makingsheet and all below it. Used by: cli, web.
 *
 * <p>Change freely: package-private types and all wording. Change with a decision record: the notation, which is documented
 * in docs/guide/why.md, and the fields of {@link lyewright.why.Reason}, which are printed as data.
 */
@NullMarked
package lyewright.why;

import org.jspecify.annotations.NullMarked;
