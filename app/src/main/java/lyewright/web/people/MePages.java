package lyewright.web.people;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
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

    private final Shop shop;
    private final Doors doors;
    private final OwnPassword own;

    MePages(Shop shop, Doors doors, OwnPassword own) {
        this.shop = shop;
        this.doors = doors;
        this.own = own;
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
        Outcome<Person> set = own.isTyped(device.person(), before)
                .then(known -> shop.records().passwords().set(device.person().id(), next));
        if (set instanceof Outcome.Refused) {
            List<String> troubles =
                    set.problems().stream().map(Problem::sentence).toList();
            Answers.form(ctx, PAGE, page(Optional.empty(), troubles));
            return;
        }
        Answers.seeOther(ctx, ADDRESS + "?done=password");
    }

    private void leave(Context ctx) {
        shop.records().devices().remove(device().id());
        DeviceCookie.takeBack(ctx, doors);
        Answers.seeOther(ctx, doors.signIn() ? Visits.SIGN_IN : Visits.CODE);
    }
}
