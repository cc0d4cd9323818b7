package lyewright.web.setting;

import java.util.List;
import lyewright.measure.Problem;
import lyewright.web.Frame;
import lyewright.web.TextField;

/**
 * The page of settings.
 *
 * @param frame around it
 * @param seen tells apart what was kept when the form was opened
 * @param troubles what is wrong that belongs to no field, as sentences
 * @param name field
 * @param currency field
 * @param sodiumPurity field
 * @param potassiumPurity field
 * @param holdBack field
 * @param units to choose from
 * @param degrees to choose from
 * @param paper to choose from
 * @param market to choose from
 * @param demo whether the demo workshop is shown
 * @param hasMine whether the maker's own was started
 * @param holds what is kept now, in words
 * @param restoreTroubles what is wrong with the file that was sent, as sentences
 * @param about where everything is and what this is
 */
public record SettingPage(
        Frame frame,
        String seen,
        List<String> troubles,
        TextField name,
        TextField currency,
        TextField sodiumPurity,
        TextField potassiumPurity,
        TextField holdBack,
        Choices units,
        Choices degrees,
        Choices paper,
        Choices market,
        boolean demo,
        boolean hasMine,
        String holds,
        List<String> restoreTroubles,
        List<About> about) {

    /** Copies its lists. */
    public SettingPage {
        troubles = List.copyOf(troubles);
        restoreTroubles = List.copyOf(restoreTroubles);
        about = List.copyOf(about);
    }

    /**
     * One of several.
     *
     * @param value as it is sent
     * @param label what a maker calls it
     * @param chosen whether it is the one
     */
    public record Choice(String value, String label, boolean chosen) {}

    /**
     * A question with a few answers.
     *
     * @param name of the field
     * @param legend the question
     * @param all the answers
     * @param troubles what is wrong, as sentences
     */
    public record Choices(String name, String legend, List<Choice> all, List<String> troubles) {

        /** Copies its lists. */
        public Choices {
            all = List.copyOf(all);
            troubles = List.copyOf(troubles);
        }

        Choices with(List<Problem> problems) {
            return new Choices(
                    name,
                    legend,
                    all,
                    problems.stream()
                            .filter(p -> p.path().equals(name))
                            .map(Problem::sentence)
                            .toList());
        }
    }

    /**
     * A line about the application.
     *
     * @param label what
     * @param text that
     */
    public record About(String label, String text) {}

    /** Currencies that are offered while typing; any other code may be typed. */
    public List<String> currencies() {
        return List.of("GBP", "EUR", "USD", "CAD", "AUD", "NZD", "CHF", "SEK", "NOK", "DKK", "PLN", "ZAR");
    }
}
