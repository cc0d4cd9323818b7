package lyewright.web.why;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.web.Answers;
import lyewright.web.Frame;
import lyewright.web.Section;
import lyewright.web.Shop;
import lyewright.web.WorkshopUnits;
import lyewright.web.make.MakeChoice;
import lyewright.web.recipe.DraftSheets;
import lyewright.web.start.NotebookSheets;
import lyewright.why.Reason;
import lyewright.why.Why;

/**
 * Why a figure of what is being typed is what it is. What is typed has no address, and may be newer than what is kept of it: so a figure is
 * asked about with the whole form, and the answer is reckoned from that. Nothing is kept.
 */
final class TypedWhy {

    private static final Pattern EDITOR = Pattern.compile("/recipes/(?:new|[0-9a-f-]{36}/edit)");

    private static final String FIGURE = "figure";

    /** What a button of the form itself would send. */
    private static final List<String> PRESSED = List.of(FIGURE, "do", "turn", "choose");

    private final Shop shop;
    private final DraftSheets drafts;
    private final NotebookSheets notebooks;

    TypedWhy(Shop shop) {
        this.shop = shop;
        this.drafts = new DraftSheets(shop);
        this.notebooks = new NotebookSheets(shop);
    }

    void routes(RoutesConfig routes) {
        routes.post("/why/draft", this::draft);
        // beside the notebook, which is there before any workshop
        routes.post("/notebook/why", this::notebook);
    }

    /**
     * A form that somebody types in.
     *
     * @param id the form's, which the panel's buttons belong to as well
     * @param action where its figures are asked about
     * @param back where it goes on
     * @param press the button that goes back, name and value
     */
    private record Form(String id, String action, String back, Map.Entry<String, String> press) {}

    private void draft(Context ctx) {
        String back = Optional.ofNullable(ctx.queryParam("back"))
                .filter(address -> EDITOR.matcher(address).matches())
                .orElse("/recipes/new");
        Form form = new Form("editor", "/why/draft?back=" + MakeChoice.encoded(back), back, Map.entry("do", "reckon"));
        answer(ctx, form, drafts.of(ctx));
    }

    private void notebook(Context ctx) {
        boolean mould = "mould".equals(ctx.queryParam("of"));
        Form form = new Form(
                "notebook", "/notebook/why" + (mould ? "?of=mould" : ""), "/notebook", Map.entry("turn", "answer"));
        answer(ctx, form, notebooks.of(ctx, mould));
    }

    private void answer(Context ctx, Form form, Outcome<MakingSheet> sheet) {
        String figure = Optional.ofNullable(ctx.formParam(FIGURE)).orElse("");
        Outcome<ReasonShown> reason =
                sheet.then(made -> Why.of(made).reason(figure).then(known -> Outcome.ok(reason(known, form, made))));
        if (reason instanceof Outcome.Refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        Optional<ReasonShown> shown =
                reason instanceof Outcome.Ok<ReasonShown> ok ? Optional.of(ok.value()) : Optional.empty();
        TypedPage page = new TypedPage(
                frame(shown.map(ReasonShown::title).orElse("No why yet")),
                form.id(),
                form.back(),
                form.press(),
                fields(ctx),
                shown,
                reason.problems().stream().map(Problem::sentence).toList());
        Answers.page(ctx, Answers.isInPlace(ctx) ? "why/typedPanel.jte" : "why/typed.jte", page);
    }

    private ReasonShown reason(Reason known, Form form, MakingSheet sheet) {
        return ReasonShown.posted(
                known, new ReasonShown.Posted(form.id(), form.action()), sheet, WorkshopUnits.of(shop.workshop()));
    }

    private static Map<String, List<String>> fields(Context ctx) {
        Map<String, List<String>> fields = new LinkedHashMap<>(ctx.formParamMap());
        PRESSED.forEach(fields::remove);
        return fields;
    }

    private Frame frame(String title) {
        return shop.frame(title, Section.RECIPES).with(List.of("why.css"), List.of("why.js"));
    }
}
