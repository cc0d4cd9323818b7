package lyewright.web.why;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lyewright.makingsheet.Comparison;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.web.Answers;
import lyewright.web.Feature;
import lyewright.web.Frame;
import lyewright.web.Refused;
import lyewright.web.Section;
import lyewright.web.Shop;
import lyewright.web.WorkshopUnits;
import lyewright.web.make.Bench;
import lyewright.web.make.MakeChoice;
import lyewright.web.make.Workbench;
import lyewright.why.Reason;
import lyewright.why.Why;
import lyewright.words.ComparedShown;
import lyewright.words.Sentences;
import lyewright.words.UnitsShown;

/** Why a figure is what it is: the same parameters as Make, and the figure's path. */
public final class WhyPages implements Feature {

    private static final int LONGEST = 300;

    private final Shop shop;
    private final Workbench workbench;
    private final TypedWhy typed;

    /**
     * Why, in a workshop.
     *
     * @param shop the workshop that is shown
     */
    public WhyPages(Shop shop) {
        this.shop = shop;
        this.workbench = new Workbench(shop);
        this.typed = new TypedWhy(shop);
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/why", this::show);
        routes.get("/why/change", this::change);
        typed.routes(routes);
    }

    private void show(Context ctx) {
        MakeChoice choice = MakeChoice.of(ctx.queryParamMap());
        WhyAsked asked = ctx.queryParam(MakeChoice.SWAPPED) == null ? asked(choice) : swapped(choice);
        Why why = Why.of(asked.sheet());
        String figure = text(ctx, "figure");
        if (figure.isBlank()) {
            list(ctx, asked, why);
            return;
        }
        Outcome<Reason> reason = why.reason(figure);
        if (reason instanceof Outcome.Ok<Reason> known) {
            reason(ctx, asked, ReasonShown.of(known.value(), asked.why(), asked.sheet(), units()));
        } else {
            unknown(ctx, asked, why, reason.problems().get(0));
        }
    }

    /** The sheet with the other oil that is tried. */
    private WhyAsked swapped(MakeChoice choice) {
        Bench bench = workbench.layEvenDeleted(choice);
        return ofBench(bench, bench.swapped(), bench.choice()::whyOfSwap);
    }

    private static WhyAsked ofBench(Bench bench, Outcome<MakingSheet> sheet, UnaryOperator<String> why) {
        return new WhyAsked(
                bench.recipe().name(),
                bench.version().number(),
                bench.choice(),
                "/make?" + bench.choice().query(),
                sheet(sheet),
                why);
    }

    /** Both sides of a comparison, each as its own page has it; or a sheet without and with the other oil that is tried. */
    private void change(Context ctx) {
        MakeChoice choice = MakeChoice.of(ctx.queryParamMap());
        boolean swap = !choice.text("recipe").isEmpty();
        WhyAsked a = asked(swap ? choice : ofRecipe(text(ctx, "a"), text(ctx, "of-a")));
        WhyAsked b = swap ? swapped(choice) : asked(ofRecipe(text(ctx, "b"), text(ctx, "of-b")));
        String row = text(ctx, "figure");
        ReasonShown reason = Comparison.of(a.sheet(), b.sheet())
                .row(row)
                .flatMap(known -> new ChangeShown(
                                known,
                                new ComparedShown(units()),
                                new ChangeShown.Side("A", named(a), a),
                                new ChangeShown.Side("B", swap ? "with the other oil" : named(b), b))
                        .reason())
                .orElseThrow(() -> Refused.notHere(
                        "Nothing that changes from A to B goes by “" + row + "”.", "Compare the two again."));
        if (Answers.isInPlace(ctx)) {
            Answers.page(ctx, "why/panel.jte", reason);
        } else {
            Answers.page(
                    ctx,
                    "why/change.jte",
                    new ChangePage(frame(reason.title()), swap ? b.back() : back(ctx, a, b), reason));
        }
    }

    private static MakeChoice ofRecipe(String recipe, String version) {
        return MakeChoice.of(Map.of("recipe", List.of(recipe), "version", List.of(version)));
    }

    private static String named(WhyAsked asked) {
        return asked.recipe() + ", version " + asked.version();
    }

    private static String back(Context ctx, WhyAsked a, WhyAsked b) {
        String first = MakeChoice.encoded(text(ctx, "a"));
        String second = MakeChoice.encoded(text(ctx, "b"));
        return first.equals(second)
                ? "/recipes/" + first + "/compare?a=" + a.version() + "&b=" + b.version()
                : "/recipes/compare?a=" + first + "&b=" + second;
    }

    private WhyAsked asked(MakeChoice choice) {
        if (choice.asksForASheet()) {
            Bench bench = workbench.layEvenDeleted(choice);
            return ofBench(bench, bench.sheet(), bench.choice()::why);
        }
        Workbench.OfRecipe recipe = workbench.recipe(choice);
        return new WhyAsked(
                recipe.recipe().name(),
                recipe.version().number(),
                recipe.choice(),
                "/recipes/" + recipe.recipe().id() + "/versions/"
                        + recipe.version().number(),
                sheet(recipe.sheet()),
                recipe.choice()::why);
    }

    private static MakingSheet sheet(Outcome<MakingSheet> sheet) {
        if (sheet instanceof Outcome.Ok<MakingSheet> ok) {
            return ok.value();
        }
        Problem problem = sheet.problems().get(0);
        throw new Refused(422, "There is no such sheet: " + problem.what() + ".", Sentences.whole(problem.remedy()));
    }

    private static String text(Context ctx, String name) {
        String text = Optional.ofNullable(ctx.queryParam(name)).orElse("");
        return text.length() > LONGEST ? text.substring(0, LONGEST) : text;
    }

    private void reason(Context ctx, WhyAsked asked, ReasonShown reason) {
        if (Answers.isInPlace(ctx)) {
            Answers.page(ctx, "why/panel.jte", reason);
        } else {
            Answers.page(ctx, "why/why.jte", new WhyPage(frame(reason.title()), asked, reason));
        }
    }

    private void list(Context ctx, WhyAsked asked, Why why) {
        FigureList list = FigureList.of(why.all(), asked.choice(), text(ctx, "q"), text(ctx, "in"));
        if (Answers.isInPlace(ctx)) {
            Answers.page(ctx, "why/list.jte", list);
        } else {
            Answers.page(
                    ctx, "why/figures.jte", new FiguresPage(frame("Every figure of " + asked.recipe()), asked, list));
        }
    }

    /** In place too it is said in full: whoever asked sees the answer where they asked. */
    private void unknown(Context ctx, WhyAsked asked, Why why, Problem problem) {
        ctx.status(HttpStatus.NOT_FOUND);
        Answers.page(
                ctx,
                "why/unknown.jte",
                new UnknownPage(
                        frame("No such figure"),
                        asked.choice(),
                        Sentences.whole(problem.what()),
                        near(why, problem, asked.choice())));
    }

    /** The remedy names what was near; whatever of its words is a figure is offered. */
    private static List<FigureList.Line> near(Why why, Problem problem, MakeChoice choice) {
        String names = problem.remedy()
                .replaceFirst("^.*?(?:did you mean|such as) ", "")
                .replaceFirst("\\?$", "");
        return Arrays.stream(names.split(", | or "))
                .map(String::strip)
                .flatMap(name -> why.reason(name) instanceof Outcome.Ok<Reason> ok
                        ? java.util.stream.Stream.of(ok.value())
                        : java.util.stream.Stream.empty())
                .map(reason -> new FigureList.Line(reason.title(), reason.text(), choice.why(reason.path())))
                .distinct()
                .toList();
    }

    private Frame frame(String title) {
        Frame frame = shop.frame(title, Section.MAKE).withStyle("why.css");
        return frame.withScript("why.js");
    }

    private UnitsShown units() {
        return WorkshopUnits.of(shop.workshop());
    }
}
