package lyewright.formula;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lyewright.formula.Places.Place;
import lyewright.formula.TreeWalk.Spot;
import lyewright.formula.YamlTree.Remark;
import org.jspecify.annotations.Nullable;

/** Gives each comment of a file to the entry it speaks of. */
final class RemarkReader {

    private final List<Spot> spots;
    private final Map<Integer, List<Spot>> endingOnLine = new HashMap<>();
    private final Map<String, List<String>> before = new HashMap<>();
    private final Map<String, String> beside = new HashMap<>();
    private final List<String> after = new ArrayList<>();
    private int next;

    private RemarkReader(List<Spot> spots) {
        this.spots = spots;
        for (Spot spot : spots) {
            if (spot.end().line() > spot.start().line()) {
                endingOnLine
                        .computeIfAbsent(spot.end().line(), line -> new ArrayList<>(1))
                        .add(spot);
            }
        }
    }

    static Comments read(List<Remark> remarks, List<Spot> spots) {
        if (remarks.isEmpty()) {
            return Comments.NONE;
        }
        RemarkReader reader = new RemarkReader(spots);
        int header = headerLength(remarks, spots);
        for (int i = 0; i < remarks.size(); i++) {
            if (i < header) {
                reader.putBefore("", remarks.get(i).text());
            } else {
                reader.place(remarks.get(i));
            }
        }
        return new Comments(reader.before, reader.beside, reader.after);
    }

    /** How many comments stand at the top, apart from the first entry by an empty line or the mark of the document. */
    private static int headerLength(List<Remark> remarks, List<Spot> spots) {
        int first = spots.isEmpty() ? 0 : spots.get(0).start().line();
        int above = 0;
        while (above < remarks.size() && remarks.get(above).place().line() < first) {
            above++;
        }
        int line = first;
        while (above > 0 && remarks.get(above - 1).place().line() == line - 1) {
            above--;
            line--;
        }
        return above;
    }

    private void place(Remark remark) {
        while (next < spots.size() && spots.get(next).start().isBefore(remark.place())) {
            next++;
        }
        Spot own = remark.ownLine() ? null : besideWhich(remark.place());
        if (own != null) {
            putBeside(own.path(), remark.text());
        } else if (next < spots.size()) {
            putBefore(spots.get(next).path(), remark.text());
        } else {
            after.add(remark.text());
        }
    }

    /** The last entry that begins on the line, else the last whose value ends there; none within brackets shut before. */
    private @Nullable Spot besideWhich(Place place) {
        for (int i = next - 1; i >= 0 && spots.get(i).start().line() == place.line(); i--) {
            if (!spots.get(i).shutBefore(place)) {
                return spots.get(i);
            }
        }
        Spot best = null;
        for (Spot spot : endingOnLine.getOrDefault(place.line(), List.of())) {
            if (!spot.shutBefore(place) && !place.isBefore(spot.end())) {
                best = spot;
            }
        }
        return best;
    }

    private void putBefore(String path, String text) {
        before.computeIfAbsent(path, p -> new ArrayList<>(1)).add(text);
    }

    /** One entry has one remark beside it; another goes on the line above. */
    private void putBeside(String path, String text) {
        if (beside.putIfAbsent(path, text) != null) {
            putBefore(path, text);
        }
    }
}
