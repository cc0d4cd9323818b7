package lyewright.web.people;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.people.Device;
import lyewright.records.people.Person;
import lyewright.web.Answers;
import lyewright.web.Doors;
import lyewright.web.Frame;
import lyewright.web.Notice;
import lyewright.web.Refused;
import lyewright.web.Section;
import lyewright.web.Shop;
import lyewright.web.Visitor;
import lyewright.web.Visits;

/** The page of whoever was let in: who they are here, a new password, and the way out. */
final class MePages {

    static final String ADDRESS = "/me";

    private static final String PAGE = "people/me.jte";
    private static final int MOST_TRIES = 10;
    private static final Duration A_WHILE = Duration.ofMinutes(15);

    private final Shop shop;
    private final Doors doors;
    private final Guesses ofPerson;

    MePages(Shop shop, Doors doors) {
        this.shop = shop;
        this.doors = doors;
        this.ofPerson = new Guesses(MOST_TRIES, A_WHILE, shop.clock());
    }

    void routes(RoutesConfig routes) {
        routes.get(ADDRESS, ctx -> Answers.page(ctx, PAGE, page(told(ctx), List.of())));
        routes.post(ADDRESS + "/password", this::password);
        routes.post(ADDRESS + "/leave", this::leave);
    }

    private static Device device() {
        return Visitor.now()
                .device()
                .orElseThrow(() -> Refused.notHere(
                        "You sit at the computer itself and need no leave.",
                        "Other devices are let in under Settings, People and devices."));
    }

    private Optional<Notice> told(Context ctx) {
        return Optional.ofNullable(ctx.queryParam("done"))
                .filter("password"::equals)
                .map(done -> Notice.of("Your password was changed. Where you are signed in already you stay so."));
    }

    private MePage page(Optional<Notice> notice, List<String> troubles) {
        Device device = device();
        Frame frame = shop.frame("You", Section.RECIPES).withStyle("people.css");
        return new MePage(
                notice.map(frame::telling).orElse(frame),
                device.person().name(),
                Words.may(device.person().role()),
                device.name(),
                doors.signIn(),
                troubles);
    }

    private void password(Context ctx) {
        Device device = device();
        String before = Optional.ofNullable(ctx.formParam("before")).orElse("");
        String next = Optional.ofNullable(ctx.formParam("password")).orElse("");
        Outcome<Person> set = knows(device.person(), before)
                .then(known -> shop.records().passwords().set(device.person().id(), next));
        if (set instanceof Outcome.Refused) {
            List<String> troubles =
                    set.problems().stream().map(Problem::sentence).toList();
            Answers.form(ctx, PAGE, page(Optional.empty(), troubles));
            return;
        }
        Answers.seeOther(ctx, ADDRESS + "?done=password");
    }

    /** Whoever found a device lying about is not yet the person whose it is. */
    private Outcome<Boolean> knows(Person person, String before) {
        if (!ofPerson.mayTry(person.id())) {
            return Outcome.refused("too many passwords were tried", "wait a quarter of an hour");
        }
        boolean right = shop.records()
                .passwords()
                .check(person.name(), before)
                .filter(found -> found.id().equals(person.id()))
                .isPresent();
        if (!right) {
            return Outcome.refused(
                    "this is not your password as it is now", "type it again, or ask a maker for a new one");
        }
        ofPerson.right(person.id());
        return Outcome.ok(true);
    }

    private void leave(Context ctx) {
        shop.records().devices().remove(device().id());
        DeviceCookie.takeBack(ctx, doors);
        Answers.seeOther(ctx, doors.signIn() ? Visits.SIGN_IN : Visits.CODE);
    }
}
