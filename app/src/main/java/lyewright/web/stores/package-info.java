/**
 * The pages of the stores: moulds, balances, jugs and pots, the maker's own materials, and what the tables know.
 *
 * <p>Lives here: {@link lyewright.web.stores.StoresPages}, the door; for each thing its routes, its form as typed, and its page
 * models. A form keeps what was typed as text and reads it by the engine's own rules.
 *
 * <p>May use: engine, records, words, picture, template, and the frame in {@code lyewright.web}. Used by: app.
 *
 * <p>Change freely: everything package-private, and the templates below {@code jte/stores}. Keep: what each page asks is only
 * what the chosen kind needs.
 */
@NullMarked
package lyewright.web.stores;

import org.jspecify.annotations.NullMarked;
