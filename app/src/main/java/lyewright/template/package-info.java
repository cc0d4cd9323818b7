/**
 * The templates of pages and papers, turned into Java when the application is built, and the one place that runs them.
 *
 * <p>May use: whatever the templates in src/main/jte name. Used by: print, web.
 *
 * <p>Change freely: how a template is found. Templates hold no business rule.
 */
@NullMarked
package lyewright.template;

import org.jspecify.annotations.NullMarked;
