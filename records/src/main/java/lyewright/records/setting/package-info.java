/**
 * What a workshop is set to: its name, units, currency, market, paper, and what it takes for granted.
 *
 * <p>Lives here: {@link lyewright.records.setting.WorkshopSettings}, the door.
 *
 * <p>May use: the engine, {@code lyewright.records.store}. Used by: the application.
 *
 * <p>Change freely: whatever is package-private. Change with a decision record: what is asked before anything else works.
 */
@NullMarked
package lyewright.records.setting;

import org.jspecify.annotations.NullMarked;
