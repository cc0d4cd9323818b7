package lyewright.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.records.Records;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.MoveKind;
import lyewright.records.stock.StockMove;
import lyewright.records.stock.Taking;

/**
 * How long the cupboard's pages take after one year (300 lots, 2,000 moves) and after ten (3,000 and 20,000), asked in turns in one run; then
 * how long a move takes beside a bare commit, in turns too.
 */
public final class CupboardLoad {

    private static final int YEAR_LOTS = 300;
    private static final int YEAR_MOVES = 2_000;
    private static final int YEARS = 10;
    private static final int RECIPES = 20;
    private static final int VERSIONS = 3;
    private static final int ASKED = 200;
    private static final int MOVES = 400;
    private static final int WARM_UP = 50;

    private CupboardLoad() {}

    /**
     * Measures and prints.
     *
     * @param args the launcher, then how often each page is asked for (200 where left out)
     * @throws IOException where the pages do not answer
     * @throws SQLException where nothing can be committed
     */
    public static void main(String[] args) throws IOException, SQLException {
        Path launcher = Path.of(args[0]);
        int asked = args.length > 1 ? Integer.parseInt(args[1]) : ASKED;
        Path folder = Files.createTempDirectory("lyewright-cupboard");
        try {
            PagesLoad.print("filling two workshops: one year and %d years", YEARS);
            fill(folder.resolve("one"), 1);
            fill(folder.resolve("ten"), YEARS);
            try (RunningPages one = new RunningPages(launcher, folder.resolve("one"));
                    RunningPages ten = new RunningPages(launcher, folder.resolve("ten"))) {
                PagesLoad.compare(one, paths(one), ten, paths(ten), asked);
            }
            moves(folder.resolve("one"), "one year");
            moves(folder.resolve("ten"), "ten years");
        } finally {
            PagesLoad.delete(folder);
        }
    }

    private static void fill(Path folder, int years) {
        ManyRecipes.fill(folder, RECIPES, VERSIONS);
        ManyLots.fill(folder, YEAR_LOTS * years, YEAR_MOVES * years);
    }

    /** One address of every kind of page that looks into the cupboard. */
    private static List<String> paths(RunningPages pages) throws IOException {
        String recipe = first(pages, "/recipes", "href=\"(/recipes/[0-9a-f-]{36})\"");
        String item = first(pages, "/stores/cupboard", "href=\"(/stores/cupboard/[0-9a-f-]{36})\"");
        String lot = first(pages, item, "href=\"(/stores/lots/[0-9a-f-]{36})\"");
        return List.of(
                "/stores",
                "/stores/cupboard",
                item,
                item + "/edit",
                lot,
                "/stores/deliveries/new",
                "/stores/made/new",
                "/stores/count",
                "/stores/suppliers",
                "/stores/csv",
                "/ledger",
                "/settings/people",
                "/make?recipe=" + recipe.replace("/recipes/", ""),
                recipe,
                "/recipes");
    }

    private static String first(RunningPages pages, String path, String link) throws IOException {
        String page = new String(pages.get(path).body(), StandardCharsets.UTF_8);
        Matcher found = Pattern.compile(link).matcher(page);
        if (!found.find()) {
            throw new IOException("no " + link + " on " + path);
        }
        return found.group(1);
    }

    private static void moves(Path home, String which) throws SQLException {
        double[] bare = new double[MOVES];
        double[] moved = new double[MOVES];
        try (Records records =
                        Records.open(OtherPlace.of(home), Clock.systemUTC()).orThrow();
                Connection connection = bare(home);
                Statement statement = connection.createStatement()) {
            if (OtherPlace.server().isEmpty()) {
                statement.execute("PRAGMA journal_mode = WAL");
                statement.execute("PRAGMA synchronous = FULL");
            }
            statement.execute("CREATE TABLE bare (number "
                    + (OtherPlace.server().isEmpty() ? "INTEGER" : "SERIAL") + " PRIMARY KEY, text TEXT)");
            List<KeptLot> held = records.lots().held();
            for (int i = -WARM_UP; i < MOVES; i++) {
                long start = System.nanoTime();
                statement.execute("INSERT INTO bare (text) VALUES ('a line of about as many letters as a move has')");
                long between = System.nanoTime();
                take(records, held.get(Math.floorMod(i, held.size())));
                long end = System.nanoTime();
                if (i >= 0) {
                    bare[i] = (between - start) / 1e6;
                    moved[i] = (end - between) / 1e6;
                }
            }
        }
        Arrays.sort(bare);
        Arrays.sort(moved);
        PagesLoad.print(
                "after %-9s a move: median %.2f ms, p99 %.2f; a bare commit: median %.2f, p99 %.2f; ratio of p99 %.2f",
                which,
                PagesLoad.at(moved, 0.5),
                PagesLoad.at(moved, 0.99),
                PagesLoad.at(bare, 0.5),
                PagesLoad.at(bare, 0.99),
                PagesLoad.at(moved, 0.99) / PagesLoad.at(bare, 0.99));
    }

    private static Connection bare(Path home) throws SQLException {
        return OtherPlace.server().isEmpty()
                ? DriverManager.getConnection("jdbc:sqlite:" + home.resolve("bare.db"))
                : DriverManager.getConnection(OtherPlace.url(home), OtherPlace.user(), OtherPlace.password());
    }

    private static void take(Records records, KeptLot lot) {
        records.lots()
                .take(
                        records.author(),
                        "",
                        List.of(new Taking(lot.id(), 1_000, "")),
                        StockMove.Told.of(MoveKind.USE, 0).withPurpose("Tideline"))
                .orThrow();
    }
}
