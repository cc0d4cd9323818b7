package lyewright.print;

import java.util.Optional;
import lyewright.makingsheet.MakingSheet;
import lyewright.words.Practices;

/**
 * The card that goes to the rack with the bars, cut out of the sheet.
 *
 * @param cure how long to cure by common practice, without the mark of it
 * @param bars how many, where that is known
 */
public record RackCard(String cure, Optional<String> bars) {

    static RackCard of(MakingSheet sheet) {
        return new RackCard(
                Practices.of(sheet).text(sheet.practice().cure()).replace(Practices.MARK, ""),
                sheet.bars().map(bars -> String.valueOf(bars.count())));
    }
}
