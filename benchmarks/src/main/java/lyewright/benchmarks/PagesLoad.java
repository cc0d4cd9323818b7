package lyewright.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * How long pages take with few recipes and with many, asked in turns in one run, so that whatever else the machine does falls
 * on both; then how large the pages are, how soon the first is there, and how much memory the process holds.
 */
public final class PagesLoad {

    private static final int FEW = 20;
    private static final int MANY = 2000;
    private static final int VERSIONS = 10;
    private static final int WARM_UP = 60;
    private static final int ASKED = 400;
    private static final int PAPERS = 20;

    private static final Pattern RECIPE = Pattern.compile("href=\"/recipes/([0-9a-f-]{36})\"");

    private PagesLoad() {}

    /**
     * Measures and prints.
     *
     * @param args the launcher, then how often each page is asked for (400 where left out)
     * @throws IOException where the pages do not answer
     */
    public static void main(String[] args) throws IOException {
        Path launcher = Path.of(args[0]);
        int asked = args.length > 1 ? Integer.parseInt(args[1]) : ASKED;
        Path folder = Files.createTempDirectory("lyewright-pages");
        try {
            print("filling two workshops: %d and %d recipes, %d versions of each", FEW, MANY, VERSIONS);
            ManyRecipes.fill(folder.resolve("few"), FEW, VERSIONS);
            ManyRecipes.fill(folder.resolve("many"), MANY, VERSIONS);
            try (RunningPages few = new RunningPages(launcher, folder.resolve("few"));
                    RunningPages many = new RunningPages(launcher, folder.resolve("many"))) {
                print("first page after %.2f s and %.2f s", few.startSeconds(), many.startSeconds());
                compare(few, many, asked);
                memory(many);
            }
        } finally {
            delete(folder);
        }
    }

    private static void compare(RunningPages few, RunningPages many, int asked) throws IOException {
        compare(few, paths(few), many, paths(many), asked);
    }

    /** The same pages of both, a line for each. */
    static void compare(RunningPages few, List<String> ofFew, RunningPages many, List<String> ofMany, int asked)
            throws IOException {
        print("%-34s %8s %8s %8s %8s %6s %6s", "page", "few p50", "p99", "many p50", "p99 ms", "ratio", "KB");
        for (int i = 0; i < ofFew.size(); i++) {
            compare(few, ofFew.get(i), many, ofMany.get(i), asked);
        }
    }

    private static void compare(RunningPages few, String onFew, RunningPages many, String onMany, int asked)
            throws IOException {
        double[] timesFew = new double[asked];
        double[] timesMany = new double[asked];
        int size = 0;
        for (int i = -WARM_UP; i < asked; i++) {
            double a = milliseconds(few, onFew);
            double b = milliseconds(many, onMany);
            if (i >= 0) {
                timesFew[i] = a;
                timesMany[i] = b;
            } else {
                size = many.get(onMany).body().length;
            }
        }
        Arrays.sort(timesFew);
        Arrays.sort(timesMany);
        print(
                "%-34s %8.2f %8.2f %8.2f %8.2f %6.2f %6.1f",
                onMany.replaceAll("[0-9a-f-]{36}", "ID"),
                at(timesFew, 0.5),
                at(timesFew, 0.99),
                at(timesMany, 0.5),
                at(timesMany, 0.99),
                at(timesMany, 0.99) / at(timesFew, 0.99),
                size / 1024.0);
    }

    private static double milliseconds(RunningPages pages, String path) throws IOException {
        long began = System.nanoTime();
        HttpResponse<byte[]> answer = pages.get(path);
        double taken = (System.nanoTime() - began) / 1e6;
        if (answer.statusCode() != 200) {
            throw new IOException(path + " answered " + answer.statusCode());
        }
        return taken;
    }

    /** One address of every kind of page. */
    private static List<String> paths(RunningPages pages) throws IOException {
        String id = firstRecipe(pages);
        return List.of(
                "/recipes",
                // finds 2 of 20 recipes, and a page full of 2,000
                "/recipes?q=slate",
                // finds every recipe of either, by its notes
                "/recipes?q=invented",
                "/recipes/" + id,
                "/recipes/" + id + "/versions/3",
                "/recipes/" + id + "/compare?a=1&b=2",
                "/recipes/" + id + "/edit",
                "/recipes/new",
                "/make?recipe=" + id,
                "/why?recipe=" + id,
                "/notebook",
                "/stores",
                "/settings");
    }

    /** The same recipe in both workshops. */
    private static String firstRecipe(RunningPages pages) throws IOException {
        Matcher link =
                RECIPE.matcher(new String(pages.get("/recipes?q=tideline").body(), StandardCharsets.UTF_8));
        if (!link.find()) {
            throw new IOException("the list of recipes links to none");
        }
        return link.group(1);
    }

    private static void memory(RunningPages pages) throws IOException {
        print("resident after every page was asked for: %d MB", pages.residentMegabytes());
        String id = firstRecipe(pages);
        long most = 0;
        double[] times = new double[PAPERS];
        for (int i = 0; i < PAPERS; i++) {
            long began = System.nanoTime();
            HttpResponse<byte[]> paper = pages.get("/make/sheet.pdf?recipe=" + id + "&paper=A4");
            times[i] = (System.nanoTime() - began) / 1e6;
            if (paper.statusCode() != 200) {
                throw new IOException("the paper answered " + paper.statusCode());
            }
            most = Math.max(most, pages.residentMegabytes());
        }
        print(
                "papers: first %.0f ms, median %.0f ms; resident while they are made: %d MB",
                times[0], median(times), most);
    }

    private static double median(double[] times) {
        double[] sorted = times.clone();
        Arrays.sort(sorted);
        return at(sorted, 0.5);
    }

    static double at(double[] sorted, double share) {
        return sorted[(int) Math.min(sorted.length - 1L, Math.round(share * (sorted.length - 1)))];
    }

    static void delete(Path folder) throws IOException {
        List<Path> all = new ArrayList<>();
        try (Stream<Path> found = Files.walk(folder)) {
            found.sorted(Comparator.reverseOrder()).forEach(all::add);
        }
        all.forEach(path -> {
            try {
                Files.delete(path);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    static void print(String format, Object... figures) {
        System.out.printf(Locale.ROOT, format + "%n", figures);
    }
}
