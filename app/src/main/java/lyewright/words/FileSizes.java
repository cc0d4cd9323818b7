package lyewright.words;

/** How long a file is, as people say it. */
public final class FileSizes {

    private static final double STEP = 1024;
    private static final double TEN = 10;

    private FileSizes() {}

    /** Bytes as a few figures with a unit of 1024 of the one before: 812 bytes, 12 KB, 3.4 MB. */
    public static String said(long bytes) {
        if (bytes < STEP) {
            return bytes == 1 ? "1 byte" : bytes + " bytes";
        }
        double kilobytes = bytes / STEP;
        double whole = Math.rint(kilobytes);
        return whole < STEP ? figure(kilobytes) + " KB" : figure(kilobytes / STEP) + " MB";
    }

    private static String figure(double size) {
        return Figures.upTo(size, size < TEN ? 1 : 0);
    }
}
