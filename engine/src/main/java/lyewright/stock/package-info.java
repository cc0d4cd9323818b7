/**
 * What is in the cupboard, and which of it a batch takes: pure rules over lots and what is left of them.
 *
 * <p>Lives here: {@link lyewright.stock.Lot}, one lot as these rules see it; {@link lyewright.stock.Allocation}, which lots serve a
 * need, {@link lyewright.stock.Picked} by hand; {@link lyewright.stock.Cupboard}, whether a whole sheet can be made; {@link lyewright.stock.MixedFigures}, what lots that go
 * in together come to.
 *
 * <p>Amounts are whole numbers: milligrams of what is weighed, pieces of what is counted. A rule never mixes the two.
 *
 * <p>May use: formula and all below it. Used by: records, the application.
 *
 * <p>Change freely: package-private types, words. Change with a decision record: the order in which lots are taken.
 */
@NullMarked
package lyewright.stock;

import org.jspecify.annotations.NullMarked;
