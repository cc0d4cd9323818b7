package lyewright.formula;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.Places.Place;
import lyewright.formula.YamlTree.Entries;
import lyewright.formula.YamlTree.Items;
import lyewright.material.Tables;
import lyewright.measure.Problem;

/**
 * The file of a formula: YAML 1.2 in UTF-8, read with nothing clever. Every value is taken as the text that was typed and
 * read by the rules of this format; aliases, anchors, types, repeated names and unknown names are refused, as are files over 1
 * MB, over 20 levels or over 20 000 entries.
 *
 * <p>Reading what was written gives an equal formula. Comments are kept: those above an entry, at the end of its line, at the
 * top of the file apart from its first entry by an empty line, and at the end of the file. A comment inside braces, or on a
 * line that the normal form does not have, moves to the nearest entry around it; of two comments at the end of one entry the
 * second moves above it. Empty lines, the order of names, and quotes are not kept.
 */
public final class FormulaFile {

    /** The largest file that is read: 1 MB; in characters where it is given as text. */
    public static final int LARGEST = 1 << 20;

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private FormulaFile() {}

    /**
     * What reading gave.
     *
     * @param formula the formula, present exactly when there are no problems
     * @param problems all that is wrong; after text that is not YAML only that
     * @param places where each problem's path stands in the text
     */
    public record Read(Optional<Formula> formula, List<Problem> problems, Places places) {
        /** Copies its list. */
        public Read {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Reads a file's bytes. Never throws.
     *
     * @param utf8 the bytes
     * @return the formula, or what is wrong with it
     */
    public static Read read(byte[] utf8) {
        if (utf8.length > LARGEST) {
            return refused(tooLarge());
        }
        try {
            return readTree(decode(utf8));
        } catch (Unreadable e) {
            return refused(e);
        }
    }

    /** The text of a file; throws where it is not UTF-8. */
    static String decode(byte[] utf8) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer text = CharBuffer.allocate(utf8.length);
        CoderResult result = decoder.decode(ByteBuffer.wrap(utf8), text, true);
        text.flip();
        if (result.isError()) {
            throw new Unreadable(
                    placeAfter(text),
                    "the file is not UTF-8 text",
                    "save it as UTF-8, which most editors offer when saving");
        }
        return text.toString();
    }

    /**
     * Reads a file's text. Never throws.
     *
     * @param text the text
     * @return the formula, or what is wrong with it
     */
    public static Read read(String text) {
        try {
            return readTree(text);
        } catch (Unreadable e) {
            return refused(e);
        }
    }

    /**
     * Writes the normal form: the names in one order, amounts as typed, quotes only where YAML needs them.
     *
     * @param formula the formula
     * @return text that reads back as an equal formula, if the formula keeps the {@link FormulaRules}
     */
    public static String write(Formula formula) {
        return FormulaWriter.write(formula);
    }

    /**
     * The same formula with other remarks, each moved to where writing puts it.
     *
     * @param formula the formula
     * @param comments remarks by the path they stand at
     * @return what reading its file would give
     */
    public static Formula withComments(Formula formula, Comments comments) {
        return settled(formula.withComments(comments));
    }

    private static Read readTree(String given) {
        if (given.length() > LARGEST) {
            throw tooLarge();
        }
        String text = withoutMark(given);
        refuseControlCharacters(text);
        YamlTree tree = YamlParser.parse(text);
        if (!(tree.root() instanceof Entries root)) {
            throw notAFormula(tree);
        }
        TreeWalk walk = new TreeWalk(root);
        Findings findings = new Findings(walk.places());
        Formula raw = new FormulaReader(root, findings).read(RemarkReader.read(tree.remarks(), walk.spots()));
        findings.addConsequences(FormulaRules.check(raw, Tables.bundled()));
        List<Problem> problems = findings.problems();
        Optional<Formula> formula = problems.isEmpty() ? Optional.of(settled(raw)) : Optional.empty();
        return new Read(formula, problems, findings.asPlaces());
    }

    /** The text without the mark that some editors put before it. */
    static String withoutMark(String text) {
        return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    }

    /** The same formula, its remarks where writing it puts them. */
    static Formula settled(Formula raw) {
        return raw.withComments(FormulaWriter.settle(raw));
    }

    private static Unreadable notAFormula(YamlTree tree) {
        String remedy = "begin with recipe: and its name";
        if (tree.root() instanceof Items list) {
            return new Unreadable(list.start(), "the file is a list, not a formula", remedy);
        }
        if (tree.root() instanceof YamlTree.Text word && !word.text().isBlank()) {
            return new Unreadable(
                    word.start(),
                    Wording.quote(word.text()) + " is not a formula: it has no names with values",
                    remedy);
        }
        String what = tree.remarks().isEmpty() ? "the file is empty" : "the file has nothing in it but comments";
        return new Unreadable(Place.BEGINNING, what, remedy);
    }

    static void refuseControlCharacters(String text) {
        int at = Characters.firstForbidden(text, Characters.Lines.ANY);
        if (at >= 0) {
            int c = text.codePointAt(at);
            throw new Unreadable(
                    placeAfter(text.subSequence(0, at)),
                    "there is a control character (" + String.format(Locale.ROOT, "U+%04X", c) + ") in the file",
                    c == 0 ? "save the file as UTF-8 text" : "take it out");
        }
    }

    private static Place placeAfter(CharSequence text) {
        int line = 1;
        int lineStart = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean paired = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
            if ((c == '\n' || c == '\r') && !paired) {
                line++;
                lineStart = i + 1;
            }
        }
        return new Place(line, 1 + Character.codePointCount(text, lineStart, text.length()));
    }

    private static Unreadable tooLarge() {
        return new Unreadable(
                Place.BEGINNING,
                "the file is larger than 1 MB",
                "keep one formula in a file, and its papers elsewhere");
    }

    private static Read refused(Unreadable e) {
        return new Read(Optional.empty(), List.of(e.problem()), new Places(e.place(), Map.of()));
    }
}
