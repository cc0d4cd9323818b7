package lyewright.web.people;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import lyewright.formula.NameRules;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.Records;
import lyewright.records.people.LetIn;
import lyewright.records.people.Person;
import lyewright.records.store.Author;
import lyewright.web.Answers;
import lyewright.web.Doors;
import lyewright.web.Frame;
import lyewright.web.Refused;
import lyewright.web.SentField;
import lyewright.web.Shop;
import lyewright.web.Visitor;
import lyewright.web.Visits;
import lyewright.web.Ways;

/** How somebody comes in: by a code that a maker shows them, or by name and password. */
final class StrangerPages {

    private static final String PAGE = "people/stranger.jte";
    private static final int TOO_MANY = 429;
    /** From one place: whoever guesses at somebody's name elsewhere does not keep them out. */
    private static final int MOST_OF_A_NAME = 10;

    /** From wherever, for those who guess from many places; nobody mistypes as often. */
    private static final int MOST_OF_A_NAME_ANYWHERE = 200;

    private static final int MOST_OF_A_PLACE = 30;

    /** Each waits for its turn with a thread, of which most must be left for pages. */
    private static final int MOST_AT_ONCE = 6;

    private static final int LONGEST_FIELD = 500;

    private final Shop shop;
    private final Doors doors;
    private final CodeBook codes;
    private final Semaphore atOnce = new Semaphore(MOST_AT_ONCE);
    private final Guesses ofName;
    private final Guesses ofNameAnywhere;
    private final Guesses ofPlace;

    StrangerPages(Shop shop, Doors doors, CodeBook codes) {
        this.shop = shop;
        this.doors = doors;
        this.codes = codes;
        this.ofName = new Guesses(MOST_OF_A_NAME, shop.clock());
        this.ofNameAnywhere = new Guesses(MOST_OF_A_NAME_ANYWHERE, shop.clock());
        this.ofPlace = new Guesses(MOST_OF_A_PLACE, shop.clock());
    }

    void routes(RoutesConfig routes) {
        routes.get(Visits.CODE, ctx -> ask(ctx, false));
        routes.post(Visits.CODE, this::pair);
        routes.get(Visits.SIGN_IN, ctx -> ask(ctx, true));
        routes.post(Visits.SIGN_IN, this::signIn);
    }

    private void ask(Context ctx, boolean signIn) {
        elsewhere(signIn);
        String code = Optional.ofNullable(ctx.queryParam("code"))
                .filter(typed -> typed.length() <= LONGEST_FIELD)
                .orElse("");
        String name = signIn ? "" : BrowserName.of(ctx.userAgent());
        Answers.page(ctx, PAGE, page(ctx, signIn, code, name));
    }

    /** Where everybody signs in at any door nothing is asked of who sits at the desk, and a code is no way in without a door. */
    private void elsewhere(boolean signIn) {
        if (Visitor.now().isAtDesk()) {
            throw Refused.notHere(
                    "Nobody is asked who they are at the computer itself.",
                    "Other devices are let in under Settings, People and devices.");
        }
        if (signIn && !doors.signIn()) {
            throw Refused.notHere(
                    "Nobody signs in here.", "Ask a maker for a code and type it at " + Visits.CODE + ".");
        }
    }

    private StrangerPage page(Context ctx, boolean signIn, String code, String name) {
        String on = Ways.on(ctx).or(() -> Ways.wanted(ctx)).orElse("/");
        Frame frame = Frame.outside(signIn ? "Sign in" : "Let this device in").withStyle("people.css");
        return new StrangerPage(frame, signIn, code, name, on, List.of(), doors.isSecret(ctx));
    }

    private void pair(Context ctx) {
        elsewhere(false);
        String code = field(ctx, "code");
        String device = field(ctx, "device").strip();
        StrangerPage page = page(ctx, false, code, device);
        if (!ofPlace.mayTry(Place.of(ctx))) {
            tooMany(ctx, page, "Too many codes were tried from here. Wait a quarter of an hour.");
            return;
        }
        Optional<Problem> unnamed = NameRules.check("device", "the device's name", device);
        if (unnamed.isPresent()) {
            refuse(ctx, page, unnamed.get().sentence());
            return;
        }
        Optional<CodeBook.Shown> found = codes.use(code, device, Place.of(ctx));
        if (found.isEmpty()) {
            refuse(
                    ctx,
                    page,
                    "No such code is open. Look at it again, or ask for a new one: a code is good for ten minutes and one device, and five wrong ones end it.");
            return;
        }
        ofPlace.right(Place.of(ctx));
        CodeBook.Shown shown = found.get();
        letIn(ctx, records(shown.by()).devices().letIn(shown.person().id(), device), page, () -> codes.giveBack(shown));
    }

    private void signIn(Context ctx) {
        elsewhere(true);
        if (!atOnce.tryAcquire()) {
            StrangerPage page = page(ctx, true, "", field(ctx, "name").strip());
            tooMany(ctx, page, "Too many sign in at once. Try again in a moment.");
            return;
        }
        try {
            check(ctx);
        } finally {
            atOnce.release();
        }
    }

    private void check(Context ctx) {
        String name = field(ctx, "name").strip();
        String place = Place.of(ctx);
        String key = NameRules.asRead(name);
        String here = place + " " + key;
        StrangerPage page = page(ctx, true, "", name);
        if (!ofPlace.mayTry(place) || !ofName.mayTry(here) || !ofNameAnywhere.mayTry(key)) {
            tooMany(ctx, page, "Too many passwords were tried. Wait a quarter of an hour.");
            return;
        }
        Optional<Person> person = records(Author.DESK)
                .passwords()
                .check(name, Optional.ofNullable(ctx.formParam("password")).orElse(""));
        if (person.isEmpty()) {
            refuse(ctx, page, "This name and this password do not belong together.");
            return;
        }
        ofName.right(here);
        ofNameAnywhere.right(key);
        ofPlace.right(place);
        leaveBefore(ctx);
        Author author = new Author(person.get().id(), Optional.empty());
        letIn(ctx, records(author).devices().signIn(BrowserName.of(ctx.userAgent())), page, () -> {});
    }

    /** Whoever signs in where somebody is signed in already comes in their stead: the browser forgets what it showed before. */
    private void leaveBefore(Context ctx) {
        Records any = records(Author.DESK);
        DeviceCookie.shown(ctx)
                .flatMap(any.devices()::known)
                .ifPresent(device -> records(new Author(device.person().id(), Optional.of(device.id())))
                        .devices()
                        .remove(device.id()));
    }

    private void letIn(Context ctx, Outcome<LetIn> letIn, StrangerPage page, Runnable otherwise) {
        if (!(letIn instanceof Outcome.Ok<LetIn> ok)) {
            otherwise.run();
            List<String> troubles =
                    letIn.problems().stream().map(Problem::sentence).toList();
            Answers.form(ctx, PAGE, page.with(troubles));
            return;
        }
        DeviceCookie.give(ctx, doors, ok.value().token());
        Answers.seeOther(ctx, page.on());
    }

    private static void refuse(Context ctx, StrangerPage page, String trouble) {
        Answers.form(ctx, PAGE, page.with(List.of(trouble)));
    }

    private static void tooMany(Context ctx, StrangerPage page, String trouble) {
        ctx.header("Retry-After", String.valueOf(Guesses.A_WHILE.toSeconds()));
        Answers.page(ctx.status(TOO_MANY), PAGE, page.with(List.of(trouble)));
    }

    private Records records(Author author) {
        return shop.always(false).records().as(author);
    }

    private static String field(Context ctx, String name) {
        return SentField.of(ctx, name, LONGEST_FIELD);
    }
}
