package lyewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A real Chromium for one test class. Each visit has a width, notes what the browser complains of, and keeps pictures of what
 * it saw below target/screenshots.
 */
public final class TestBrowser implements AutoCloseable {

    /** A phone, a tablet, a desk. */
    public static final List<Integer> WIDTHS = List.of(360, 820, 1440);

    /** Milliseconds; what has not come by then does not come. */
    private static final double LONGEST_WAIT = 30_000;

    private static final Path PICTURES = Path.of("target", "screenshots");

    private final Playwright playwright;
    private final Browser chromium;

    public TestBrowser() {
        PlaywrightAssertions.setDefaultAssertionTimeout(LONGEST_WAIT);
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        chromium = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(executable())
                        .setArgs(List.of(
                                "--no-sandbox",
                                "--disable-gpu",
                                "--disable-quic",
                                "--no-first-run",
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync")));
    }

    private static Path executable() {
        return Stream.of(
                        Optional.ofNullable(System.getenv("CHROMIUM")).orElse(""),
                        // Chromium without windows; the pages come to the same, in two thirds of the time
                        "/usr/bin/chromium-headless-shell",
                        "/usr/bin/chromium",
                        "/usr/bin/chromium-browser",
                        "/usr/bin/google-chrome")
                .map(Path::of)
                .filter(path -> path.toFile().canExecute() && path.toFile().isFile())
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(
                        "these tests need Chromium; install it, or name it in the variable CHROMIUM"));
    }

    /** A visit at a width, as most makers have it: scripts on, light. */
    public Visit visit(int width) {
        return new Visit(context(width).setColorScheme(ColorScheme.LIGHT), width + "");
    }

    /** A visit by someone who wishes dark pages. */
    public Visit darkVisit(int width) {
        return new Visit(context(width).setColorScheme(ColorScheme.DARK), width + "-dark");
    }

    /** A visit without JavaScript. */
    public Visit visitWithoutScripts(int width) {
        return new Visit(context(width).setJavaScriptEnabled(false), width + "-without-scripts");
    }

    private static Browser.NewContextOptions context(int width) {
        return new Browser.NewContextOptions().setViewportSize(width, 900).setLocale("en-GB");
    }

    @Override
    public void close() {
        chromium.close();
        playwright.close();
    }

    /** One visit: a page of its own with nothing kept from others. */
    public final class Visit implements AutoCloseable {

        private final BrowserContext context;
        private final Page page;
        private final String name;
        private final List<String> complaints = new ArrayList<>();

        private Visit(Browser.NewContextOptions options, String name) {
            this.name = name;
            context = chromium.newContext(options);
            context.setDefaultTimeout(LONGEST_WAIT);
            page = context.newPage();
            // complaints about the policy come to the console too
            page.onConsoleMessage(message -> {
                if (List.of("error", "warning").contains(message.type())) {
                    complaints.add(message.type() + ": " + message.text());
                }
            });
            page.onPageError(error -> complaints.add("script: " + error));
        }

        /** The page itself, to click and type. */
        public Page page() {
            return page;
        }

        /** What the browser has complained of so far: errors, warnings, reports against the policy. */
        public List<String> complaints() {
            return List.copyOf(complaints);
        }

        /** For a page that is meant to answer 422 or 404, which a browser reports as an error, though not at once. */
        public void forgetComplaintsOf(int status) {
            page.waitForCondition(() -> complaints.removeIf(complaint -> complaint.contains("status of " + status)));
        }

        /** Keeps a picture of the whole page as {@code target/screenshots/AREA/NAME-WIDTH.png}. */
        public void keepPicture(String area, String what) {
            Path file = PICTURES.resolve(area).resolve(what + "-" + name + ".png");
            page.screenshot(new Page.ScreenshotOptions().setPath(file).setFullPage(true));
        }

        /** What every page must keep: nothing wider than the window, nothing that axe finds, no complaint. */
        public void isSound() {
            fits();
            List<String> found = new ArrayList<>();
            for (Rule rule : axe().analyze().getViolations()) {
                rule.getNodes()
                        .forEach(node -> found.add(rule.getId() + " (" + rule.getImpact() + "): " + rule.getHelp() + " "
                                + node.getHtml()));
            }
            assertThat(found).as("found by axe at %s", page.url()).isEmpty();
        }

        /** The same without axe, where a page differs from one that was looked at only in its words. */
        public void fits() {
            Object over =
                    page.evaluate("() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
            assertThat(((Number) over).intValue())
                    .as("pixels wider than the window: %s", page.url())
                    .isZero();
            assertThat(complaints)
                    .as("complaints of the browser at %s", page.url())
                    .isEmpty();
        }

        /** In the page itself: our pages have no frames, and gathering results in a second page takes far longer. */
        @SuppressWarnings("deprecation") // the mode is deprecated for pages with frames
        private AxeBuilder axe() {
            AxeRunOptions options = new AxeRunOptions();
            options.setResultTypes(List.of("violations"));
            return new AxeBuilder(page).options(options).setLegacyMode(true);
        }

        @Override
        public void close() {
            context.close();
        }
    }
}
