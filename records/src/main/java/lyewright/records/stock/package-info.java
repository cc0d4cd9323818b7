/**
 * What is in the cupboard: materials as they are bought, suppliers, lots, and the moves by which lots come and go.
 *
 * <p>Lives here: the doors {@link lyewright.records.stock.Suppliers}, {@link lyewright.records.stock.StockItems}, {@link
 * lyewright.records.stock.Lots} and {@link lyewright.records.stock.LotDocuments}, and what they give. Every lot, every move and every document of a lot is an entry of the ledger too, written in the same
 * transaction; what is left of a lot is the sum of its moves and is kept nowhere else.
 *
 * <p>May use: the engine's stock and formulas, ledger, people, {@code lyewright.records.file}, {@code lyewright.records.store}. Used by: the application.
 *
 * <p>Change freely: whatever is package-private but {@link lyewright.records.stock.StockEntries}, whose texts are sealed.
 */
@NullMarked
package lyewright.records.stock;

import org.jspecify.annotations.NullMarked;
