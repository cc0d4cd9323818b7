package lyewright.web.make;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.people.Person;
import lyewright.records.recipe.RecipeVersion;
import lyewright.records.stock.MoveKind;
import lyewright.records.stock.StockMove;
import lyewright.records.stock.TakenBefore;
import lyewright.records.stock.Taking;
import lyewright.stock.Allocation.Taken;
import lyewright.stock.Cupboard;
import lyewright.web.Answers;
import lyewright.web.Notice;
import lyewright.web.Refused;
import lyewright.web.Shop;
import lyewright.web.Visitor;
import lyewright.words.Dates;
import lyewright.words.Sentences;

/**
 * What a sheet weighs is taken out of the cupboard: from each lot that the sheet names so much as it says, all of it or nothing. Beside
 * each move stands what it was for, and what the certificates of lots that go in together say as mixed.
 */
final class TakePages {

    /** Stands in an address after something was taken: the numbers of the moves. */
    static final String TAKEN = "taken";

    static final String TAKEN_BACK = "taken-back";

    private static final String SHORT = "short";

    private static final String TAKE = MakePages.ADDRESS + "/take";
    private static final String BACK = MakePages.ADDRESS + "/take-back";
    private static final String WHY_BACK = "taken back on the sheet's page";

    /** A sheet takes from far fewer lots. */
    private static final Pattern NUMBERS = Pattern.compile("[0-9]{1,15}(\\.[0-9]{1,15}){0,199}");

    private final Shop shop;
    private final Workbench workbench;

    TakePages(Shop shop, Workbench workbench) {
        this.shop = shop;
        this.workbench = workbench;
    }

    void routes(RoutesConfig routes) {
        routes.post(TAKE, this::take);
        routes.post(BACK, this::takeBack);
    }

    /** Whether all that the cupboard knows of is there to be taken, and the sheet may be made. */
    static boolean isTakeable(FromCupboard taken, boolean stopped) {
        return !stopped
                && taken.refused().isEmpty()
                && taken.cupboard().isEnough()
                && taken.cupboard().lines().stream()
                        .anyMatch(line -> !line.allocation().taken().isEmpty());
    }

    /**
     * The form of a sheet. Its token counts what was taken for the version before, so that of two windows, or of a page and what Back
     * shows of it, only one takes: whoever wants it twice is told of the first and takes for another batch.
     */
    CupboardShown.Taking taking(Bench bench) {
        String tokens = "take-" + bench.recipe().id() + "-" + bench.version().number() + "-";
        TakenBefore before = shop.records().lots().takenBefore(tokens);
        return new CupboardShown.Taking(
                tokens + before.times(), before.last().map(this::before).orElse(""));
    }

    private String before(StockMove last) {
        String who = shop.records()
                .people()
                .find(last.author().person())
                .map(Person::name)
                .orElse("somebody who is not known");
        return "It was taken for this version on " + Dates.minute(last.at(), shop.clock()) + " by " + who
                + (last.correctedBy().isPresent() ? ", and taken back." : ".");
    }

    private void take(Context ctx) {
        Bench bench = workbench.lay(MakeChoice.of(ctx.formParamMap()));
        boolean stopped = bench.sheet() instanceof Outcome.Ok<MakingSheet> ok
                && ok.value().stopped();
        Optional<FromCupboard> there = bench.taken().filter(found -> isTakeable(found, stopped));
        if (there.isEmpty()) {
            Answers.seeOther(ctx, address(bench.choice()) + "&" + TAKEN + "=" + SHORT);
            return;
        }
        FromCupboard taken = there.get();
        Outcome<RecipeVersion> kept = shop.records()
                .recipes()
                .markMade(bench.recipe().id(), bench.version().number());
        Outcome<List<Long>> moves = kept.then(version -> shop.records()
                .lots()
                .take(
                        shop.records().author(),
                        Optional.ofNullable(ctx.formParam("token")).orElse(""),
                        takings(taken, bench.choice().asksForCertificates()),
                        StockMove.Told.of(MoveKind.USE, 0)
                                .withPurpose(bench.recipe().name() + ", version "
                                        + bench.version().number())));
        Answers.seeOther(
                ctx, address(bench.choice()) + "&" + TAKEN + "=" + numbers(orRefused(moves, "Nothing was taken")));
    }

    private static List<Taking> takings(FromCupboard taken, boolean certified) {
        List<Taking> takings = new ArrayList<>();
        for (Cupboard.Line line : taken.cupboard().lines()) {
            String mixed = certified ? mixed(line, taken) : "";
            for (Taken part : line.allocation().taken()) {
                takings.add(new Taking(part.lot().id(), part.amount(), "", mixed));
            }
        }
        return takings;
    }

    private static String mixed(Cupboard.Line line, FromCupboard taken) {
        String lots = Sentences.row(line.allocation().taken().stream()
                .map(part -> part.lot().code())
                .toList());
        return LotWords.mixed(line, taken.figures())
                .map(says -> "Lots " + lots + " together. " + says)
                .orElse("");
    }

    private static String numbers(List<Long> moves) {
        // none where the same form was sent before, which took what it says once
        return moves.isEmpty() ? "0" : moves.stream().map(String::valueOf).collect(Collectors.joining("."));
    }

    private void takeBack(Context ctx) {
        List<Long> moves = moves(Optional.ofNullable(ctx.queryParam(TAKEN)).orElse(""));
        orRefused(shop.records().lots().correct(shop.records().author(), moves, WHY_BACK), "Nothing was taken back");
        Answers.seeOther(ctx, address(MakeChoice.of(ctx.queryParamMap())) + "&" + TAKEN_BACK + "=yes");
    }

    private static String address(MakeChoice choice) {
        return MakePages.ADDRESS + "?"
                + choice.without(MakeChoice.OUT, MakeChoice.IN).query();
    }

    private static <T> T orRefused(Outcome<T> outcome, String told) {
        if (outcome instanceof Outcome.Ok<T> ok) {
            return ok.value();
        }
        Problem problem = outcome.problems().get(0);
        throw new Refused(409, told + ": " + problem.what() + ".", Sentences.whole(problem.remedy()));
    }

    private static List<Long> moves(String typed) {
        return NUMBERS.matcher(typed).matches()
                ? Arrays.stream(typed.split("\\."))
                        .map(Long::valueOf)
                        .filter(number -> number > 0)
                        .toList()
                : List.of();
    }

    /** What is told on the page that somebody comes back to. */
    static Optional<Notice> notice(Context ctx, MakeChoice choice) {
        if (ctx.queryParam(TAKEN_BACK) != null) {
            return Optional.of(Notice.of("All of it is back in the cupboard. The ledger keeps both."));
        }
        String typed = Optional.ofNullable(ctx.queryParam(TAKEN)).orElse("");
        if (typed.equals(SHORT)) {
            return Optional.of(
                    Notice.of(
                            "Nothing was taken: the cupboard has not, or not any more, all that this sheet weighs. Below it says what is short."));
        }
        List<Long> moves = moves(typed);
        if (moves.isEmpty()) {
            return typed.isEmpty()
                    ? Optional.empty()
                    : Optional.of(
                            Notice.of(
                                    "Nothing was taken now, for it was taken already since that page was shown. For another batch, take it again below."));
        }
        String says = "What this sheet weighs was taken from the cupboard: "
                + (moves.size() == 1 ? "one lot has" : moves.size() + " lots have") + " a line in the ledger.";
        return Optional.of(
                Visitor.now().isMaker()
                        ? Notice.withUndo(
                                says, "Take it all back", BACK + "?" + choice.query() + "&" + TAKEN + "=" + typed)
                        : Notice.of(says));
    }
}
