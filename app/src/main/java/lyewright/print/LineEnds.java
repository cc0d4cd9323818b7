package lyewright.print;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.Locale;
import java.util.regex.Pattern;

/** Where a line may end: as everywhere, but not between a figure and its unit, nor within what is said of it in a
 * few words, nor within a word that has a hyphen. */
final class LineEnds implements FSTextBreaker {

    private static final Pattern UNIT =
            Pattern.compile("(?:g|kg|mg|oz|lb|ml|l|mm|cm|in|h|min|s|days|weeks|bars)\\b|[%°]");

    private static final Pattern FIGURE = Pattern.compile("[+-]?\\d");

    private final BreakIterator places = BreakIterator.getLineInstance(Locale.UK);
    private String text = "";

    @Override
    public void setText(String newText) {
        text = newText;
        places.setText(newText);
    }

    @Override
    public int next() {
        int place = places.next();
        while (place != BreakIterator.DONE && place < text.length() && isKept(place)) {
            place = places.next();
        }
        return place;
    }

    private boolean isKept(int place) {
        char before = text.charAt(place - 1);
        if (before == '°' || before == '-') {
            return Character.isLetter(text.charAt(place));
        }
        if (before != ' ' || place < 2) {
            return false;
        }
        String line = text.substring(0, place - 1);
        return (Character.isDigit(line.charAt(line.length() - 1)) && follows(UNIT, place))
                || (line.endsWith("off") && text.startsWith("by ", place))
                || (line.endsWith("off by") && follows(FIGURE, place));
    }

    private boolean follows(Pattern pattern, int place) {
        return pattern.matcher(text).region(place, text.length()).lookingAt();
    }
}
