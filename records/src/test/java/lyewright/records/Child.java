package lyewright.records;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import lyewright.measure.Outcome;
import lyewright.records.stock.MoveKind;
import lyewright.records.stock.StockMove;
import lyewright.records.stock.Taking;

/** A process of its own that opens a workshop and saves recipes, or takes from a lot, until it is ended. */
final class Child implements AutoCloseable {

    private final Process process;
    private final BufferedReader said;

    private Child(Process process) {
        this.process = process;
        this.said = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    /** How much of a lot is taken each time, milligrams. */
    static final long TAKEN = 7;

    /** Saves recipes. */
    static Child start(Place place) throws IOException {
        return start(place, "");
    }

    /** Takes from a lot, and says the token of each taking once it is done. */
    static Child taking(Place place, String lotId) throws IOException {
        return start(place, lotId);
    }

    private static Child start(Place place, String lotId) throws IOException {
        List<String> words = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                Child.class.getName(),
                lotId));
        if (place instanceof Place.Folder folder) {
            words.add(folder.home().toString());
        } else {
            Place.Server server = (Place.Server) place;
            words.addAll(List.of(
                    server.jdbcUrl(),
                    server.user(),
                    server.password(),
                    server.schema(),
                    server.files().toString()));
        }
        return new Child(new ProcessBuilder(words)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start());
    }

    /** What it says next: a recipe that is saved, or why it was refused. */
    String next() throws IOException {
        String line = said.readLine();
        if (line == null) {
            throw new IOException("the process ended");
        }
        return line;
    }

    /** Ends it as a power cut would, and reads what it had said until then. */
    List<String> kill() throws IOException, InterruptedException {
        // by its handle, for the process itself would close what it said unread
        process.toHandle().destroyForcibly();
        process.waitFor();
        List<String> rest = new ArrayList<>();
        for (String line = said.readLine(); line != null; line = said.readLine()) {
            rest.add(line);
        }
        return rest;
    }

    @Override
    public void close() throws IOException {
        process.destroyForcibly();
        said.close();
    }

    /**
     * Saves recipes and says each one's id once it is saved; or takes from a lot and says each taking's token.
     *
     * @param words the lot or nothing; then a folder, or a server's address, user, password, schema and files
     */
    public static void main(String[] words) {
        Place place = words.length == 2
                ? new Place.Folder(Path.of(words[1]))
                : new Place.Server(words[1], words[2], words[3], words[4], Path.of(words[5]));
        var opened = Records.open(place, Clock.systemUTC());
        if (!opened.problems().isEmpty()) {
            System.out.println(opened.problems().get(0).sentence());
            return;
        }
        Records records = opened.orThrow();
        while (!System.out.checkError()) {
            // the line in one piece, so that a killing cannot cut it
            String done = words[0].isEmpty() ? saved(records) : taken(records, words[0]);
            byte[] line = (done + "\n").getBytes(StandardCharsets.UTF_8);
            System.out.write(line, 0, line.length);
            System.out.flush();
        }
    }

    private static String saved(Records records) {
        return records.recipes()
                .add(Formulas.of("Saved", 1, "5 %", "x".repeat(5_000)))
                .orThrow()
                .recipeId();
    }

    private static String taken(Records records, String lotId) {
        String token = UUID.randomUUID().toString();
        take(records, token, lotId).orThrow();
        return token;
    }

    /** Takes, under a token. */
    static Outcome<List<Long>> take(Records records, String token, String lotId) {
        return records.lots()
                .take(
                        records.author(),
                        token,
                        List.of(new Taking(lotId, TAKEN, "")),
                        StockMove.Told.of(MoveKind.USE, 0).withPurpose(token));
    }
}
