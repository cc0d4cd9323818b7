/**
 * Photographs of recipes: how they come in and how they are shown.
 *
 * <p>Lives here: {@link lyewright.web.photograph.PhotographPages}; what reads a stranger's file and makes a photograph of it.
 *
 * <p>May use: records, the recipe pages, and the frame of the pages. Used by: app.
 *
 * <p>Change freely: sizes and quality. Change with care: what is refused before a pixel is read.
 */
@NullMarked
package lyewright.web.photograph;

import org.jspecify.annotations.NullMarked;
