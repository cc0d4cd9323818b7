package lyewright.app;

import java.io.IOException;
import java.io.InputStream;
import java.net.HttpURLConnection;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Opens the pages one after another, as a person looking round the demo workshop would, so that the launcher can note which
 * classes a start takes.
 */
final class Practice {

    private static final Pattern LINK = Pattern.compile("href=\"(/[^\"#]*)\"");
    private static final int MOST_PAGES = 40;

    private final String own;

    Practice(String address) {
        own = address.substring(0, address.length() - 1);
    }

    void run() {
        try {
            ask("POST", "/start/demo");
            Deque<String> ahead = new ArrayDeque<>(Set.of("/recipes"));
            Set<String> seen = new HashSet<>(ahead);
            for (int opened = 0; opened < MOST_PAGES && !ahead.isEmpty(); opened++) {
                Matcher links = LINK.matcher(ask("GET", ahead.remove()));
                while (links.find()) {
                    String link = links.group(1).replace("&amp;", "&");
                    if (seen.add(link)) {
                        ahead.add(link);
                    }
                }
            }
        } catch (IOException e) {
            // whatever could be noted has been noted
        }
    }

    private String ask(String method, String path) throws IOException {
        HttpURLConnection asked =
                (HttpURLConnection) URI.create(own + path).toURL().openConnection();
        asked.setRequestMethod(method);
        asked.setInstanceFollowRedirects(false);
        if (method.equals("POST")) {
            // as a browser does: it says which page a write comes from
            asked.setRequestProperty("Referer", own + "/start");
            asked.setDoOutput(true);
            asked.getOutputStream().close();
        }
        if (asked.getResponseCode() != HttpURLConnection.HTTP_OK) {
            return "";
        }
        try (InputStream in = asked.getInputStream()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
