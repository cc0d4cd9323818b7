/**
 * People and devices: who is let in, by a code or by a password, and what they are told about it.
 *
 * <p>Lives here: {@link lyewright.web.people.PeoplePages}, the door; {@link lyewright.web.people.Porter}, who says of every request that does
 * not come from the desk whose it is.
 *
 * <p>May use: engine, records, words, template, the top of {@code lyewright.web}. Used by: app.
 *
 * <p>Change freely: page models, templates, sentences. Change with a decision record: how long a code lives, how often one may guess, what
 * a cookie carries.
 */
@NullMarked
package lyewright.web.people;

import org.jspecify.annotations.NullMarked;
