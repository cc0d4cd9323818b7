package lyewright.words;

import java.util.List;
import java.util.stream.IntStream;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.MakingSheet;

/**
 * A sheet's cautions in the order in which they are told: three at most on its face, the gravest first.
 *
 * @param stopped whether the sheet is not to be made as it stands
 * @param face on the sheet's face; of a note there only what is so, not what to do
 * @param more told whole further down: those beyond the face, and notes from it
 * @param beyondFace how many the face has no room for
 */
public record SheetCautions(boolean stopped, List<Caution> face, List<Caution> more, int beyondFace) {

    private static final int MOST_ON_FACE = 3;

    /** Copies its lists. */
    public SheetCautions {
        face = List.copyOf(face);
        more = List.copyOf(more);
    }

    /** The cautions of a sheet. */
    public static SheetCautions of(MakingSheet sheet) {
        return of(sheet, UnitsShown.METRIC);
    }

    /** The same in the units that are wanted. */
    public static SheetCautions of(MakingSheet sheet, UnitsShown units) {
        List<Caution> all = sheet.cautions().stream().map(units::told).toList();
        return new SheetCautions(
                sheet.stopped(),
                all.stream().limit(MOST_ON_FACE).toList(),
                IntStream.range(0, all.size())
                        .filter(i -> i >= MOST_ON_FACE || isNote(all.get(i)))
                        .mapToObj(all::get)
                        .toList(),
                Math.max(0, all.size() - MOST_ON_FACE));
    }

    /** Whether it is only good to know. */
    public static boolean isNote(Caution caution) {
        return caution.level() == Caution.Level.NOTE;
    }

    /** Caution, remedy and source. */
    public static String whole(Caution caution) {
        return caution.text() + " " + caution.remedy() + " [" + caution.source() + "]";
    }
}
