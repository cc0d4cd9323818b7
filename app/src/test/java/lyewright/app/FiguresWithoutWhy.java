package lyewright.app;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The reckoned figures of a page that lead to no why, as the page marks figures: cells of numbers, values of labelled lists, the editor's and
 * the notebook's answers, and the steps of a sheet.
 *
 * <p>What it sees is a number with a unit (in a cell of numbers any number) that stands in one of these elements and in no link or button of
 * class {@code why}. What it cannot see: figures elsewhere, such as in cautions and other sentences, in the drawing of a picture or in the
 * table that tells the same as the picture; numbers without a unit outside of tables; and whether the why is the right one, which
 * {@code WhyPagesTest} looks at.
 */
final class FiguresWithoutWhy {

    private static final Pattern TAG =
            Pattern.compile("<(/?)([a-zA-Z0-9]+)((?:\\s+[^<>\\s=/]+(?:=\"[^\"]*\")?)*)\\s*(/?)>");
    private static final Pattern CLASS = Pattern.compile("\\sclass=\"([^\"]*)\"");

    private static final Pattern WITH_UNIT =
            Pattern.compile("[-+]?[0-9]+(?:\\.[0-9]+)?\\s?(?:kg|mg|g/ml|g|%|ml|litres|l|oz|lb)(?!\\w)");
    private static final Pattern NUMBER = Pattern.compile("[0-9]");

    private static final Set<String> VOID =
            Set.of("meta", "link", "input", "br", "img", "hr", "col", "wbr", "area", "base", "source");

    /** Tables that tell what a drawing shows, and what is put into a formula: its sources stand beside it. */
    private static final Set<String> APART = Set.of("picture", "picture-table", "reason");

    private static final Set<String> ANSWERS =
            Set.of("strip-superfat", "strip-more", "says", "verdict", "takes", "into-mould");

    /** What was put in, not reckoned, or is left of a hundred; and the places of rows. */
    private static final List<Pattern> NOT_RECKONED = List.of(
            Pattern.compile("[0-9.]+ % of it, "),
            Pattern.compile("[0-9.]+ % pure \\((?:as given|assumed)\\)"),
            Pattern.compile("a bar at [0-9.]+ % water"),
            Pattern.compile("to 100 g of water"),
            Pattern.compile("^[0-9.]+ (?:kg|g|oz|lb) takes"),
            Pattern.compile("all else (?:under )?[0-9.]+ %"),
            Pattern.compile("^[0-9]$"));

    private final String html;
    private final Deque<Element> open = new ArrayDeque<>();
    private final List<String> found = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private int whys;
    private int marked;

    private FiguresWithoutWhy(String html) {
        this.html = html.replaceAll("(?s)<(script|style|svg)\\b.*?</\\1>", "");
    }

    private record Element(String tag, Set<String> classes, boolean figure, boolean apart, boolean why) {}

    /**
     * What a page has.
     *
     * @param without texts of marked elements with a figure that leads nowhere
     * @param marked how many marked elements there are
     * @param whys how many figures lead to their why
     */
    record Seen(List<String> without, int marked, int whys) {}

    static Seen in(String html) {
        FiguresWithoutWhy page = new FiguresWithoutWhy(html);
        page.read();
        return new Seen(page.found, page.marked, page.whys);
    }

    private void read() {
        Matcher tag = TAG.matcher(html);
        int from = 0;
        while (tag.find()) {
            words(html.substring(from, tag.start()));
            from = tag.end();
            if (tag.group(1).isEmpty()) {
                if (!VOID.contains(tag.group(2)) && tag.group(4).isEmpty()) {
                    begin(tag.group(2), classes(tag.group(3)));
                }
            } else {
                end(tag.group(2));
            }
        }
    }

    private static Set<String> classes(String attributes) {
        Matcher named = CLASS.matcher(attributes);
        return named.find() ? Set.copyOf(Arrays.asList(named.group(1).strip().split("\\s+", -1))) : Set.of();
    }

    private void begin(String tag, Set<String> classes) {
        Element around = open.peek();
        boolean apart = (around != null && around.apart) || classes.stream().anyMatch(APART::contains);
        boolean figure = !apart && open.stream().noneMatch(Element::figure) && isFigure(tag, classes);
        boolean why = classes.contains("why") && (tag.equals("a") || tag.equals("button"));
        if (figure) {
            marked++;
            text.setLength(0);
        }
        whys += why ? 1 : 0;
        open.push(new Element(tag, classes, figure, apart, why || (around != null && around.why)));
    }

    private boolean isFigure(String tag, Set<String> classes) {
        return (tag.equals("td") && classes.contains("number"))
                || (tag.equals("dd") && (within("facts") || within("masses")))
                || (classes.contains("value") && within("figure"))
                || (tag.equals("p") && within("steps"))
                || classes.stream().anyMatch(ANSWERS::contains);
    }

    private boolean within(String name) {
        return open.stream().anyMatch(element -> element.classes.contains(name));
    }

    private void words(String words) {
        Element in = open.peek();
        if (in != null && open.stream().anyMatch(Element::figure)) {
            text.append(in.why ? "\u2026" : words);
        }
    }

    private void end(String tag) {
        while (!open.isEmpty() && !open.peek().tag.equals(tag)) {
            open.pop();
        }
        if (open.isEmpty()) {
            return;
        }
        Element ended = open.pop();
        if (ended.figure) {
            look(text.toString().replaceAll("\\s+", " ").strip(), ended.tag.equals("td"));
        }
    }

    private void look(String said, boolean cell) {
        String reckoned = said;
        for (Pattern put : NOT_RECKONED) {
            reckoned = put.matcher(reckoned).replaceAll("");
        }
        if ((cell ? NUMBER : WITH_UNIT).matcher(reckoned).find()) {
            found.add(said);
        }
    }
}
