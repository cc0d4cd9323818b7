package lyewright.web.make;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.people.Person;
import lyewright.records.recipe.RecipeVersion;
import lyewright.records.stock.MoveKind;
import lyewright.records.stock.StockMove;
import lyewright.records.stock.TakenBefore;
import lyewright.records.stock.TakenTogether;
import lyewright.records.stock.Taking;
import lyewright.stock.Allocation.Taken;
import lyewright.stock.Cupboard;
import lyewright.web.Answers;
import lyewright.web.Notice;
import lyewright.web.Refused;
import lyewright.web.Shop;
import lyewright.web.Visitor;
import lyewright.web.WorkshopUnits;
import lyewright.words.Dates;
import lyewright.words.Sentences;

/**
 * What a sheet weighs is taken out of the cupboard: from each lot that the sheet names so much as it says, all of it or nothing. Beside
 * each move stands what it was for, and what the certificates of lots that go in together say as mixed.
 */
final class TakePages {

    /** Stands in an address after something was taken: what became of it. */
    private static final String TAKEN = "taken";

    private static final String TAKEN_BACK = "back";
    private static final String DONE = "yes";
    private static final String ALREADY = "already";

    private static final String SHORT = "short";

    private static final String TAKE = MakePages.ADDRESS + "/take";
    private static final String BACK = MakePages.ADDRESS + "/take-back";
    private static final String WHY_BACK = "taken back on the sheet's page";

    private static final int MOST_TOLD = 3;

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
        String tokens = tokens(bench);
        TakenBefore before = shop.records().lots().takenBefore(tokens, MOST_TOLD);
        return new CupboardShown.Taking(
                tokens + before.times(),
                before.last().stream().map(taken -> before(taken, bench)).toList());
    }

    private static String tokens(Bench bench) {
        return "take-" + bench.recipe().id() + "-" + bench.version().number() + "-";
    }

    private CupboardShown.Before before(TakenTogether taken, Bench bench) {
        StockMove one = taken.moves().get(0);
        String who = shop.records()
                .people()
                .find(one.author().person())
                .map(Person::name)
                .orElse("somebody who is not known");
        int lots = taken.moves().size();
        String says = "Taken for this version on " + Dates.minute(one.at(), shop.clock()) + " by " + who + ": "
                + new LotWords(WorkshopUnits.of(bench.workshop())).mass(taken.amount())
                + (lots == 1 ? " from one lot" : " from " + lots + " lots")
                + (taken.isBack() ? ", and taken back." : ".");
        return new CupboardShown.Before(
                says, taken.isBack() ? "" : BACK + "?" + bench.choice().query() + "&" + TAKEN + "=" + taken.head());
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
        // none where another page that showed the same took it
        String told = orRefused(moves, "Nothing was taken").isEmpty() ? ALREADY : DONE;
        Answers.seeOther(ctx, address(bench.choice()) + "&" + TAKEN + "=" + told);
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

    private void takeBack(Context ctx) {
        Bench bench = workbench.lay(MakeChoice.of(ctx.queryParamMap()));
        String head = Optional.ofNullable(ctx.queryParam(TAKEN)).orElse("");
        orRefused(
                shop.records().lots().takeBack(shop.records().author(), tokens(bench), head, WHY_BACK),
                "Nothing was taken back");
        Answers.seeOther(ctx, address(bench.choice()) + "&" + TAKEN + "=" + TAKEN_BACK);
    }

    private static String address(MakeChoice choice) {
        return MakePages.ADDRESS + "?" + choice.withoutSwap().query();
    }

    private static <T> T orRefused(Outcome<T> outcome, String told) {
        if (outcome instanceof Outcome.Ok<T> ok) {
            return ok.value();
        }
        Problem problem = outcome.problems().get(0);
        throw new Refused(409, told + ": " + problem.what() + ".", Sentences.whole(problem.remedy()));
    }

    /** What is told on the page that somebody comes back to. */
    Optional<Notice> notice(Context ctx, Bench bench) {
        return switch (Optional.ofNullable(ctx.queryParam(TAKEN)).orElse("")) {
            case DONE -> taking(bench).before().stream().findFirst().map(TakePages::told);
            case TAKEN_BACK -> Optional.of(Notice.of("All of it is back in the cupboard. The ledger keeps both."));
            case SHORT ->
                Optional.of(
                        Notice.of(
                                "Nothing was taken: the cupboard has not, or not any more, all that this sheet weighs. Below it says what is short."));
            case ALREADY ->
                Optional.of(
                        Notice.of(
                                "Nothing was taken now, for it was taken already since that page was shown. For another batch, take it again below."));
            default -> Optional.empty();
        };
    }

    private static Notice told(CupboardShown.Before taken) {
        return Visitor.now().isMaker() && !taken.back().isEmpty()
                ? Notice.withUndo(taken.says(), "Take it all back", taken.back())
                : Notice.of(taken.says());
    }
}
