package lyewright.records.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.formula.OwnMaterial.BlendPart;
import lyewright.formula.WrittenFigure;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.measure.Share;

/** Reads figures of certificates, {@code 189.5}, {@code 189.5 ± 1.0} or {@code 184 to 196}, with the file's decimal sign. */
final class FigureCell {

    private static final Pattern NUMBER = Pattern.compile("[0-9.,]*[0-9]");
    private static final Pattern PLUS_MINUS = Pattern.compile("^(?:±|\\+/?[-\u2212])\\s*");
    private static final String MG_KOH = "mg KOH/g";

    private FigureCell() {}

    /**
     * A figure.
     *
     * @param unit the one that may stand behind it
     */
    static Outcome<WrittenFigure> read(String text, DecimalSign decimal, String unit) {
        return plain(text, decimal)
                .then(WrittenFigure::parse)
                .then(read -> read.unit().isEmpty() || read.unit().equals(unit)
                        ? Outcome.ok(read.figure())
                        : Outcome.refused(
                                "'" + CellReader.shown(read.unit()) + "' is not the unit used here",
                                "write it in " + unit));
    }

    /** The half width that stands in a column of its own. */
    static Outcome<WrittenFigure> uncertainty(String text, DecimalSign decimal, String unit) {
        return read(PLUS_MINUS.matcher(text).replaceFirst(""), decimal, unit)
                .then(read -> read.form() == WrittenFigure.Form.EXACT
                        ? Outcome.ok(read)
                        : Outcome.refused(
                                "'" + CellReader.shown(text) + "' is no half width", "write one number, as in 1.0"));
    }

    /** The same with points, so that it reads as figures do everywhere else. */
    private static Outcome<String> plain(String text, DecimalSign decimal) {
        List<Problem> problems = new ArrayList<>();
        String plain = NUMBER.matcher(text).replaceAll(found -> number(found, decimal, problems));
        return problems.isEmpty() ? Outcome.ok(plain) : new Outcome.Refused<>(problems);
    }

    private static String number(MatchResult found, DecimalSign decimal, List<Problem> problems) {
        Outcome<String> read = decimal.read(found.group());
        problems.addAll(read.problems());
        return Matcher.quoteReplacement(read instanceof Outcome.Ok<String> ok ? ok.value() : "");
    }

    /** What a premix was made of: {@code olive-virgin: 60 %} on a line of its own, perhaps {@code of 189.6 ± 0.8 mg KOH/g}. */
    static Outcome<List<BlendPart>> parts(String text) {
        List<BlendPart> parts = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (String line : text.split(text.indexOf('\n') >= 0 ? "\\R" : ";", -1)) {
            Outcome<BlendPart> part = part(line);
            problems.addAll(part.problems());
            if (part instanceof Outcome.Ok<BlendPart> ok) {
                parts.add(ok.value());
            }
        }
        return problems.isEmpty() ? Outcome.ok(parts) : new Outcome.Refused<>(problems);
    }

    private static Outcome<BlendPart> part(String line) {
        String[] sides = line.split(":", 2);
        if (sides.length < 2 || sides[0].isBlank()) {
            return Outcome.refused(
                    "'" + CellReader.shown(line) + "' does not say which oil and how much of it",
                    "write it as in olive-virgin: 60 %");
        }
        String[] amount = sides[1].split(" of ", 2);
        String key = sides[0].strip();
        return Share.parse(amount[0])
                .then(share -> amount.length < 2
                        ? Outcome.ok(new BlendPart(key, share))
                        : read(amount[1].strip(), DecimalSign.POINT, MG_KOH)
                                .then(figure -> Outcome.ok(new BlendPart(key, share, Optional.of(figure)))));
    }
}
