package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.formula.Places.Place;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.web.Shop;
import lyewright.words.Sentences;

/**
 * A formula file on its way in: read, looked up, and made up on paper, so that nothing is kept that cannot be made.
 *
 * @param formula the formula, where nothing is wrong
 * @param troubles all that is wrong, each with its line
 */
record ImportText(Optional<Formula> formula, List<ImportPage.Trouble> troubles) {

    private static final int LONGEST_LINE = 160;
    private static final int LONGEST_MARK = 40;

    /** Copies its list. */
    ImportText {
        troubles = List.copyOf(troubles);
    }

    static ImportText read(byte[] bytes, String text, Shop shop) {
        return new Lines(text).judge(FormulaFile.read(bytes), shop);
    }

    static ImportText read(String text, Shop shop) {
        return new Lines(text).judge(FormulaFile.read(text), shop);
    }

    /** The text by lines, as the reader of the file counts them. */
    private record Lines(List<String> lines) {

        Lines(String text) {
            this(List.of(withoutMark(text).split("\r\n|\r|\n", -1)));
        }

        private static String withoutMark(String text) {
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        }

        ImportText judge(FormulaFile.Read read, Shop shop) {
            List<Problem> problems = new ArrayList<>(read.problems());
            read.formula().ifPresent(formula -> {
                Outcome<MakingSheet> sheet = RecipeSheet.of(formula, shop);
                problems.addAll(sheet.problems());
            });
            List<ImportPage.Trouble> troubles = problems.stream()
                    .map(problem -> trouble(problem, read.places().of(problem.path())))
                    .sorted(Comparator.comparingInt(ImportPage.Trouble::line)
                            .thenComparingInt(ImportPage.Trouble::column))
                    .toList();
            return new ImportText(troubles.isEmpty() ? read.formula() : Optional.empty(), troubles);
        }

        private ImportPage.Trouble trouble(Problem problem, Place place) {
            String line = place.line() <= lines.size() ? lines.get(place.line() - 1) : "";
            int at = Math.min(line.length(), offset(line, place.column() - 1));
            int from = Math.max(0, at - LONGEST_LINE / 2);
            int to = Math.min(line.length(), at + LONGEST_LINE);
            int end = at;
            while (end < Math.min(to, at + LONGEST_MARK) && !Character.isWhitespace(line.charAt(end))) {
                end++;
            }
            return new ImportPage.Trouble(
                    place.line(),
                    place.column(),
                    (from > 0 ? "…" : "") + whole(line.substring(from, at)),
                    whole(line.substring(at, end)),
                    whole(line.substring(end, to)) + (to < line.length() ? "…" : ""),
                    Sentences.whole(problem));
        }

        private static int offset(String line, int codePoints) {
            return codePoints >= line.codePointCount(0, line.length())
                    ? line.length()
                    : line.offsetByCodePoints(0, codePoints);
        }

        /** Without half a character at either end, and without what only a machine would see. */
        private static String whole(String part) {
            StringBuilder out = new StringBuilder();
            part.codePoints().forEach(c -> {
                boolean half = c >= 0xD800 && c <= 0xDFFF;
                out.appendCodePoint(half || (Character.isISOControl(c) && c != '\t') ? 0xFFFD : c);
            });
            return out.toString();
        }
    }
}
