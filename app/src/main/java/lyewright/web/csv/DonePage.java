package lyewright.web.csv;

import lyewright.web.Frame;

/**
 * What became of a file.
 *
 * @param frame around it
 * @param name of the file
 * @param told how many were new, there, and wrong
 * @param leftOut where the rows with problems can be had; empty where there is none
 * @param problems what is wrong by row
 * @param notes what is worth a look in rows that went in
 */
public record DonePage(
        Frame frame,
        String name,
        String told,
        String leftOut,
        PreviewPage.Problems problems,
        PreviewPage.Problems notes) {}
