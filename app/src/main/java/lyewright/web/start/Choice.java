package lyewright.web.start;

import lyewright.formula.NotebookText.Offer;
import lyewright.formula.NotebookText.Trouble;
import lyewright.words.Sentences;

/**
 * Something that a line may have meant, to be taken with one click.
 *
 * @param label in a word or two
 * @param line the whole line with it
 */
public record Choice(String label, String line) {

    static Choice of(Offer offer) {
        return new Choice(offer.label(), offer.line());
    }

    /** Where the choices stand beneath, they need not stand in the sentence too. */
    static String question(Trouble trouble) {
        String what = trouble.problem().what();
        int quoteEnds = what.lastIndexOf('\'');
        if (trouble.offers().size() < 2) {
            return Sentences.two(trouble.problem());
        }
        if (what.startsWith("it is not said when '")) {
            return "When does " + what.substring("it is not said when ".length(), quoteEnds + 1) + " go in?";
        }
        int mayBe = what.indexOf("' may be ");
        if (mayBe > 0 && !Character.isDigit(what.charAt(1))) {
            return "Which " + what.substring(0, mayBe + 1) + " is it?";
        }
        return Sentences.whole(what) + (trouble.unknown().isPresent() ? " Did you mean one of these?" : "");
    }
}
