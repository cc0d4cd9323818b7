/**
 * The cupboard: what is there, in which lots, where it came from; deliveries, counts, suppliers.
 *
 * <p>Lives here: {@link lyewright.web.cupboard.CupboardPages}, the feature; for each page its handler, what it shows, and what is typed
 * into it.
 *
 * <p>May use: records, the engine, words, picture, what all pages share. Used by: app.
 *
 * <p>Change freely: everything; addresses are linked from elsewhere.
 */
@NullMarked
package lyewright.web.cupboard;

import org.jspecify.annotations.NullMarked;
