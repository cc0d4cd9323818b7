/**
 * The pages: one server, its defences, and the frame that every page stands in; a room below for each feature.
 *
 * <p>Lives here: {@link lyewright.web.WebServer}, the door. Routes, page models and forms of a feature live in the package named
 * after it.
 *
 * <p>May use: engine, records, words, picture, print, template. Used by: app.
 *
 * <p>Change freely: a feature's page models and routes. Change with a decision record: addresses of pages, what a write must
 * prove before it is let in.
 */
@NullMarked
package lyewright.web;

import org.jspecify.annotations.NullMarked;
