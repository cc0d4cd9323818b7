package lyewright.web.make;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What to make, as it was typed and as it stands in the address: a bookmark of it gives the same sheet again.
 *
 * @param texts by name, none blank
 */
public record MakeChoice(Map<String, String> texts) {

    static final String RECIPE = "recipe";
    static final String VERSION = "version";
    static final String MOULD = "mould";
    static final String INSIDE = "inside";
    static final String MUCH = "much";
    static final String AMOUNT = "amount";
    static final String HOLD_BACK = "hold-back";
    static final String CUT = "cut";
    static final String BLADE = "blade";
    static final String ENDS = "ends";
    static final String TRIM = "trim";
    /** Whose figures are reckoned with, beside the recipe's own: {@link #CERTIFICATES} of the lots that are taken. */
    static final String LOTS = "lots";

    static final String CERTIFICATES = "certificates";

    static final String OUT = "out";
    static final String IN = "in";

    /** Stands in the address of a figure with the other oil. */
    public static final String SWAPPED = "swapped";

    /** In front of a vessel's name, for the jug that was chosen for it. */
    static final String JUG = "jug.";

    /** In front of what recipes call a material: the lot that is taken before its others. */
    static final String FIRST_LOT = "first.";

    /** In front of a lot's id: it is left out. */
    static final String LEAVE_LOT = "leave.";

    /** The mould that is typed instead of taken from the register. */
    static final String TYPED = "typed";

    private static final List<String> NAMES =
            List.of(RECIPE, VERSION, MOULD, INSIDE, MUCH, AMOUNT, HOLD_BACK, CUT, BLADE, ENDS, TRIM, LOTS, OUT, IN);

    private static final int LONGEST = 200;
    /** Of one sort in an address. */
    private static final int MOST = 40;

    /** Ways of saying how much. */
    enum Much {
        FULL("full", "the mould full"),
        TOTAL("total", "so much in the mould"),
        OILS("oils", "so much oil"),
        BARS("bars", "so many bars, as cut"),
        CURED("cured", "so many bars, as cured"),
        WRITTEN("written", "the recipe as it stands");

        private final String word;
        private final String label;

        Much(String word, String label) {
            this.word = word;
            this.label = label;
        }

        /** As in the address. */
        public String word() {
            return word;
        }

        /** As it is chosen. */
        public String label() {
            return label;
        }

        /** Whether an amount has to be typed. */
        boolean needsAmount() {
            return this != FULL && this != WRITTEN;
        }
    }

    /** Keeps the order of names, so that one choice has one address. */
    public MakeChoice {
        texts = ordered(texts);
    }

    private static Map<String, String> ordered(Map<String, String> given) {
        Map<String, String> ordered = new LinkedHashMap<>();
        NAMES.forEach(name -> keep(ordered, name, given.get(name)));
        TreeMap<String, String> sorted = new TreeMap<>(given);
        List.of(JUG, FIRST_LOT, LEAVE_LOT)
                .forEach(sort -> sorted.entrySet().stream()
                        .filter(entry -> entry.getKey().startsWith(sort))
                        .limit(MOST)
                        .forEach(entry -> keep(ordered, entry.getKey(), entry.getValue())));
        return Collections.unmodifiableMap(ordered);
    }

    private static void keep(Map<String, String> kept, String name, @Nullable String text) {
        if (text != null && (!text.isBlank() || name.equals(HOLD_BACK))) {
            kept.put(name, text.length() > LONGEST ? text.substring(0, LONGEST) : text);
        }
    }

    /**
     * Of what a browser sent.
     *
     * @param sent the texts of each name, the first of which counts
     * @return the choice
     */
    public static MakeChoice of(Map<String, List<String>> sent) {
        Map<String, String> texts = new LinkedHashMap<>();
        sent.forEach((name, values) -> {
            if (!values.isEmpty()) {
                texts.put(name, values.get(0));
            }
        });
        return new MakeChoice(texts);
    }

    /** A text; empty where nothing was typed. */
    public String text(String name) {
        return texts.getOrDefault(name, "");
    }

    Optional<String> typed(String name) {
        return Optional.of(text(name)).filter(text -> !text.isBlank());
    }

    boolean has(String name) {
        return texts.containsKey(name);
    }

    Optional<Much> much() {
        return Arrays.stream(Much.values())
                .filter(way -> way.word.equals(text(MUCH)))
                .findFirst();
    }

    /** Whether the certificates of the lots that are taken are to be reckoned with. */
    boolean asksForCertificates() {
        return text(LOTS).equals(CERTIFICATES);
    }

    boolean mouldIsTyped() {
        return text(MOULD).equals(TYPED);
    }

    /** Whether it is said what to make of the recipe; else it is the recipe alone. */
    public boolean asksForASheet() {
        return has(MUCH) || has(MOULD);
    }

    /** Jugs by the vessel of the sheet that they are for. */
    Map<String, String> jugs() {
        return behind(JUG);
    }

    /** Lots that are taken before others, by what recipes call their material. */
    Map<String, String> firstLots() {
        return behind(FIRST_LOT);
    }

    /** Lots that are left out. */
    Set<String> leftOut() {
        return behind(LEAVE_LOT).keySet();
    }

    /** Whether lots are picked by hand. */
    public boolean picksLots() {
        return texts.keySet().stream().anyMatch(MakeChoice::picks);
    }

    private static boolean picks(String name) {
        return name.startsWith(FIRST_LOT) || name.startsWith(LEAVE_LOT);
    }

    private Map<String, String> behind(String sort) {
        Map<String, String> behind = new LinkedHashMap<>();
        texts.forEach((name, text) -> {
            if (name.startsWith(sort)) {
                behind.put(name.substring(sort.length()), text);
            }
        });
        return behind;
    }

    /** What is chosen of lots, which the form of the mould carries along. */
    public Map<String, String> ofLots() {
        Map<String, String> ofLots = new LinkedHashMap<>(texts);
        ofLots.keySet().removeIf(name -> !name.equals(LOTS) && !picks(name));
        return ofLots;
    }

    /** The same without another oil in the place of one. */
    MakeChoice withoutSwap() {
        return without(OUT, IN);
    }

    /** The same with the lots as they come: first expired, first out. */
    MakeChoice withoutPicks() {
        Map<String, String> changed = new LinkedHashMap<>(texts);
        changed.keySet().removeIf(MakeChoice::picks);
        return new MakeChoice(changed);
    }

    /** The same with another text. */
    public MakeChoice with(String name, String text) {
        Map<String, String> changed = new LinkedHashMap<>(texts);
        changed.put(name, text);
        return new MakeChoice(changed);
    }

    /** The same, in which a mould that is chosen after none was is meant to be full. */
    MakeChoice withItsFirstMould() {
        boolean chosen =
                !text(MOULD).isEmpty() && much().filter(Much.WRITTEN::equals).isPresent();
        return chosen ? with(MUCH, Much.FULL.word) : this;
    }

    /** The same without some texts. */
    MakeChoice without(String... names) {
        Map<String, String> changed = new LinkedHashMap<>(texts);
        List.of(names).forEach(changed::remove);
        return new MakeChoice(changed);
    }

    /** As it stands in an address, behind the question mark. */
    public String query() {
        StringBuilder query = new StringBuilder();
        texts.forEach((name, text) -> query.append(query.isEmpty() ? "" : "&")
                .append(encoded(name))
                .append('=')
                .append(encoded(text)));
        return query.toString();
    }

    /** Where a figure of this sheet is explained. */
    public String why(String path) {
        return "/why?" + without(OUT, IN).query() + "&figure=" + encoded(path);
    }

    /** Where a figure of the sheet with the other oil is explained. */
    public String whyOfSwap(String path) {
        return "/why?" + query() + "&" + SWAPPED + "=yes&figure=" + encoded(path);
    }

    /** Where it is explained how a figure changes with the other oil; the figure is a row of the comparison. */
    String whyOfChange(String row) {
        return "/why/change?" + query() + "&figure=" + encoded(row);
    }

    /** A text inside an address. */
    public static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
