package lyewright.app;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** Standard output, remembering whether anything was lost. A reader who has had enough and closed the pipe loses nothing. */
final class StandardOutput extends FilterOutputStream {

    private boolean lost;

    StandardOutput(OutputStream out) {
        super(out);
    }

    /** Whether something could not be written that somebody waits for. */
    boolean lost() {
        return lost;
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        try {
            out.write(bytes, from, length);
        } catch (IOException e) {
            lost |= !closedByReader(e);
            throw e;
        }
    }

    private static boolean closedByReader(IOException e) {
        return String.valueOf(e.getMessage()).contains("Broken pipe");
    }
}
