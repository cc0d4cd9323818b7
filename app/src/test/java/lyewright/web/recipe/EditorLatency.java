package lyewright.web.recipe;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import lyewright.web.TestBrowser;

/**
 * Measures, in Chromium, how long it takes from a keystroke in the editor to changed figures on the screen: the pause before
 * asking, the draft kept, the superfat's interval drawn, the answer laid out. Run by hand, with the address of the editor of a
 * recipe, or without to start a server in this process.
 */
final class EditorLatency {

    private static final int WARM = 40;
    private static final int KEYS = 200;

    /** From the input's own event to the frame after the figures have changed. */
    private static final String WATCH = """
            () => {
              window.took = [];
              window.parts = [];
              performance.setResourceTimingBufferSize(10000);
              let from = null;
              document.addEventListener("input", event => { from = performance.now(); }, true);
              document.addEventListener("htmx:afterSwap", event => {
                if (from !== null && event.detail.target.id === "answers") {
                  const asked = from;
                  from = null;
                  requestAnimationFrame(() => setTimeout(() => {
                    const now = performance.now();
                    const last = performance.getEntriesByType("resource").at(-1);
                    window.parts.push([last.requestStart - asked, last.responseStart - last.requestStart, now - last.responseEnd]);
                    window.took.push(now - asked);
                  }, 0));
                }
              });
            }""";

    private EditorLatency() {}

    public static void main(String[] arguments) throws IOException {
        if (arguments.length > 0) {
            measure(arguments[0]);
            return;
        }
        Path home = Files.createTempDirectory("editor");
        try (EditorBench bench = new EditorBench(home)) {
            measure(bench.address("recipes/" + bench.tideline().id() + "/edit"));
        }
    }

    private static void measure(String address) {
        try (TestBrowser browser = new TestBrowser();
                TestBrowser.Visit visit = browser.visit(1440)) {
            Page page = visit.page();
            page.navigate(address);
            page.evaluate(WATCH);
            type(page, WARM);
            page.evaluate("() => { window.took = []; window.parts = []; }");
            type(page, KEYS);
            report(page);
        }
    }

    /** One digit of the superfat, again and again another. */
    private static void type(Page page, int keys) {
        page.locator("[name='superfat']").focus();
        for (int i = 0; i < keys; i++) {
            page.evaluate(
                    "() => { const f = document.querySelector(\"[name='superfat']\"); f.setSelectionRange(0, 1); }");
            int before = ((Number) page.evaluate("() => window.took.length")).intValue();
            page.keyboard().type(Integer.toString(1 + i % 2));
            page.waitForFunction("before => window.took.length > before", before);
        }
    }

    private static void report(Page page) {
        List<?> took = (List<?>) page.evaluate("() => window.took");
        print("keystroke to changed figures", took);
        print("  until it is asked", (List<?>) page.evaluate("() => window.parts.map(p => p[0])"));
        print("  until it is answered", (List<?>) page.evaluate("() => window.parts.map(p => p[1])"));
        print("  until it is seen", (List<?>) page.evaluate("() => window.parts.map(p => p[2])"));
    }

    private static void print(String what, List<?> took) {
        double[] sorted = took.stream()
                .mapToDouble(t -> ((Number) t).doubleValue())
                .sorted()
                .toArray();
        System.out.printf(
                Locale.ROOT,
                "%s, %d times: median %.0f ms, p95 %.0f ms, p99 %.0f ms, most %.0f ms%n",
                what,
                sorted.length,
                sorted[sorted.length / 2],
                sorted[(int) (sorted.length * 0.95)],
                sorted[(int) (sorted.length * 0.99)],
                sorted[sorted.length - 1]);
    }
}
