package lyewright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Styles, scripts and fonts: a fixed list, read once into memory, so no address reaches any other file. An address carries a
 * digest of the content and may be kept by a browser for as long as it likes.
 */
final class StaticFiles implements Feature {

    private static final String PREFIX = "/static/";

    private static final Map<String, StaticFile> FILES = readAll();

    /** A file as it is served; never compared, so its bytes may stand in it. */
    @SuppressWarnings("ArrayRecordComponent")
    private record StaticFile(byte[] content, String type, String digest) {}

    static String address(String name) {
        StaticFile file = FILES.get(name);
        if (file == null) {
            throw new IllegalArgumentException("there is no file " + name + " below static; add it to its index");
        }
        return PREFIX + file.digest() + "/" + name;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get(PREFIX + "{digest}/<name>", StaticFiles::serve);
    }

    private static void serve(Context ctx) {
        StaticFile file = FILES.get(ctx.pathParam("name"));
        if (file == null || !file.digest().equals(ctx.pathParam("digest"))) {
            throw new NotFoundResponse();
        }
        ctx.header("Cache-Control", "public, max-age=31536000, immutable");
        ctx.contentType(file.type()).result(file.content());
    }

    private static Map<String, StaticFile> readAll() {
        Map<String, byte[]> contents = new LinkedHashMap<>();
        for (String name : index()) {
            contents.put(name, read(name));
        }
        Map<String, StaticFile> files = new LinkedHashMap<>();
        // fonts first: a stylesheet names them by their addresses, which hold their digests
        contents.forEach((name, content) -> {
            byte[] served = name.endsWith(".css") ? withFontAddresses(content, files) : content;
            files.put(name, new StaticFile(served, type(name), digest(served)));
        });
        return files;
    }

    private static byte[] withFontAddresses(byte[] css, Map<String, StaticFile> files) {
        String text = new String(css, StandardCharsets.UTF_8);
        for (Map.Entry<String, StaticFile> file : files.entrySet()) {
            text = text.replace(
                    "url(" + file.getKey() + ")",
                    "url(" + PREFIX + file.getValue().digest() + "/" + file.getKey() + ")");
        }
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String[] index() {
        return Arrays.stream(new String(read("index.txt"), StandardCharsets.UTF_8).split("\n"))
                .map(String::strip)
                .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                .toArray(String[]::new);
    }

    private static byte[] read(String name) {
        try (InputStream in = StaticFiles.class.getResourceAsStream("static/" + name)) {
            if (in == null) {
                throw new IllegalStateException("the file static/" + name + " is missing from the application");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String type(String name) {
        return switch (name.substring(name.lastIndexOf('.') + 1)) {
            case "css" -> "text/css; charset=utf-8";
            case "js" -> "text/javascript; charset=utf-8";
            case "woff2" -> "font/woff2";
            case "svg" -> "image/svg+xml";
            default -> throw new IllegalStateException("no type is known for " + name);
        };
    }

    private static String digest(byte[] content) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(content);
            return HexFormat.of().formatHex(hash, 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
