package lyewright.web.csv;

import java.util.List;
import lyewright.web.Frame;

/**
 * A file as it was understood, before anything of it is kept.
 *
 * @param frame around it
 * @param address of this page
 * @param leftOut where the rows with problems can be had; empty where there is none
 * @param name of the file
 * @param understood how it was understood, in a sentence
 * @param told how many are new, there, and wrong
 * @param fresh how many are new
 * @param blocks why no row can be read
 * @param remarks what is worth a word
 * @param selects how it is read: what its rows are, separator, decimals, days
 * @param columns what each column says
 * @param hidden the fields of the choice that is shown
 * @param problems what is wrong by row
 * @param notes what is worth a look in rows that go in
 * @param found new materials whose names the tables know
 * @param sample some rows as they will be kept
 */
public record PreviewPage(
        Frame frame,
        String address,
        String leftOut,
        String name,
        String understood,
        String told,
        int fresh,
        List<String> blocks,
        List<String> remarks,
        List<Select> selects,
        List<Select> columns,
        List<ChoiceFields.Field> hidden,
        Problems problems,
        Problems notes,
        List<Found> found,
        Sample sample) {

    /** Copies its lists. */
    public PreviewPage {
        blocks = List.copyOf(blocks);
        remarks = List.copyOf(remarks);
        selects = List.copyOf(selects);
        columns = List.copyOf(columns);
        hidden = List.copyOf(hidden);
        found = List.copyOf(found);
    }

    /** The same with what stood in the way of keeping it. */
    PreviewPage blocked(String sentence) {
        return new PreviewPage(
                frame,
                address,
                leftOut,
                name,
                understood,
                told,
                fresh,
                List.of(sentence),
                remarks,
                selects,
                columns,
                hidden,
                problems,
                notes,
                found,
                sample);
    }

    /** What a field of the choice that is shown says. */
    public String was(String field) {
        return hidden.stream()
                .filter(it -> it.name().equals(field))
                .map(ChoiceFields.Field::value)
                .findFirst()
                .orElse("");
    }

    /** A hidden field's name; fields are not public, and templates are elsewhere. */
    public String hiddenName(int i) {
        return hidden.get(i).name();
    }

    /** Its value. */
    public String hiddenValue(int i) {
        return hidden.get(i).value();
    }

    /**
     * A choice among some.
     *
     * @param name of the field
     * @param label what is chosen
     * @param hint beneath, perhaps empty
     * @param options the choices
     */
    public record Select(String name, String label, String hint, List<Option> options) {

        /** Copies its list. */
        public Select {
            options = List.copyOf(options);
        }
    }

    /** One choice. */
    public record Option(String value, String label, boolean chosen) {}

    /**
     * What is wrong.
     *
     * @param told one by one, as far as a page can
     * @param more how many more there are
     */
    public record Problems(List<Line> told, int more) {

        /** Copies its list. */
        public Problems {
            told = List.copyOf(told);
        }
    }

    /** One thing that is wrong: in which row and column, what stands there, and a sentence. */
    public record Line(int row, String column, String cell, String sentence) {}

    /** A new material whose name the tables know: what it is called, and what recipes call it. */
    public record Found(String name, String recipeName) {}

    /** Rows as they will be kept. */
    public record Sample(List<String> columns, List<List<String>> rows) {

        /** Copies its lists. */
        public Sample {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
        }
    }
}
