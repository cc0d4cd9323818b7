package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One printed reason, read back from nothing but its text. */
final class WhyPage {

    private final List<String> lines;

    private WhyPage(List<String> lines) {
        this.lines = lines;
    }

    /** Pages by figure. A page begins with its figure and a rule, after an empty line; the head of the paper is none. */
    static Map<String, WhyPage> of(String printed) {
        Map<String, WhyPage> pages = new LinkedHashMap<>();
        List<String> lines = printed.lines().toList();
        List<String> page = new ArrayList<>();
        for (int i = 0; i < lines.size() - 1; i++) {
            if (isRule(lines.get(i + 1)) && (i > 0 && lines.get(i - 1).isEmpty()) && !isHeading(lines.get(i))) {
                page = new ArrayList<>();
                pages.put(lines.get(i).split(" {2,}", -1)[0], new WhyPage(page));
            }
            page.add(lines.get(i));
        }
        return pages;
    }

    private static boolean isRule(String line) {
        return line.matches("-{20,}");
    }

    private static boolean isHeading(String line) {
        return line.isEmpty() || (line.equals(line.toUpperCase(java.util.Locale.ROOT)) && !line.contains("."));
    }

    /** One of several things by its name, which has to be there. */
    static <T> T in(Map<String, T> named, String name) {
        return Optional.ofNullable(named.get(name)).orElseThrow(() -> new AssertionError("there is no " + name));
    }

    /** What stands at the end of the title. */
    String figure() {
        String[] ends = lines.get(0).split(" {2,}", -1);
        return ends[ends.length - 1];
    }

    List<String> section(String heading) {
        int from = lines.indexOf(heading);
        if (from < 0) {
            return List.of();
        }
        int to = from + 2;
        while (to < lines.size() && !lines.get(to).isEmpty()) {
            to++;
        }
        return lines.subList(from + 2, to);
    }

    /** A line of the computation: what it is called, how it is computed, what is printed beside it. */
    record Step(String name, String formula, String value) {}

    List<Step> steps(String heading) {
        List<Step> steps = new ArrayList<>();
        List<String> open = new ArrayList<>();
        for (String line : section(heading)) {
            if (line.startsWith(" ") && !line.strip().startsWith("= ")) {
                open.set(open.size() - 1, open.get(open.size() - 1) + " " + line.strip());
            } else if (line.contains("= ")) {
                open.add(line);
            }
        }
        for (int i = 0; i + 1 < open.size(); i += 2) {
            String[] sides = open.get(i).split("= ", 2);
            String value = open.get(i + 1).strip().substring(2).split(" ", -1)[0];
            steps.add(new Step(sides[0].strip(), sides[1].strip(), value));
        }
        return steps;
    }

    /** What is put in, by name. */
    Map<String, String> inputs() {
        Map<String, String> inputs = new LinkedHashMap<>();
        for (String line : section("PUT IN")) {
            if (!line.startsWith(" ")) {
                String[] cells = line.split(" {2,}", -1);
                inputs.put(cells[0], cells[1]);
            }
        }
        return inputs;
    }

    /** How a number put in may lie, by its name: least, most, and between them where it is even; a bell where the last is empty. */
    Map<String, double[]> spreads() {
        Map<String, String> rows = new LinkedHashMap<>();
        String open = "";
        for (String line : section("HOW SURE")) {
            if (line.startsWith(" ")) {
                rows.merge(open, " " + line.strip(), String::concat);
            } else {
                open = line.split(" {2,}", -1)[0];
                rows.put(open, line.substring(open.length()).strip());
            }
        }
        Map<String, double[]> spreads = new LinkedHashMap<>();
        rows.forEach((name, row) -> spreads.put(name, spread(row)));
        return spreads;
    }

    private static double[] spread(String row) {
        Matcher ends = Pattern.compile("(-?[0-9.]+) to (-?[0-9.]+)").matcher(row);
        assertThat(ends.find()).as(row).isTrue();
        double low = Double.parseDouble(ends.group(1));
        double high = Double.parseDouble(ends.group(2));
        if (row.contains("in 19 cases of 20")) {
            return new double[] {low, high};
        }
        if (row.contains("evenly")) {
            assertThat(ends.find()).as(row).isTrue();
            return new double[] {low, high, Double.parseDouble(ends.group(1)), Double.parseDouble(ends.group(2))};
        }
        assertThat(row).contains("anywhere between");
        return new double[] {low, high, low, high};
    }

    /** Whether it was drawn, which no formula gives. */
    boolean isDrawn() {
        String formula = steps("FORMULA").get(0).formula();
        return formula.startsWith("below(") || formula.startsWith("chance(");
    }

    /** All that has a name, reckoned from what is put in; of what was drawn all but the figure itself. */
    Map<String, Double> reckoned() {
        Map<String, Double> names = new HashMap<>();
        inputs().forEach((name, text) -> names.put(name, Double.parseDouble(text)));
        List<Step> steps = steps("FORMULA");
        for (int i = steps.size() - 1; i >= (isDrawn() ? 1 : 0); i--) {
            names.put(steps.get(i).name(), PocketCalculator.value(steps.get(i).formula(), names));
        }
        for (Step side : steps("AND SO IT FITS")) {
            names.put(side.name(), PocketCalculator.value(side.formula(), names));
        }
        return names;
    }
}
