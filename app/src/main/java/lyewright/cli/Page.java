package lyewright.cli;

import java.util.List;

/** A page of plain text, 100 columns wide, to read on a screen or pin to a wall. */
final class Page {

    /** Columns of a page. */
    static final int WIDTH = 100;

    private final StringBuilder text = new StringBuilder(8192);

    /** A line as it is, without spaces at its end. */
    Page line(String line) {
        text.append(line.stripTrailing()).append('\n');
        return this;
    }

    /** An empty line; never two after each other. */
    Page blank() {
        int length = text.length();
        if (length > 1 && text.charAt(length - 2) != '\n') {
            text.append('\n');
        }
        return this;
    }

    /** A line across the page. */
    Page rule() {
        return line("-".repeat(WIDTH));
    }

    /** The heading of a section. */
    Page heading(String heading) {
        blank();
        line(heading.toUpperCase(java.util.Locale.ROOT));
        return line("-".repeat(WIDTH));
    }

    /** Text broken into lines, each set in by so many columns. */
    Page paragraph(String paragraph, int indent) {
        return hanging(" ".repeat(indent), paragraph);
    }

    /** Text broken into lines behind a lead such as {@code " 3. "}; the lines after the first are set in as far. */
    Page hanging(String lead, String paragraph) {
        int indent = Widths.of(lead);
        String before = lead;
        for (String line : Widths.wrap(paragraph, WIDTH - indent)) {
            line(before + line);
            before = " ".repeat(indent);
        }
        return this;
    }

    /** A label and what it is, the latter broken into lines. */
    Page pair(String label, String what, int labelWidth) {
        return hanging(Widths.left(label, labelWidth), what);
    }

    /** Two texts at the ends of one line; on two lines where they do not fit beside each other. */
    Page ends(String left, String right) {
        int gap = WIDTH - Widths.of(left) - Widths.of(right);
        if (gap >= 2) {
            return line(left + " ".repeat(gap) + right);
        }
        List<String> lines = Widths.wrap(left, WIDTH);
        lines.forEach(this::line);
        return line(Widths.right(right, WIDTH));
    }

    /** A table. */
    Page table(TextTable table) {
        table.lines(WIDTH).forEach(this::line);
        return this;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
