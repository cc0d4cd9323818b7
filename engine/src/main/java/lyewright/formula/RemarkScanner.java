package lyewright.formula;

import java.util.ArrayList;
import java.util.List;
import lyewright.formula.Places.Place;
import lyewright.formula.YamlTree.Remark;

/**
 * Finds the comments between the values of a YAML text: outside a value, a number sign can begin nothing else. One pass,
 * moved forward by each value the parser meets.
 */
final class RemarkScanner {

    private final String text;
    private final List<Remark> found = new ArrayList<>();
    private int at;
    private int codePoints;
    private int line = 1;
    private int column = 1;
    private boolean lineIsBlank = true;

    RemarkScanner(String text) {
        this.text = text;
    }

    /**
     * Passes a value.
     *
     * @param from its first character, in code points from the text's beginning
     * @param to after its last character
     * @param block whether it is a block of lines, whose first line may end in a comment
     */
    void skip(int from, int to, boolean block) {
        scanTo(from);
        if (block) {
            skipBlockHeader();
        }
        while (codePoints < to && at < text.length()) {
            step();
        }
    }

    /** All comments, once the last value has been passed. */
    List<Remark> finish() {
        scanTo(Integer.MAX_VALUE);
        return List.copyOf(found);
    }

    private void scanTo(int end) {
        while (codePoints < end && at < text.length()) {
            if (text.charAt(at) == '#') {
                remark();
            } else {
                step();
            }
        }
    }

    private void skipBlockHeader() {
        while (at < text.length() && !atLineEnd()) {
            if (text.charAt(at) == '#') {
                remark();
            } else {
                step();
            }
        }
    }

    private void remark() {
        Place place = new Place(line, column);
        boolean ownLine = lineIsBlank;
        int from = at + 1;
        while (at < text.length() && !atLineEnd()) {
            step();
        }
        found.add(new Remark(text.substring(from, at).stripTrailing(), place, ownLine));
    }

    private boolean atLineEnd() {
        return text.charAt(at) == '\n' || text.charAt(at) == '\r';
    }

    private void step() {
        int c = text.codePointAt(at);
        at += Character.charCount(c);
        codePoints++;
        boolean firstOfTwo = c == '\r' && at < text.length() && text.charAt(at) == '\n';
        if ((c == '\n' || c == '\r') && !firstOfTwo) {
            line++;
            column = 1;
            lineIsBlank = true;
        } else {
            column++;
            lineIsBlank &= c == ' ' || c == '\t' || c == '\r';
        }
    }
}
