/**
 * Pictures drawn once as SVG for screen and paper: where the mass goes, fatty acids, the superfat's band, moulds and their
 * cuts. Each is a page model here and a template in src/main/jte/picture; colours come from classes, so that screen, dark
 * screen and paper each have their own.
 *
 * <p>May use: engine, words. Used by: print, web.
 *
 * <p>Change freely: sizes, shapes and captions. Keep: every picture has its table too, and says the same.
 */
@NullMarked
package lyewright.picture;

import org.jspecify.annotations.NullMarked;
