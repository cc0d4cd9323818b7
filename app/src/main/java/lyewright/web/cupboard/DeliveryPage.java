package lyewright.web.cupboard;

import java.util.List;
import java.util.stream.Stream;
import lyewright.measure.Problem;
import lyewright.records.stock.ItemKind;
import lyewright.web.Frame;
import lyewright.web.TextField;
import lyewright.words.Labelled;
import lyewright.words.Sentences;

/**
 * The form of a delivery.
 *
 * @param frame around it
 * @param token tells this delivery from any other
 * @param supplier who it is from
 * @param day when it came
 * @param longAgo whether that is right though it is long ago; nothing where that is not asked
 * @param quarantine whether nothing of it is to be used until somebody judged it
 * @param lines what came
 * @param currency that prices are in
 * @param known names that may be written
 * @param suppliers names that may be written
 * @param troubles what is wrong that belongs to no field
 * @param count how many things are wrong
 */
public record DeliveryPage(
        Frame frame,
        String token,
        TextField supplier,
        TextField day,
        Ask longAgo,
        boolean quarantine,
        List<Line> lines,
        String currency,
        List<String> known,
        List<String> suppliers,
        List<String> troubles,
        int count) {

    /** What sort of thing something new may be. */
    public static final List<Labelled> KINDS = Stream.concat(
                    Stream.of(new Labelled("", "choose")),
                    Stream.of(ItemKind.values())
                            .map(kind -> new Labelled(kind.word(), Sentences.upperFirst(kind.word()))))
            .toList();

    /** Copies its lists. */
    public DeliveryPage {
        lines = List.copyOf(lines);
        known = List.copyOf(known);
        suppliers = List.copyOf(suppliers);
        troubles = List.copyOf(troubles);
    }

    /** Whether there is room for more lines. */
    public boolean hasRoom() {
        return lines.size() < DeliveryForm.MOST_LINES;
    }

    /**
     * Something that is asked once.
     *
     * @param asked whether it is asked
     * @param yes whether it was said to be right
     */
    public record Ask(boolean asked, boolean yes) {

        /** Asked where it was answered, or where a field of the form says so. */
        static Ask of(boolean yes, String path, String remedy, List<Problem> problems) {
            return new Ask(
                    yes
                            || problems.stream()
                                    .anyMatch(problem -> problem.path().equals(path)
                                            && problem.remedy().endsWith(remedy)),
                    yes);
        }
    }

    /**
     * One line.
     *
     * @param number from 1
     * @param material what it is
     * @param kind what sort of thing, as chosen
     * @param asksKind whether that has to be said
     * @param kindTroubles what is wrong with that
     * @param amount how much
     * @param lot the supplier's lot
     * @param bestBefore its best before
     * @param price what all of it cost
     * @param past what is to be done with it though its best before is past, as chosen
     * @param asksPast whether that has to be said
     * @param far whether its best before is right though it is far off
     * @param again whether it is said to be a further part of a lot that is here
     * @param asksAgain whether that has to be said
     * @param alike what its name is easily taken for
     */
    public record Line(
            int number,
            TextField material,
            String kind,
            boolean asksKind,
            List<String> kindTroubles,
            TextField amount,
            TextField lot,
            TextField bestBefore,
            TextField price,
            String past,
            boolean asksPast,
            Ask far,
            boolean again,
            boolean asksAgain,
            Alike alike) {

        static final String PAST = "this day is past already";

        /** Copies its list. */
        public Line {
            kindTroubles = List.copyOf(kindTroubles);
        }

        static Line of(int place, DeliveryForm.Line line, List<Problem> problems, Alike alike) {
            String path = "lines." + place + ".";
            int number = place + 1;
            List<String> kindTroubles = problems.stream()
                    .filter(problem -> problem.path().equals(path + "kind"))
                    .map(Problem::sentence)
                    .toList();
            return new Line(
                    number,
                    TextField.of(path + "material", "What came", "", line.material())
                            .with(problems),
                    line.kind(),
                    !line.kind().isEmpty() || !kindTroubles.isEmpty(),
                    kindTroubles,
                    TextField.of(path + "amount", "How much", "", line.amount()).with(problems),
                    TextField.of(path + "lot", "Supplier's lot", "", line.lot()).with(problems),
                    TextField.of(path + "bestBefore", "Best before", "", line.bestBefore())
                            .with(problems),
                    TextField.of(path + "price", "Price", "", line.price())
                            .with(problems)
                            .forFigures(),
                    line.past(),
                    !line.past().isEmpty() || problems.stream().anyMatch(problem -> isPast(problem, path)),
                    Ask.of(line.far(), path + "bestBefore", DeliveryReading.FAR, problems),
                    line.again(),
                    line.again()
                            || problems.stream()
                                    .anyMatch(problem -> problem.path().equals(path + "lot")
                                            && problem.remedy().equals(HereAlready.REMEDY)),
                    alike);
        }

        private static boolean isPast(Problem problem, String path) {
            return problem.path().equals(path + "bestBefore") && problem.what().equals(PAST);
        }
    }
}
