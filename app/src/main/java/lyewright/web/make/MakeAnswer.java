package lyewright.web.make;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.setting.Paper;
import lyewright.web.WorkshopUnits;
import lyewright.web.recipe.NewerFigures;

/**
 * What a choice comes to: the part of the page that changes as the choice does.
 *
 * @param choice what was chosen
 * @param recipe the recipe's name
 * @param version which version
 * @param made whether something was made from that version already
 * @param paper the paper in the workshop's printer
 * @param sheet the sheet; empty while something is wrong
 * @param cupboard what the cupboard has for it; empty where there is no sheet or nothing to say
 * @param newer where the workshop's own figures are others than the version's
 * @param newest whether there is no version after this one
 * @param draft whether changes to the recipe are not saved yet
 * @param swap what another oil would do, if that was asked
 * @param troubles what is wrong in no field of the form: in the recipe itself
 * @param fields every field with what is wrong in it
 * @param inPlace whether only this part is sent
 */
public record MakeAnswer(
        MakeChoice choice,
        String recipe,
        int version,
        boolean made,
        Paper paper,
        Optional<SheetShown> sheet,
        Optional<CupboardShown> cupboard,
        NewerFigures newer,
        boolean newest,
        boolean draft,
        Optional<SwapShown> swap,
        List<String> troubles,
        Map<String, FieldShown> fields,
        boolean inPlace) {

    private static final List<String> FIELDS = List.of(
            MakeChoice.MOULD,
            MakeChoice.INSIDE,
            MakeChoice.MUCH,
            MakeChoice.AMOUNT,
            MakeChoice.HOLD_BACK,
            MakeChoice.CUT,
            MakeChoice.BLADE,
            MakeChoice.ENDS,
            MakeChoice.TRIM,
            MakeChoice.OUT,
            MakeChoice.IN);

    static MakeAnswer of(Bench bench, boolean inPlace, CupboardShown.Taking taking) {
        Optional<MakingSheet> sheet = value(bench.sheet());
        Optional<Outcome<Swap>> swap =
                sheet.filter(made -> Swap.isAsked(bench.choice())).map(made -> Swap.of(bench, made));
        List<Problem> problems = Stream.concat(
                        bench.sheet().problems().stream(), swap.stream().flatMap(MakeAnswer::ofSwap))
                .toList();
        boolean newest = bench.version().number() == bench.recipe().newest().number();
        return new MakeAnswer(
                bench.choice(),
                bench.recipe().name(),
                bench.version().number(),
                bench.version().madeAt().isPresent(),
                bench.workshop().paper(),
                sheet.map(made -> SheetShown.of(made, bench.choice(), bench.workshop())),
                sheet.flatMap(made -> bench.taken()
                        .flatMap(taken -> CupboardShown.of(
                                made, taken, bench.choice(), WorkshopUnits.of(bench.workshop()), taking))),
                NewerFigures.of(bench.version().formula(), bench.names()),
                newest,
                bench.recipe().draftId().isPresent(),
                swap.flatMap(MakeAnswer::value)
                        .map(swapped ->
                                SwapShown.of(swapped, newest, bench.choice(), WorkshopUnits.of(bench.workshop()))),
                problems.stream()
                        .filter(problem -> problem.path().isEmpty())
                        .map(Problem::sentence)
                        .toList(),
                fields(bench.choice(), problems),
                inPlace);
    }

    /** Whatever the other oil makes impossible is said beside it. */
    private static Stream<Problem> ofSwap(Outcome<Swap> swap) {
        return swap.problems().stream()
                .map(problem -> problem.path().equals(MakeChoice.OUT)
                        ? problem
                        : new Problem(MakeChoice.IN, problem.what(), problem.remedy()));
    }

    private static <T> Optional<T> value(Outcome<T> outcome) {
        return outcome instanceof Outcome.Ok<T> ok ? Optional.of(ok.value()) : Optional.empty();
    }

    private static Map<String, FieldShown> fields(MakeChoice choice, List<Problem> problems) {
        Map<String, FieldShown> fields = new LinkedHashMap<>();
        FIELDS.forEach(name -> fields.put(name, FieldShown.of(choice, name, problems)));
        return fields;
    }

    /** A field by its name. */
    public FieldShown field(String name) {
        FieldShown field = fields.get(name);
        if (field == null) {
            throw new IllegalArgumentException(name);
        }
        return field;
    }

    /** All fields, in the order of the form. */
    public List<FieldShown> allFields() {
        return new ArrayList<>(fields.values());
    }

    /** The papers, the workshop's own first. */
    public List<Paper> papers() {
        return paper == Paper.A4 ? List.of(Paper.A4, Paper.LETTER) : List.of(Paper.LETTER, Paper.A4);
    }

    /** What a paper is called. */
    public static String called(Paper size) {
        return size == Paper.A4 ? "A4" : "Letter";
    }

    /** What is asked for to see what the batch becomes. */
    public String becomes() {
        return choice.withoutSwap().query();
    }

    /** Where the sheet is looked at as paper without anything being kept. */
    public String paperAddress(Paper size) {
        return MakePages.PDF + "?" + choice.withoutSwap().query() + "&paper=" + size.name();
    }
}
