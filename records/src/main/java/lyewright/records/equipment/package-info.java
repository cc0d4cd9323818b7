/**
 * Moulds, balances and jugs.
 *
 * <p>Lives here: {@link lyewright.records.equipment.EquipmentRegister}, the door, and what it hands out; rows and SQL behind it.
 *
 * <p>May use: the engine, {@code lyewright.records.store}. Used by: the application.
 *
 * <p>Change freely: whatever is package-private. Change with a decision record: what is taken for granted where the register is
 * silent.
 */
@NullMarked
package lyewright.records.equipment;

import org.jspecify.annotations.NullMarked;
