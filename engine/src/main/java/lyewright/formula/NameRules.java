package lyewright.formula;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lyewright.measure.Problem;

/**
 * What a name must be before it is kept, whatever it names: one line that can be seen, and that leaves the writing around it
 * alone. Stricter than the reading of a file, so that what was kept before these rules is read all the same. Any script is
 * welcome, and so are pictures and the joiners that they and some scripts are written with. Stateless.
 */
public final class NameRules {

    /** The longest name, in UTF-16 units. */
    public static final int LONGEST = Characters.LONGEST_NAME;

    private NameRules() {}

    /**
     * Judges one name.
     *
     * @param path where it stands
     * @param whose what is named, as in "the mould's name"
     * @param name the name
     * @return what is wrong with it, if anything
     */
    public static Optional<Problem> check(String path, String whose, String name) {
        if (name.isBlank()) {
            return Optional.of(new Problem(path, whose + " is empty", "write a name"));
        }
        String trouble = Characters.troubleWithName(name);
        if (trouble != null) {
            return Optional.of(new Problem(path, whose + " " + trouble, remedy(name)));
        }
        if (name.codePoints().noneMatch(NameRules::isSeen)) {
            return Optional.of(new Problem(
                    path, whose + " has nothing in it that can be seen", "write a name of letters or figures"));
        }
        return turnsTheWriting(name)
                ? Optional.of(new Problem(
                        path,
                        whose + " has a hidden sign in it that turns the writing round",
                        "delete the name and type it anew"))
                : Optional.empty();
    }

    private static String remedy(String name) {
        if (name.length() > LONGEST) {
            return "write a shorter one";
        }
        return name.equals(name.strip()) ? "write a name of one line" : "take it out";
    }

    /**
     * Judges every name in a formula. A name that no file can hold is for {@link FormulaRules} to refuse.
     *
     * @param formula the formula
     * @return what is wrong, by the paths of its file, in their order
     */
    public static List<Problem> check(Formula formula) {
        List<Problem> problems = new ArrayList<>();
        note(problems, "recipe", "the recipe's name", formula.recipe());
        formula.oils().forEach(oil -> note(problems, "oils." + oil.key(), "the name of an oil", oil.key()));
        for (int i = 0; i < formula.additions().size(); i++) {
            note(
                    problems,
                    "additions." + i + ".of",
                    "the name of an addition",
                    formula.additions().get(i).of());
        }
        formula.portions()
                .forEach(portion ->
                        note(problems, "portions." + portion.name(), "the name of a portion", portion.name()));
        formula.materials()
                .forEach(own -> note(problems, "materials." + own.key(), "the name of a material", own.key()));
        return problems;
    }

    private static void note(List<Problem> problems, String path, String whose, String name) {
        if (Characters.troubleWithName(name) == null) {
            check(path, whose, name).ifPresent(problems::add);
        }
    }

    /**
     * Whether people take two names for the same: without what cannot be seen, without case, and however accents are coded.
     *
     * @param one a name
     * @param other another
     * @return whether they would be mistaken for each other in a list
     */
    public static boolean areSame(String one, String other) {
        return one.equals(other) || asRead(one).equals(asRead(other));
    }

    /**
     * A name as people read it. Two names are the same exactly where this is the same, so that one of many can be looked up by it.
     *
     * @param name a name
     * @return it without what cannot be seen, without case, its accents coded in one way
     */
    public static String asRead(String name) {
        StringBuilder read = new StringBuilder(name.length());
        Normalizer.normalize(name, Normalizer.Form.NFC)
                .codePoints()
                .map(c -> isSpace(c) ? ' ' : c)
                .filter(c -> c == ' ' || !isHidden(c))
                .forEach(read::appendCodePoint);
        String tidy = Wording.tidy(read.toString());
        return tidy.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
    }

    /** A letter, figure or sign that leaves ink; a mark alone has nothing to stand on. */
    private static boolean isSeen(int c) {
        return !isSpace(c)
                && !isHidden(c)
                && switch (Character.getType(c)) {
                    case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.COMBINING_SPACING_MARK ->
                        false;
                    default -> true;
                };
    }

    /** Spaces of any kind, with the two characters that are letters or signs by name and leave no ink. */
    private static boolean isSpace(int c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c) || c == 0x2800 || c == 0x3164;
    }

    /**
     * What Unicode says is not shown: format characters, fillers that count as letters or marks, and places it keeps for more of
     * them. A character that is newer than this Java is taken to be seen.
     */
    private static boolean isHidden(int c) {
        return Character.getType(c) == Character.FORMAT
                || c == 0x034f
                || c == 0x115f
                || c == 0x1160
                || c == 0x17b4
                || c == 0x17b5
                || c == 0xffa0
                || (c >= 0x180b && c <= 0x180f)
                || (c >= 0xfe00 && c <= 0xfe0f)
                || (c >= 0xfff0 && c <= 0xfff8)
                || c == 0x2065
                || (c >= 0xe0000 && c <= 0xe0fff);
    }

    /** An order to write the other way round, or a turn that the name begins and does not end, or ends and did not begin. */
    private static boolean turnsTheWriting(String name) {
        StringBuilder open = new StringBuilder();
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (c == 0x202d || c == 0x202e) {
                return true;
            }
            boolean ends = c == 0x202c || c == 0x2069;
            if (c == 0x202a || c == 0x202b || (c >= 0x2066 && c <= 0x2068)) {
                open.append(c >= 0x2066 ? (char) 0x2069 : (char) 0x202c);
            } else if (ends && (open.isEmpty() || open.charAt(open.length() - 1) != c)) {
                return true;
            } else if (ends) {
                open.setLength(open.length() - 1);
            }
        }
        return !open.isEmpty();
    }
}
