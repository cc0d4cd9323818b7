/**
 * A formula as a maker writes it, its file, and its resolving against the tables.
 *
 * <p>Lives here: {@link lyewright.formula.Formula} and its parts, which keep every figure as typed; {@link
 * lyewright.formula.FormulaFile}, which reads and writes the YAML form; {@link lyewright.formula.ResolvedFormula}, the
 * same formula with each key looked up and each figure ready to compute with.
 *
 * <p>May use: material, measure, snakeyaml-engine. Used by: chemistry and every room above it.
 *
 * <p>Change freely: package-private types. Change with a decision record: the components of {@link
 * lyewright.formula.Formula} and the words of its file, which makers' own files rely on.
 */
@NullMarked
package lyewright.formula;

import org.jspecify.annotations.NullMarked;
