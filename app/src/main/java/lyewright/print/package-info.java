/**
 * Paper: documents as PDF, made from the same templates' parts as pages.
 *
 * <p>May use: engine, words, picture, template. Used by: web, cli.
 *
 * <p>Change freely: layout. Keep: every weighed mass that a page shows is on the paper too.
 */
@NullMarked
package lyewright.print;

import org.jspecify.annotations.NullMarked;
