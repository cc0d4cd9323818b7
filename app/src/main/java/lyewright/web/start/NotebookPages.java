package lyewright.web.start;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import lyewright.formula.Formula;
import lyewright.formula.FormulaRules;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.RecordsTrouble;
import lyewright.records.recipe.RecipeVersion;
import lyewright.records.setting.Workshop;
import lyewright.web.Answers;
import lyewright.web.Feature;
import lyewright.web.OpenedIn;
import lyewright.web.Section;
import lyewright.web.Shop;

/** A recipe typed as it stands in a notebook: answered while it is typed, and kept when it is wanted. */
final class NotebookPages implements Feature {

    static final String ADDRESS = "/notebook";

    private static final String PAGE = "start/notebook.jte";

    private final Shop shop;
    private final KnownNames names;
    private final KeptOnce once = new KeptOnce();

    NotebookPages(Shop shop, KnownNames names) {
        this.shop = shop;
        this.names = names;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get(
                ADDRESS,
                ctx -> show(ctx, NotebookForm.empty(Bench.of(shop, names).unit())));
        routes.post(ADDRESS, this::turned);
        routes.post(ADDRESS + "/answer", this::answer);
        routes.post(ADDRESS + "/keep", this::keep);
    }

    private NotebookView view(NotebookForm form) {
        return NotebookView.of(form, Bench.of(shop, names, form), !shop.started());
    }

    private NotebookPage page(NotebookView view) {
        return new NotebookPage(Start.frame(shop, "Notebook"), view);
    }

    private void show(Context ctx, NotebookForm form) {
        Answers.page(ctx, PAGE, page(view(form)));
    }

    /** By a button: answered as a whole page, turned from text to boxes or back, or with the example. */
    private void turned(Context ctx) {
        NotebookForm form = turned(
                NotebookForm.of(ctx),
                Optional.ofNullable(ctx.formParam("turn")).orElse(""),
                Optional.ofNullable(ctx.formParam("choose")).orElse(""));
        NotebookView view = view(form);
        if (view.hasTroubles()) {
            Answers.form(ctx, PAGE, page(view));
        } else {
            Answers.page(ctx, PAGE, page(view));
        }
    }

    private NotebookForm turned(NotebookForm typed, String turn, String chosen) {
        return switch (turn) {
            case "rows" -> typed.asRows(names.now());
            case "text" -> typed.asText();
            case "example" -> typed.withExample(NotebookView.EXAMPLE);
            case "back" -> typed.withoutExample();
            default -> typed.withChosen(chosen);
        };
    }

    private void answer(Context ctx) {
        Answers.page(ctx, "start/live.jte", view(NotebookForm.of(ctx)));
    }

    private void keep(Context ctx) {
        OpenedIn.check(ctx, shop);
        NotebookForm form = NotebookForm.of(ctx);
        NotebookView view = view(form);
        Outcome<String> kept = keep(form, view);
        if (kept instanceof Outcome.Ok<String> ok) {
            Answers.seeOther(ctx, address(ok.value(), view));
        } else {
            Answers.form(ctx, PAGE, page(view.with(kept.problems())));
        }
    }

    /** The recipe's page, where it is made next in the mould that was said here. */
    private static String address(String recipe, NotebookView view) {
        StringBuilder address = new StringBuilder(Section.RECIPES.address() + "/" + recipe + "?done=notebook");
        view.answer()
                .asked()
                .map(AskedMould::make)
                .ifPresent(make -> new TreeMap<>(make)
                        .forEach((name, text) -> address.append('&')
                                .append(name)
                                .append('=')
                                .append(URLEncoder.encode(text, StandardCharsets.UTF_8))));
        return address.toString();
    }

    private Outcome<String> keep(NotebookForm form, NotebookView view) {
        Optional<Formula> read = view.answer().reading().formula();
        List<Problem> problems = new ArrayList<>();
        Optional<Formula> named = read.map(formula -> named(formula, form, view));
        if (named.isEmpty()) {
            problems.add(new Problem("text", "there is no whole recipe yet", "see to what is said beside the text"));
        } else if (named.get().recipe().isEmpty()) {
            problems.add(
                    new Problem("recipe", "the recipe has no name yet", "write one here, or on the text's first line"));
        } else {
            problems.addAll(FormulaRules.check(named.get(), Tables.bundled()));
        }
        WorkshopForm workshop =
                new WorkshopForm(form.keep().workshop(), form.keep().units(), List.of());
        if (!shop.started()) {
            workshop.trouble().ifPresent(problems::add);
        }
        if (!problems.isEmpty()) {
            return new Outcome.Refused<>(problems);
        }
        Formula formula = named.orElseThrow();
        return once.keep(
                shop.records(), new KeptOnce.Sent(form.keep().token(), formula), () -> kept(formula, workshop));
    }

    private Outcome<RecipeVersion> kept(Formula formula, WorkshopForm workshop) {
        try {
            if (!shop.started()) {
                Outcome<Workshop> mine = shop.startMine(workshop.workshop());
                if (mine instanceof Outcome.Refused) {
                    return new Outcome.Refused<>(mine.problems());
                }
            }
            return shop.records().recipes().add(formula);
        } catch (RecordsTrouble e) {
            return Outcome.refused(e.problem());
        }
    }

    /** What is typed beside it goes before what the text says; neither leaves it without a name. */
    private static Formula named(Formula formula, NotebookForm form, NotebookView view) {
        String name = form.keep().name().strip();
        return formula.as(name.isEmpty() ? view.nameInText() : name, formula.version());
    }
}
