package lyewright.web.make;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.web.Piece;

/**
 * Finds the sheet's figures in sentences about it. A number is a link only if it is what a figure that belongs there rounds to, and
 * the figure's unit stands behind it: a link that led to another figure would be worse than none.
 */
public final class FigureLinks {

    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.])[+-]?[0-9]+(?:\\.[0-9]+)?(?![\\w.]*[0-9])");

    private static final String KILOGRAMS = " kg";
    private static final double GRAMS_IN_KILOGRAM = 1000;

    private final UnaryOperator<String> why;

    /**
     * For a sheet.
     *
     * @param why where a figure of it says why, by the figure's path
     */
    public FigureLinks(UnaryOperator<String> why) {
        this.why = why;
    }

    /** A figure by itself. */
    public Piece figure(String text, String path) {
        return new Piece(text, why.apply(path));
    }

    /** A cell that holds one figure, perhaps in two units, and nothing else; plain where it shows another number. */
    List<Piece> cell(String text, Known known) {
        boolean shown = NUMBER.matcher(text)
                .results()
                .anyMatch(number -> shows(number.group(), known.value() / scale(text.substring(number.end()), known)));
        return List.of(shown ? figure(text, known.path()) : Piece.plain(text));
    }

    /**
     * A sentence with links.
     *
     * @param text the sentence
     * @param known the figures that may stand in it, each once
     */
    public List<Piece> sentence(String text, List<Known> known) {
        List<Known> left = new ArrayList<>(known);
        List<Piece> pieces = new ArrayList<>();
        Matcher number = NUMBER.matcher(text);
        int from = 0;
        while (number.find()) {
            Optional<Known> shown = left.stream()
                    .filter(figure -> isShown(number.group(), text.substring(number.end()), figure))
                    .findFirst();
            if (shown.isPresent()) {
                left.remove(shown.get());
                // of a range the unit stands behind the second number only
                String unit = unit(text.substring(number.end()), shown.get());
                int end = !unit.isEmpty() && text.startsWith(" " + unit, number.end())
                        ? number.end() + 1 + unit.length()
                        : number.end();
                plain(pieces, text.substring(from, number.start()));
                pieces.add(
                        figure(text.substring(number.start(), end), shown.get().path()));
                from = end;
            }
        }
        plain(pieces, text.substring(from));
        return pieces;
    }

    private static void plain(List<Piece> pieces, String text) {
        if (!text.isEmpty()) {
            pieces.add(Piece.plain(text));
        }
    }

    private static boolean isShown(String number, String rest, Known figure) {
        return shows(number, figure.value() / scale(rest, figure)) && unitFollows(rest, unit(rest, figure));
    }

    /** Much of anything stands in kilograms. */
    private static String unit(String rest, Known figure) {
        return figure.unit().equals("g") && rest.startsWith(KILOGRAMS) ? KILOGRAMS.strip() : figure.unit();
    }

    private static double scale(String rest, Known figure) {
        return figure.unit().equals("g") && rest.startsWith(KILOGRAMS) ? GRAMS_IN_KILOGRAM : 1;
    }

    private static boolean shows(String number, double value) {
        BigDecimal shown = new BigDecimal(number);
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(shown.scale(), RoundingMode.HALF_UP);
        return rounded.compareTo(shown) == 0 || rounded.abs().compareTo(shown) == 0;
    }

    private static boolean unitFollows(String rest, String unit) {
        return unit.isEmpty() || rest.startsWith(" " + unit) || rest.matches("(?s) and [0-9.]+ " + unit + ".*");
    }
}
