/**
 * How the records reach their database: connections, transactions, migrations, and what a database's errors mean to a person.
 *
 * <p>Lives here: {@link lyewright.records.store.Database}, which the doors are built on, and what each kind of database does in
 * its own way. Nothing here knows what is kept.
 *
 * <p>May use: {@code lyewright.measure}, and the places and troubles of the records. Used by: the doors of the records only.
 *
 * <p>Change freely: whatever is package-private. Change with a decision record: one writer, one moment a reading.
 */
@NullMarked
package lyewright.records.store;

import org.jspecify.annotations.NullMarked;
