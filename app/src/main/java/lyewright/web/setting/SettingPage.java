package lyewright.web.setting;

import java.util.List;
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
        List<Choice> units,
        List<Choice> degrees,
        List<Choice> paper,
        List<Choice> market,
        boolean demo,
        boolean hasMine,
        String holds,
        List<String> restoreTroubles,
        List<About> about) {

    /** Copies its lists. */
    public SettingPage {
        troubles = List.copyOf(troubles);
        units = List.copyOf(units);
        degrees = List.copyOf(degrees);
        paper = List.copyOf(paper);
        market = List.copyOf(market);
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
