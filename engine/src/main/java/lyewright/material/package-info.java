/**
 * What a bar is made of: oils, alkalis, additives, fragrance, and the bundled tables of their figures.
 *
 * <p>Lives here: {@link lyewright.material.Oil}, {@link lyewright.material.Additive}, {@link
 * lyewright.material.Alkali}, a {@link lyewright.material.Figure} with its source, and {@link
 * lyewright.material.Tables}, one edition of all reference figures read from the class path.
 *
 * <p>May use: measure, commons-csv. Used by: formula and every room above it.
 *
 * <p>Change freely: package-private types. Change with a decision record: a figure in the tables (it needs its source
 * and a new edition), and the keys, which formulas are written with.
 */
@NullMarked
package lyewright.material;

import org.jspecify.annotations.NullMarked;
