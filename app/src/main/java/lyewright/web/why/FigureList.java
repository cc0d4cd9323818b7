package lyewright.web.why;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lyewright.web.make.MakeChoice;
import lyewright.why.Reason;

/**
 * Figures that can be asked about.
 *
 * @param choice the sheet they are of
 * @param query what was looked for; empty for all
 * @param part the part of the sheet that is listed whole; empty for the overview
 * @param groups figures that belong together
 * @param parts parts of the sheet whose figures stand in rows, and how many each has
 * @param more how many there are beyond those shown
 */
public record FigureList(MakeChoice choice, String query, String part, List<Group> groups, List<Part> parts, int more) {

    private static final int MOST = 100;

    /** Words for the parts of a sheet, as its JSON calls them. */
    private static final Map<String, String> HEADINGS = Map.ofEntries(
            Map.entry("recipe", "The recipe"),
            Map.entry("totals", "Masses in all"),
            Map.entry("alkali", "Alkali"),
            Map.entry("superfat", "Superfat"),
            Map.entry("bars", "Bars"),
            Map.entry("lye", "Lye"),
            Map.entry("oilPhase", "Oils"),
            Map.entry("keeping", "Keeping"),
            Map.entry("vessels", "What is weighed"),
            Map.entry("superfat.contributions", "What the superfat's doubt hangs on"),
            Map.entry("portions", "Portions"),
            Map.entry("fade", "The fading pour"),
            Map.entry("composition", "What batter and bar consist of"),
            Map.entry("worstBar", "The bar with most of each"),
            Map.entry("fattyAcids", "Fatty acids"),
            Map.entry("sums", "Sums"),
            Map.entry("sums.poured", "What is poured"),
            Map.entry("sums.oils", "Shares of the oils"),
            Map.entry("sums.additions", "Additions in all"),
            Map.entry("sums.portions", "Portions as they are filled"),
            Map.entry("compared", "Before rounding, as recipes are compared"),
            Map.entry("compared.oils", "Each oil, as recipes are compared"),
            Map.entry("compared.additions", "Each addition, as recipes are compared"));

    /** Copies its lists. */
    public FigureList {
        groups = List.copyOf(groups);
        parts = List.copyOf(parts);
    }

    /**
     * Figures under a heading.
     *
     * @param heading over them
     * @param figures in the order of the sheet
     */
    public record Group(String heading, List<Line> figures) {

        /** Copies its list. */
        public Group {
            figures = List.copyOf(figures);
        }
    }

    /**
     * One figure.
     *
     * @param title what it is
     * @param value with its unit
     * @param address of its reason
     */
    public record Line(String title, String value, String address) {}

    /**
     * A part of the sheet with rows.
     *
     * @param heading what it is
     * @param name as in the address
     * @param count of its figures
     */
    public record Part(String heading, String name, int count) {}

    static FigureList of(List<Reason> reasons, MakeChoice choice, String query, String part) {
        List<Reason> shown = reasons.stream()
                .filter(reason -> query.isBlank() ? inPart(reason, part) : found(reason, query))
                .toList();
        Map<String, List<Line>> groups = new LinkedHashMap<>();
        shown.stream()
                .limit(part.isEmpty() ? MOST : shown.size())
                .forEach(reason -> groups.computeIfAbsent(heading(reason, part), key -> new ArrayList<>())
                        .add(line(reason, choice)));
        return new FigureList(
                choice,
                query,
                part,
                groups.entrySet().stream()
                        .map(group -> new Group(group.getKey(), group.getValue()))
                        .toList(),
                query.isBlank() && part.isEmpty() ? parts(reasons) : List.of(),
                part.isEmpty() ? Math.max(0, shown.size() - MOST) : 0);
    }

    private static boolean inPart(Reason reason, String part) {
        return part.isEmpty()
                ? !reason.path().contains("[")
                : reason.path().startsWith(part + "[") || reason.path().startsWith(part + ".");
    }

    private static boolean found(Reason reason, String query) {
        String text = (reason.title() + " " + reason.path()).toLowerCase(Locale.ROOT);
        for (String word : query.toLowerCase(Locale.ROOT).strip().split("\\s+", -1)) {
            if (!text.contains(word)) {
                return false;
            }
        }
        return true;
    }

    private static String heading(Reason reason, String part) {
        String head = part.isEmpty() ? first(reason.path()) : part;
        return HEADINGS.getOrDefault(head, "Batter and oils");
    }

    private static String first(String path) {
        int end = 0;
        while (end < path.length() && path.charAt(end) != '.' && path.charAt(end) != '[') {
            end++;
        }
        return path.substring(0, end);
    }

    private static Line line(Reason reason, MakeChoice choice) {
        String value = reason.value().isEmpty()
                ? "none"
                : WhyUnits.with(new WhyDigits(reason).figure(reason.value().get(), reason.unit()), reason.unit());
        return new Line(reason.title(), value, choice.why(reason.path()));
    }

    private static List<Part> parts(List<Reason> reasons) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Reason reason : reasons) {
            int bracket = reason.path().indexOf('[');
            if (bracket > 0) {
                counts.merge(reason.path().substring(0, bracket), 1, Integer::sum);
            }
        }
        return counts.entrySet().stream()
                .map(part ->
                        new Part(HEADINGS.getOrDefault(part.getKey(), part.getKey()), part.getKey(), part.getValue()))
                .toList();
    }

    /** What a part is called. */
    public String heading() {
        return part.isEmpty() ? "" : HEADINGS.getOrDefault(part, part);
    }

    /** Whether nothing was found. */
    public boolean isEmpty() {
        return groups.isEmpty();
    }
}
