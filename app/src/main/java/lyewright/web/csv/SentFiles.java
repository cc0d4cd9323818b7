package lyewright.web.csv;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import lyewright.records.csv.CsvFile;
import lyewright.records.csv.CsvImport;
import lyewright.records.csv.Separator;

/** Files that were sent and are being looked at. A few at a time, none larger than a few megabytes; a restart forgets them. */
final class SentFiles {

    private static final int WAITING = 6;

    private final Map<String, Sent> files = new LinkedHashMap<>();

    /** Reads what was sent anew, perhaps with another separator; it was read once, so it is a file. */
    @FunctionalInterface
    interface Reading {
        CsvFile read(Optional<Separator> separator);
    }

    /**
     * A file.
     *
     * @param name what it is called where it came from
     * @param reading reads it
     * @param taken the file as it was taken in and what became of it, once it was
     */
    record Sent(String name, Reading reading, Optional<Taken> taken) {}

    /** A file as it was taken in, and what became of it. */
    record Taken(CsvFile file, CsvImport.Result result) {}

    /** Keeps one; gives the word it is asked for by. */
    synchronized String keep(String name, Reading reading) {
        String token = UUID.randomUUID().toString();
        files.put(token, new Sent(name, reading, Optional.empty()));
        if (files.size() > WAITING) {
            files.remove(files.keySet().iterator().next());
        }
        return token;
    }

    synchronized Optional<Sent> find(String token) {
        return Optional.ofNullable(files.get(token));
    }

    synchronized void taken(String token, Taken taken) {
        files.computeIfPresent(token, (it, sent) -> new Sent(sent.name(), sent.reading(), Optional.of(taken)));
    }
}
