package lyewright.web.make;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lyewright.makingsheet.MakingSheet;
import lyewright.material.Names;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.recipe.RecipeVersion;
import lyewright.records.recipe.Search;
import lyewright.records.setting.Paper;
import lyewright.web.Answers;
import lyewright.web.Feature;
import lyewright.web.Frame;
import lyewright.web.Notice;
import lyewright.web.Refused;
import lyewright.web.Section;
import lyewright.web.Shop;
import lyewright.web.WorkshopUnits;
import lyewright.web.recipe.BarShown;
import lyewright.web.recipe.BegunDraft;
import lyewright.web.recipe.NewerFigures;
import lyewright.words.Sentences;
import org.jspecify.annotations.Nullable;

/**
 * Make. Looking changes nothing: the sheet, its swap and its paper are all addresses. What was printed was made from, so printing is
 * asked for by a form: it keeps the version as it is and then leads to the paper, whose address may be loaded again at will.
 */
public final class MakePages implements Feature {

    static final String ADDRESS = "/make";
    static final String PDF = ADDRESS + "/sheet.pdf";

    /** Stands in an address after the page was printed from the browser. */
    static final String KEPT = "kept";

    private static final String PAPER = "paper";

    /** A browser's own reader of PDFs styles the page that it builds around them. */
    private static final String FOR_A_READER =
            "default-src 'none'; object-src 'self'; style-src 'unsafe-inline'; frame-ancestors 'none'";

    private static final int SHOWN = 30;
    private static final int LONGEST_QUERY = 200;

    /** Sent by a page without scripts on which no mould was chosen yet. */
    private static final String NO_MOULD_BEFORE = "no-mould-before";

    private final Shop shop;
    private final Workbench workbench;
    private final TakePages take;

    /**
     * Make, in a workshop.
     *
     * @param shop the workshop that is shown
     */
    public MakePages(Shop shop) {
        this.shop = shop;
        this.workbench = new Workbench(shop);
        this.take = new TakePages(shop, workbench);
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get(ADDRESS, this::show);
        routes.get(ADDRESS + "/becomes", this::becomes);
        routes.get(PDF, this::paper);
        routes.post(PDF, this::printPaper);
        routes.post(ADDRESS + "/printed", this::printed);
        routes.post(ADDRESS + "/own-figures", this::takeFiguresOver);
        routes.post(ADDRESS + "/draft", this::draft);
        take.routes(routes);
    }

    private void show(Context ctx) {
        MakeChoice choice = MakeChoice.of(ctx.queryParamMap());
        if (choice.text(MakeChoice.RECIPE).isEmpty()) {
            pick(ctx);
            return;
        }
        if (ctx.queryParam(NO_MOULD_BEFORE) != null) {
            choice = choice.withItsFirstMould();
        }
        Bench bench = workbench.lay(choice);
        boolean inPlace = Answers.isInPlace(ctx);
        MakeAnswer answer = MakeAnswer.of(bench, inPlace, take.taking(bench));
        if (inPlace) {
            ctx.header("HX-Replace-Url", ADDRESS + "?" + bench.choice().query());
            if (answer.sheet().isEmpty()) {
                // the last sheet stays, greyed, until this one can be read; only what is wrong is said
                ctx.header("HX-Reswap", "none");
            }
            Answers.page(ctx, "make/answer.jte", answer);
        } else {
            Answers.page(ctx, "make/make.jte", MakePage.of(bench, answer, frame(ctx, bench)));
        }
    }

    /** Beneath what is needed at the bench, so it is worked out only for whoever unfolds it. */
    private void becomes(Context ctx) {
        Bench bench = workbench.lay(MakeChoice.of(ctx.queryParamMap()));
        BarShown bar = BarShown.of(sheet(bench), WorkshopUnits.of(bench.workshop()), bench.choice()::why);
        if (Answers.isInPlace(ctx)) {
            Answers.page(ctx, "make/bar.jte", bar);
            return;
        }
        Frame frame = shop.frame("What " + bench.recipe().name() + " becomes", Section.MAKE)
                .with(List.of("make.css", "why.css"), List.of("why.js"));
        Answers.page(
                ctx,
                "make/becomes.jte",
                new BecomesPage(
                        frame,
                        bench.recipe().name(),
                        bench.version().number(),
                        ADDRESS + "?" + bench.choice().query(),
                        bar));
    }

    private Frame frame(Context ctx, Bench bench) {
        Frame frame = shop.frame("Make " + bench.recipe().name(), Section.MAKE);
        List<Notice> notices = ctx.queryParam(KEPT) == null
                ? take.notice(ctx, bench).stream().toList()
                : List.of(Notice.of("Version " + bench.version().number()
                        + " is kept as it is. Changing the recipe later makes the next version."));
        return new Frame(
                frame.title(),
                frame.section(),
                frame.workshop(),
                frame.demo(),
                notices,
                List.of("make.css", "why.css"),
                List.of("make.js", "why.js"));
    }

    private void pick(Context ctx) {
        String typed = Optional.ofNullable(ctx.queryParam("q")).orElse("");
        String words = typed.length() > LONGEST_QUERY ? typed.substring(0, LONGEST_QUERY) : typed;
        PickPage.Found found =
                new PickPage.Found(words, shop.records().recipes().list(new Search(words, 1, SHOWN)));
        if (Answers.isInPlace(ctx)) {
            Answers.page(ctx, "make/found.jte", found);
        } else {
            Frame frame = shop.frame("Make", Section.MAKE).withStyle("make.css");
            Answers.page(ctx, "make/pick.jte", new PickPage(frame, found));
        }
    }

    private void paper(Context ctx) {
        Bench bench = workbench.lay(MakeChoice.of(ctx.queryParamMap()));
        SheetFile file = SheetFile.of(bench, sheetOfItsLots(bench), paper(ctx.queryParam(PAPER), bench), shop.clock());
        ctx.header("Content-Security-Policy", FOR_A_READER);
        ctx.header("Content-Disposition", "inline; filename=\"" + file.name() + "\"");
        ctx.contentType("application/pdf").result(file.pdf());
    }

    private void printPaper(Context ctx) {
        Bench bench = made(MakeChoice.of(ctx.formParamMap()));
        Paper paper = paper(ctx.formParam(PAPER), bench);
        MakeChoice sheet = bench.choice().withoutSwap();
        Answers.seeOther(ctx, PDF + "?" + sheet.query() + "&" + PAPER + "=" + paper.name());
    }

    private static Paper paper(@Nullable String typed, Bench bench) {
        return Arrays.stream(Paper.values())
                .filter(paper -> paper.name().equals(typed))
                .findFirst()
                .orElse(bench.workshop().paper());
    }

    private static MakingSheet sheet(Bench bench) {
        if (bench.sheet() instanceof Outcome.Ok<MakingSheet> ok) {
            return ok.value();
        }
        throw refused("There is no such sheet", bench.sheet().problems().get(0));
    }

    /** A paper names lots, so that it is refused where those that were picked cannot be taken. */
    private static MakingSheet sheetOfItsLots(Bench bench) {
        MakingSheet sheet = sheet(bench);
        bench.taken().stream()
                .flatMap(taken -> taken.refused().stream())
                .findFirst()
                .ifPresent(problem -> {
                    throw refused("Nothing is printed", problem);
                });
        return sheet;
    }

    private static Refused refused(String what, Problem problem) {
        return new Refused(422, what + ": " + problem.what() + ".", Sentences.whole(problem.remedy()));
    }

    /** The recipe with the other oil, to be gone on with in the editor. */
    private void draft(Context ctx) {
        // what lots of the day say stays with the sheet; a recipe carries what the maker gave it
        Bench bench = workbench.lay(
                MakeChoice.of(ctx.formParamMap()).without(MakeChoice.LOTS).withoutPicks());
        Outcome<String> editor = Swap.of(bench, sheet(bench))
                .then(swap -> BegunDraft.of(
                        shop.records(),
                        bench.recipe(),
                        swap.formula(),
                        swap.in() + " in place of " + Names.inSentence(swap.out())));
        if (editor instanceof Outcome.Ok<String> ok) {
            Answers.seeOther(ctx, ok.value());
        } else {
            throw refused("Nothing was kept", editor.problems().get(0));
        }
    }

    /** The newest version with the workshop's own figures; what was chosen stays chosen. */
    private void takeFiguresOver(Context ctx) {
        Bench bench = workbench.lay(MakeChoice.of(ctx.formParamMap()));
        if (bench.version().number() != bench.recipe().newest().number()) {
            throw new Refused(
                    409,
                    "A newer version was saved since this page was shown.",
                    "Choose it, and take the figures over there.");
        }
        Outcome<RecipeVersion> taken = NewerFigures.takeOver(shop, bench.recipe());
        if (!taken.problems().isEmpty()) {
            throw refused("Nothing was kept", taken.problems().get(0));
        }
        Answers.seeOther(
                ctx, ADDRESS + "?" + bench.choice().without(MakeChoice.VERSION).query());
    }

    /** The page itself goes to the printer: the browser is told to print once the version is kept. */
    private void printed(Context ctx) {
        MakeChoice choice = MakeChoice.of(ctx.formParamMap());
        Bench bench = made(choice);
        if (Answers.isInPlace(ctx)) {
            ctx.header("HX-Trigger", "print-page").status(204);
        } else {
            Answers.seeOther(ctx, ADDRESS + "?" + bench.choice().query() + "&" + KEPT + "=yes");
        }
    }

    /** A sheet that is not to be made is printed crossed, and nothing is made from it. */
    private Bench made(MakeChoice choice) {
        Bench bench = workbench.lay(choice);
        if (!sheetOfItsLots(bench).stopped()) {
            Outcome<RecipeVersion> kept = shop.records()
                    .recipes()
                    .markMade(bench.recipe().id(), bench.version().number());
            if (!kept.problems().isEmpty()) {
                throw refused("Nothing was kept", kept.problems().get(0));
            }
        }
        return bench;
    }
}
