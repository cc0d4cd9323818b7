/**
 * Where the application starts and its rooms are wired together.
 *
 * <p>Lives here: {@link lyewright.app.Main}.
 *
 * <p>May use: cli, records, engine. Used by: nobody.
 *
 * <p>Change freely: everything but the name of the main class, which the launcher knows.
 */
@NullMarked
package lyewright.app;

import org.jspecify.annotations.NullMarked;
