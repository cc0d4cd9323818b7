package lyewright.benchmarks;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The application in a process of its own, started as a person starts it. */
final class RunningPages implements AutoCloseable {

    private static final Pattern ADDRESS = Pattern.compile("http://localhost:[0-9]+");
    private static final Pattern RESIDENT = Pattern.compile("VmRSS:\\s+([0-9]+) kB");

    private final HttpClient client = HttpClient.newHttpClient();
    private final Process process;
    private final String address;
    private final double startSeconds;

    RunningPages(Path launcher, Path home) throws IOException {
        long began = System.nanoTime();
        ProcessBuilder starting = new ProcessBuilder(
                        launcher.toString(), "--port", "0", "--no-browser", "--home", home.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT);
        starting.environment().putAll(OtherPlace.environment(home));
        process = starting.start();
        BufferedReader said = process.inputReader(StandardCharsets.UTF_8);
        Matcher found = ADDRESS.matcher(String.valueOf(said.readLine()));
        if (!found.find()) {
            throw new IOException("the pages did not start");
        }
        address = found.group();
        get("/recipes");
        startSeconds = (System.nanoTime() - began) / 1e9;
    }

    /** From the command to the first page. */
    double startSeconds() {
        return startSeconds;
    }

    HttpResponse<byte[]> get(String path) throws IOException {
        return send(HttpRequest.newBuilder(URI.create(address + path)).build());
    }

    HttpResponse<byte[]> post(String path, String form) throws IOException {
        return send(HttpRequest.newBuilder(URI.create(address + path))
                .header("Origin", address)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form))
                .build());
    }

    private HttpResponse<byte[]> send(HttpRequest request) throws IOException {
        try {
            return client.send(request, HttpResponse.BodyHandlers.ofByteArray());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(e);
        }
    }

    /** What the process holds of the machine's memory, where the system tells. */
    long residentMegabytes() throws IOException {
        Matcher found = RESIDENT.matcher(Files.readString(Path.of("/proc/" + process.pid() + "/status")));
        return found.find() ? Long.parseLong(found.group(1)) / 1024 : -1;
    }

    @Override
    public void close() throws IOException {
        process.destroy();
        try {
            process.waitFor();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
