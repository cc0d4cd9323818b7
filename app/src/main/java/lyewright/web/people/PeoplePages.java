package lyewright.web.people;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.Records;
import lyewright.records.RecordsTrouble;
import lyewright.records.people.Person;
import lyewright.records.people.Role;
import lyewright.web.Answers;
import lyewright.web.Doors;
import lyewright.web.Feature;
import lyewright.web.Frame;
import lyewright.web.NetworkDoor;
import lyewright.web.Notice;
import lyewright.web.Refused;
import lyewright.web.Section;
import lyewright.web.SentField;
import lyewright.web.Shop;
import lyewright.web.Visitor;
import lyewright.web.Visits;

/** Who works here, at which devices, and the door that those come by. */
public final class PeoplePages implements Feature {

    static final String ADDRESS = "/settings/people";

    private static final String PAGE = "people/people.jte";
    private static final int LONGEST_FIELD = 2_000;
    private static final String CODE_PAGE = "people/code.jte";
    private static final PeoplePage.Added NOBODY = new PeoplePage.Added("", false);

    private final Shop shop;
    private final Doors doors;
    private final Later network;
    private final CodeBook codes;
    private final OwnPassword own;

    /** A server's door is there only once the server is, which asks for its pages first. */
    @FunctionalInterface
    public interface Later {

        /** The door, once the server runs. */
        NetworkDoor door();
    }

    /**
     * The pages of a workshop's people.
     *
     * @param shop whose
     * @param doors the names and rules of its doors
     * @param network the door for other devices
     */
    public PeoplePages(Shop shop, Doors doors, Later network) {
        this.shop = shop;
        this.doors = doors;
        this.network = network;
        this.codes = new CodeBook(shop.clock());
        this.own = new OwnPassword(shop);
    }

    @Override
    public void routes(RoutesConfig routes) {
        new StrangerPages(shop, doors, codes).routes(routes);
        new MePages(shop, doors, own).routes(routes);
        routes.get(ADDRESS, this::open);
        routes.post(ADDRESS, this::add);
        routes.post(ADDRESS + "/door/open", this::openDoor);
        routes.post(ADDRESS + "/door/shut", this::shutDoor);
        routes.post(ADDRESS + "/devices/{id}/out", this::showOut);
        routes.get(ADDRESS + "/codes/{ref}", ctx -> Answers.page(ctx, CODE_PAGE, code(ctx)));
        routes.get(ADDRESS + "/codes/{ref}/fate", this::fate);
        routes.post(
                ADDRESS + "/{id}",
                ctx -> done(
                        ctx,
                        "changed",
                        records -> records.people()
                                .change(id(ctx), field(ctx, "name").strip(), role(ctx))));
        routes.post(ADDRESS + "/{id}/remove", this::remove);
        routes.post(
                ADDRESS + "/{id}/put-back",
                ctx -> done(ctx, "back", records -> records.people().putBack(id(ctx))));
        routes.post(
                ADDRESS + "/{id}/password",
                ctx -> done(
                        ctx,
                        "password",
                        records ->
                                ownTyped(ctx).then(may -> records.passwords().set(id(ctx), field(ctx, "password")))));
        routes.post(ADDRESS + "/{id}/code", this::showCode);
    }

    /** A password outlasts a device that is shown out, so that whoever only found one cannot give themselves one. */
    private Outcome<Boolean> ownTyped(Context ctx) {
        return Visitor.now()
                .device()
                .map(device -> own.isTyped(device.person(), field(ctx, "own")))
                .orElseGet(() -> Outcome.ok(true));
    }

    private PeopleView view() {
        return new PeopleView(shop, doors, network.door());
    }

    private static String id(Context ctx) {
        return ctx.pathParam("id");
    }

    private static Role role(Context ctx) {
        return field(ctx, "may").equals("maker") ? Role.MAKER : Role.HELPER;
    }

    private static String field(Context ctx, String name) {
        return SentField.of(ctx, name, LONGEST_FIELD);
    }

    private void open(Context ctx) {
        inOwn();
        Answers.page(ctx, PAGE, view().page(notice(ctx), NOBODY, List.of()));
    }

    /** Nobody but an invented maker works in the demo workshop, and no device comes into it. */
    private void inOwn() {
        if (shop.showsDemo()) {
            throw Refused.notHere(
                    "You are looking round the demo workshop, which no other device comes into.",
                    "Go back to your own workshop first.");
        }
    }

    private Optional<Notice> notice(Context ctx) {
        String who = Optional.ofNullable(ctx.queryParam("who")).orElse("");
        String name = shop.records().people().find(who).map(Person::name).orElse("They");
        return switch (Optional.ofNullable(ctx.queryParam("done")).orElse("")) {
            case "added" -> Optional.of(Notice.of(name + " works here now."));
            case "changed" -> Optional.of(Notice.of(name + " was changed."));
            case "back" -> Optional.of(Notice.of(name + " is back. Their devices have to be let in anew."));
            case "password" -> Optional.of(Notice.of(name + " has a new password. Tell it them, and nobody else."));
            case "removed" ->
                Optional.of(Notice.withUndo(
                        name + " does not work here any more; none of their devices is let in.",
                        "Put them back",
                        ADDRESS + "/" + who + "/put-back"));
            case "out" -> Optional.of(Notice.of("The device is out. What it wrote stays."));
            case "opened" -> Optional.of(Notice.of("The door for other devices is open, to those that you let in."));
            case "shut" -> Optional.of(Notice.of("The door is shut: this computer answers to itself alone."));
            default -> Optional.empty();
        };
    }

    private void add(Context ctx) {
        inOwn();
        PeoplePage.Added added = new PeoplePage.Added(field(ctx, "name"), role(ctx) == Role.MAKER);
        Outcome<Person> person =
                kept(records -> records.people().add(added.name().strip(), role(ctx)));
        if (person instanceof Outcome.Ok<Person> ok) {
            Answers.seeOther(ctx, ADDRESS + "?done=added&who=" + ok.value().id());
            return;
        }
        refuse(ctx, added, person.problems());
    }

    private void done(Context ctx, String word, Function<Records, Outcome<Person>> work) {
        inOwn();
        Outcome<Person> person = kept(work);
        if (person instanceof Outcome.Ok<Person> ok) {
            Answers.seeOther(
                    ctx, ADDRESS + "?done=" + word + "&who=" + ok.value().id());
            return;
        }
        refuse(ctx, NOBODY, person.problems());
    }

    private <T> Outcome<T> kept(Function<Records, Outcome<T>> work) {
        try {
            return work.apply(shop.records());
        } catch (RecordsTrouble e) {
            // a full disk must not cost what was typed
            return Outcome.refused(e.problem());
        }
    }

    private void refuse(Context ctx, PeoplePage.Added added, List<Problem> problems) {
        List<String> troubles = problems.stream().map(Problem::sentence).toList();
        Answers.form(ctx, PAGE, view().page(Optional.empty(), added, troubles));
    }

    private void remove(Context ctx) {
        done(ctx, "removed", records -> records.people().remove(id(ctx)));
    }

    private void showOut(Context ctx) {
        inOwn();
        Outcome<?> out = kept(records -> records.devices().remove(id(ctx)));
        if (out instanceof Outcome.Refused) {
            refuse(ctx, NOBODY, out.problems());
            return;
        }
        Answers.seeOther(ctx, ADDRESS + "?done=out");
    }

    private void openDoor(Context ctx) {
        inOwn();
        Outcome<List<String>> opened = doorOpen();
        if (opened instanceof Outcome.Refused) {
            refuse(ctx, NOBODY, opened.problems());
            return;
        }
        Answers.seeOther(ctx, ADDRESS + "?done=opened");
    }

    private Outcome<List<String>> doorOpen() {
        return network.door().isOpen()
                ? Outcome.ok(network.door().addresses())
                : kept(records -> KeptOpen.open(network.door(), records.devices()));
    }

    private void shutDoor(Context ctx) {
        inOwn();
        Outcome<Boolean> kept = kept(records -> records.devices().letKnock(false));
        if (kept instanceof Outcome.Refused) {
            refuse(ctx, NOBODY, kept.problems());
            return;
        }
        // the answer goes out first, for it may have come by that very door
        Answers.seeOther(ctx, ADDRESS + "?done=shut");
        Thread shutting = new Thread(() -> network.door().shut(), "shut");
        shutting.setDaemon(true);
        shutting.start();
    }

    private void showCode(Context ctx) {
        inOwn();
        Optional<Person> person = shop.records().people().list().stream()
                .filter(one -> one.id().equals(id(ctx)))
                .findFirst();
        if (person.isEmpty()) {
            throw Refused.notHere("There is nobody of that kind here.", "Go back to the people.");
        }
        if (!doors.signIn()) {
            Outcome<List<String>> opened = doorOpen();
            if (opened instanceof Outcome.Refused) {
                refuse(ctx, NOBODY, opened.problems());
                return;
            }
        }
        CodeBook.Shown shown = codes.show(person.get(), shop.records().author());
        Answers.seeOther(ctx, ADDRESS + "/codes/" + shown.ref());
    }

    /** Once it is no longer open, all of what was shown gives way to what became of it. */
    private void fate(Context ctx) {
        CodePage page = code(ctx);
        if (!page.fate().equals("open")) {
            ctx.header("HX-Retarget", "#code-shown").header("HX-Reswap", "outerHTML");
        }
        Answers.page(ctx, "people/fate.jte", page);
    }

    private CodePage code(Context ctx) {
        CodeBook.Shown shown = codes.look(ctx.pathParam("ref"))
                .orElseThrow(() -> Refused.notHere(
                        "This code is not known any more.", "Show another one under Settings, People and devices."));
        Frame frame = shop.frame("A code for a device", Section.SETTINGS).withStyle("people.css");
        List<String> addresses = doors.signIn()
                ? doors.address().map(address -> List.of(address.toString())).orElse(List.of())
                : network.door().addresses();
        return new CodePage(
                frame,
                shown.ref(),
                shown.code().substring(0, 4) + " " + shown.code().substring(4),
                shown.person().name() + ". " + Words.may(shown.person().role()),
                shown.person().id(),
                shown.fate().name().toLowerCase(Locale.ROOT),
                shown.told(),
                addresses,
                addresses.stream()
                        .limit(1)
                        .map(address -> QrPicture.of(address + Visits.CODE + "?code=" + shown.code()))
                        .toList(),
                network.door().isSecret() || doors.isSecret(ctx));
    }
}
