package lyewright.web.start;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.Records;
import lyewright.records.RecordsTrouble;
import lyewright.records.setting.Workshop;
import lyewright.web.Answers;
import lyewright.web.Feature;
import lyewright.web.Frame;
import lyewright.web.Notice;
import lyewright.web.Section;
import lyewright.web.Shop;
import lyewright.web.Visits;
import lyewright.web.Ways;
import lyewright.words.Sentences;

/** The first page and its other ways to begin; until one is taken, every page leads here. */
public final class Start implements Feature {

    static final String STYLE = "start.css";
    static final String SCRIPT = "notebook.js";

    private static final String ADDRESS = "/start";
    private static final String PAGE = "start/start.jte";

    /** What is there before any workshop is; a maker with a new computer begins by putting a backup back. */
    private static final List<String> OPEN =
            List.of(ADDRESS, NotebookPages.ADDRESS, "/settings/restore", "/static", Visits.CODE, Visits.SIGN_IN);

    private final Shop shop;
    private final KnownNames names;

    /**
     * The pages of a shop.
     *
     * @param shop whose
     */
    public Start(Shop shop) {
        this.shop = shop;
        this.names = new KnownNames(shop);
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.before(this::leadHere);
        routes.get("/", ctx -> ctx.redirect(Section.RECIPES.address()));
        routes.get(ADDRESS, this::start);
        routes.post(ADDRESS + "/mine", this::mine);
        routes.post(ADDRESS + "/demo", this::demo);
        routes.post(ADDRESS + "/back", this::back);
        new NotebookPages(shop, names).routes(routes);
    }

    private void leadHere(Context ctx) {
        if (OPEN.stream().noneMatch(open -> isBelow(ctx.path(), open)) && !shop.started()) {
            Answers.seeOther(ctx, ADDRESS);
            ctx.skipRemainingHandlers();
        }
    }

    private static boolean isBelow(String path, String address) {
        return path.equals(address) || path.startsWith(address + "/");
    }

    private void start(Context ctx) {
        Answers.page(ctx, PAGE, page(WorkshopForm.EMPTY));
    }

    private StartPage page(WorkshopForm mine) {
        Bench bench = Bench.of(shop, names);
        NotebookView notebook = NotebookView.of(NotebookForm.empty(bench.unit()), bench, !shop.started());
        return new StartPage(frame(shop, "Begin"), notebook, mine, shop.hasMine(), shop.showsDemo());
    }

    static Frame frame(Shop shop, String title) {
        Frame inside = shop.frame(title, Section.RECIPES);
        return new Frame(
                title,
                Optional.empty(),
                inside.workshop(),
                inside.demo(),
                List.of(),
                List.of(STYLE, "why.css"),
                List.of(SCRIPT, "why.js"));
    }

    /** A form that was sent a second time, or from a window opened before, leaves the workshop's settings as they are. */
    private void mine(Context ctx) {
        if (shop.hasMine()) {
            back(ctx);
            return;
        }
        WorkshopForm form = new WorkshopForm(
                Optional.ofNullable(ctx.formParam(WorkshopForm.FIELD)).orElse(""),
                WorkshopForm.units(Optional.ofNullable(ctx.formParam("units")).orElse("")),
                List.of());
        Optional<Problem> trouble = form.trouble();
        if (trouble.isPresent()) {
            Answers.form(ctx, PAGE, page(form.with(List.of(trouble.get()))));
            return;
        }
        Outcome<Workshop> kept = shop.startMine(form.workshop());
        if (kept instanceof Outcome.Refused) {
            Answers.form(ctx, PAGE, page(form.with(kept.problems())));
            return;
        }
        Answers.seeOther(ctx, Section.RECIPES.address());
    }

    private void demo(Context ctx) {
        Outcome<Records> shown = looked();
        if (shown instanceof Outcome.Ok) {
            Answers.seeOther(ctx, Ways.on(ctx).orElse(Section.RECIPES.address()));
            return;
        }
        Problem problem = shown.problems().get(0);
        StartPage page = page(WorkshopForm.EMPTY);
        Notice why = Notice.of("The demo workshop cannot be shown. " + Sentences.two(problem));
        Answers.form(ctx, PAGE, page.telling(why));
    }

    private Outcome<Records> looked() {
        try {
            return shop.lookRound(DemoWorkshop::fill);
        } catch (RecordsTrouble e) {
            return Outcome.refused(e.problem());
        }
    }

    private void back(Context ctx) {
        shop.backToMine();
        Answers.seeOther(ctx, Ways.on(ctx).orElse("/"));
    }
}
