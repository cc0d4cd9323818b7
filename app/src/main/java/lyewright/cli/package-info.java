/**
 * The command line: what is typed becomes one call of the engine, and its answer becomes text or JSON.
 *
 * <p>Lives here: {@link lyewright.cli.Cli}, the door; a class for each command; how a sheet is printed and written as JSON.
 *
 * <p>May use: engine. Used by: app. No business rule lives here: parse, call one engine function, print.
 *
 * <p>Change freely: package-private types and the layout of printed pages. Change with a decision record: names of commands
 * and options, exit codes, the fields of the JSON (docs/sheet.schema.json).
 */
@NullMarked
package lyewright.cli;

import org.jspecify.annotations.NullMarked;
