/**
 * Pictures drawn once as SVG for screen and paper: where the mass goes, fatty acids, the superfat's band, moulds and their
 * cuts, portions and fading pours, two versions beside each other, a recipe's mark.
 *
 * <p>Lives here: a class for each picture, which makes a {@link lyewright.picture.Picture} of a sheet; the template {@code
 * picture/figure.jte} writes one with its words and its table, {@code picture/svg.jte} its drawing alone, {@code
 * figurePaper.jte} and {@code svgPaper.jte} the same for paper, whose SVG reader sees no stylesheet of the page. A drawing says
 * what its parts are; {@code pictures.css} and {@code picture/paper.jte} say what that looks like. A view box is 360 wide, so
 * that letters are read on a small telephone.
 *
 * <p>May use: engine, words. Used by: print, web.
 *
 * <p>Change freely: sizes, shapes and captions. Keep: every picture has its table too, and says the same.
 */
@NullMarked
package lyewright.picture;

import org.jspecify.annotations.NullMarked;
