package lyewright.web;

import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The frame around every page, seen in a browser. */
class FramePagesTest {

    private static WebServer server;
    private static TestBrowser browser;

    @BeforeAll
    static void start() {
        server = WebServer.start("127.0.0.1", 0, List.of()).orThrow();
        browser = new TestBrowser();
    }

    @AfterAll
    static void stop() {
        browser.close();
        server.close();
    }

    @Test
    void a_page_that_is_not_there_is_sound_at_every_width() {
        for (int width : TestBrowser.WIDTHS) {
            for (TestBrowser.Visit visit : List.of(browser.visit(width), browser.darkVisit(width))) {
                try (visit) {
                    visit.page().navigate(server.address() + "nothing");
                    visit.forgetComplaintsOf(404);
                    visit.keepPicture("frame", "not-here");
                    visit.isSound();
                }
            }
        }
    }
}
