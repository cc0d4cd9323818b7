package lyewright.web.stores;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lyewright.formula.NameRules;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.Records;
import lyewright.records.RecordsTrouble;
import lyewright.web.Answers;
import lyewright.web.Feature;
import lyewright.web.Frame;
import lyewright.web.Notice;
import lyewright.web.OpenedIn;
import lyewright.web.Refused;
import lyewright.web.Section;
import lyewright.web.SentField;
import lyewright.web.Shop;
import lyewright.words.Sentences;
import org.jspecify.annotations.Nullable;

/**
 * Adding, changing, removing and undoing: the same for everything in the stores.
 *
 * @param <K> the thing as it is kept
 * @param <F> the thing as it is typed
 */
abstract class ThingPages<K, F> implements Feature {

    /** So many changes can be undone at a time; a restart forgets them. */
    private static final int REMEMBERED = 200;

    private static final int LONGEST_FIELD = 2_000;

    private final Shop shop;
    private final Thing thing;
    private final Map<String, K> before = new LinkedHashMap<>();

    ThingPages(Shop shop, Thing thing) {
        this.shop = shop;
        this.thing = thing;
    }

    final Shop shop() {
        return shop;
    }

    @Override
    public void routes(RoutesConfig routes) {
        String all = thing.address();
        String one = all + "/{id}";
        routes.get(all + "/new", this::openNew);
        routes.post(all, this::add);
        routes.get(one, this::open);
        routes.post(one, this::change);
        routes.post(one + "/remove", ctx -> step(ctx, remove(id(ctx)), Deed.REMOVED));
        routes.post(one + "/put-back", ctx -> step(ctx, putBack(id(ctx)), Deed.BACK));
        routes.post(one + "/undo", this::undo);
    }

    /** Shows the form of something new, or asks first what it is. */
    abstract void openNew(Context ctx);

    /** What was sent. */
    abstract F sent(Context ctx);

    /** What is kept, as it would be typed. */
    abstract F form(K kept);

    /** Keeps what was typed; problems name the form's fields. */
    abstract Outcome<K> save(Optional<String> id, F form);

    /** Keeps what was kept before. */
    abstract Outcome<K> restore(String id, K previous);

    abstract Optional<K> find(Records records, String id);

    private Optional<K> find(String id) {
        return find(shop.records(), id);
    }

    /** Everything that was not removed. */
    abstract List<K> all();

    abstract Outcome<K> remove(String id);

    abstract Outcome<K> putBack(String id);

    abstract String idOf(K kept);

    abstract String nameOf(K kept);

    /** What it is to be called. */
    abstract String nameTyped(F form);

    /** The field that is typed in. */
    abstract String nameField();

    /** Another one that is there already by that name. */
    private Optional<K> namesake(Optional<String> id, F form) {
        String name = nameTyped(form).strip();
        return all().stream()
                .filter(kept -> !id.equals(Optional.of(idOf(kept))))
                .filter(kept -> !name.isEmpty() && NameRules.areSame(nameOf(kept), name))
                .findFirst();
    }

    /** What every form has; where its name is taken, with the way to whose it is. */
    final FormHead head(
            Frame frame, String title, F form, Standing standing, List<Problem> problems, Set<String> fields) {
        boolean named = problems.stream().anyMatch(problem -> problem.path().equals(nameField()));
        Optional<String> other = named
                ? namesake(standing.id(), form).map(kept -> thing.address() + "/" + idOf(kept))
                : Optional.empty();
        return FormHead.of(frame, title, thing, standing, problems, fields).withNamesake(other);
    }

    /** Answers with the form; with 422 where there is a problem. */
    abstract void show(Context ctx, F form, Standing standing, List<Problem> problems);

    static String id(Context ctx) {
        return ctx.pathParam("id");
    }

    /** A field as sent, without what no field needs. */
    static String field(Context ctx, String name) {
        return SentField.of(ctx, name, LONGEST_FIELD);
    }

    final void answer(Context ctx, String template, Object page, List<Problem> problems) {
        if (problems.isEmpty()) {
            Answers.page(ctx, template, page);
        } else {
            Answers.form(ctx, template, page);
        }
    }

    private boolean isThere(String id) {
        return all().stream().anyMatch(kept -> idOf(kept).equals(id));
    }

    private void add(Context ctx) {
        F form = sent(ctx);
        OpenedIn.check(ctx, shop);
        Outcome<K> saved = kept(Optional.empty(), form);
        if (saved instanceof Outcome.Ok<K> ok) {
            Answers.seeOther(ctx, Deed.ADDED.address(thing, idOf(ok.value())));
        } else {
            show(ctx, form, Standing.NEW, saved.problems());
        }
    }

    private Outcome<K> kept(Optional<String> id, F form) {
        try {
            return save(id, form);
        } catch (RecordsTrouble e) {
            // a full disk must not cost what was typed
            return Outcome.refused(e.problem());
        }
    }

    private void open(Context ctx) {
        K kept = kept(ctx);
        if (!isThere(id(ctx))) {
            Frame frame = shop.frame("Removed", Section.STORES).withStyle("stores.css");
            ctx.status(HttpStatus.GONE);
            Answers.page(
                    ctx,
                    "stores/removed.jte",
                    new RemovedPage(frame, nameOf(kept), thing.address() + "/" + id(ctx) + "/put-back"));
            return;
        }
        F form = form(kept);
        show(ctx, form, Standing.of(id(ctx), form), List.of());
    }

    private K kept(Context ctx) {
        return find(id(ctx))
                .orElseThrow(() -> shop.notHere(
                        thing.word(),
                        records -> find(records, id(ctx)).isPresent(),
                        "There is no such " + thing.word() + ".",
                        "Go back to the stores."));
    }

    private void change(Context ctx) {
        String id = id(ctx);
        K kept = kept(ctx);
        F form = sent(ctx);
        if (!isThere(id)) {
            show(ctx, form, Standing.NEW, List.of(removedMeanwhile(kept)));
            return;
        }
        Standing now = Standing.of(id, form(kept));
        if (!field(ctx, "seen").equals(now.seen())) {
            show(ctx, form, now, List.of(changedMeanwhile(kept)));
            return;
        }
        Outcome<K> saved = kept(Optional.of(id), form);
        if (saved instanceof Outcome.Ok<K> ok) {
            remember(id, kept);
            Answers.seeOther(ctx, Deed.CHANGED.address(thing, idOf(ok.value())));
        } else {
            show(ctx, form, now, saved.problems());
        }
    }

    private Problem removedMeanwhile(K kept) {
        return new Problem(
                "",
                "'" + nameOf(kept) + "' was removed in the meantime, so nothing was saved",
                "what you typed is still here; saving now adds it as a new " + thing.word());
    }

    private Problem changedMeanwhile(K kept) {
        return new Problem(
                "",
                "'" + nameOf(kept) + "' was changed in another window after this form was opened, so nothing was saved",
                "what you typed is still here; saving again puts it in place of that change");
    }

    private void undo(Context ctx) {
        String id = id(ctx);
        K previous = recall(id);
        if (previous == null) {
            throw new Refused(
                    409,
                    "This change cannot be undone any more: Lyewright was started anew since.",
                    "Change it back by hand under Stores.");
        }
        step(ctx, restore(id, previous), Deed.UNDONE);
    }

    private void step(Context ctx, Outcome<K> outcome, Deed deed) {
        if (outcome instanceof Outcome.Ok<K> ok) {
            Answers.seeOther(ctx, deed.address(thing, idOf(ok.value())));
            return;
        }
        Problem problem = outcome.problems().get(0);
        throw new Refused(409, Sentences.whole(problem.what()), Sentences.whole(problem.remedy()));
    }

    private void remember(String id, K previous) {
        synchronized (before) {
            before.remove(id);
            before.put(id, previous);
            if (before.size() > REMEMBERED) {
                before.remove(before.keySet().iterator().next());
            }
        }
    }

    private @Nullable K recall(String id) {
        synchronized (before) {
            return before.remove(id);
        }
    }

    /** Tells of a deed where it is still so. */
    final Optional<Notice> notice(Deed deed, String id) {
        return find(id).filter(kept -> isThere(id) == deed.leavesItThere())
                .map(kept -> deed.notice(thing, id, nameOf(kept)));
    }
}
