package lyewright.web.photograph;

/**
 * A photograph as it is kept: anew from its pixels, so that nothing else of the file that was given is left.
 *
 * @param large JPEG, at most {@value #LARGE} pixels wide and high
 * @param small JPEG, at most {@value #SMALL} pixels wide and high
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Photograph(byte[] large, byte[] small) {

    static final int LARGE = 1600;
    static final int SMALL = 480;
}
