package lyewright.web.setting;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.RecordsTrouble;
import lyewright.records.setting.Workshop;
import lyewright.web.Answers;
import lyewright.web.Feature;
import lyewright.web.Frame;
import lyewright.web.Notice;
import lyewright.web.Refused;
import lyewright.web.Section;
import lyewright.web.SentField;
import lyewright.web.Shop;
import org.jspecify.annotations.Nullable;

/** What the workshop is set to, backups, and what this is. */
public final class SettingPages implements Feature {

    static final String ADDRESS = "/settings";

    private static final int LONGEST_FIELD = 2_000;

    private final Shop shop;
    private final SettingView view;
    private final BackupPages backups;

    private volatile @Nullable Before before;

    /** What was set before the last change, and in which workshop. */
    private record Before(boolean demo, Workshop workshop) {}

    /**
     * The settings of a workshop.
     *
     * @param shop the workshop that is shown
     * @param home the folder that it, its photographs and the log are in
     */
    public SettingPages(Shop shop, Path home) {
        this.shop = shop;
        this.view = new SettingView(shop, home);
        this.backups = new BackupPages(shop, view);
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get(ADDRESS, this::open);
        routes.post(ADDRESS, this::save);
        routes.post(ADDRESS + "/undo", this::undo);
        backups.routes(routes);
    }

    private void open(Context ctx) {
        if (!shop.started()) {
            Answers.seeOther(ctx, "/start");
            return;
        }
        SettingForm form = SettingForm.of(shop.workshop());
        Frame frame = frame();
        Frame told = notice(Optional.ofNullable(ctx.queryParam("done")).orElse(""))
                .map(frame::telling)
                .orElse(frame);
        Answers.page(ctx, "setting/settings.jte", view.page(told, form, form.seen(), List.of(), List.of()));
    }

    private Frame frame() {
        return shop.frame("Settings", Section.SETTINGS).withStyle("setting.css");
    }

    private Optional<Notice> notice(String done) {
        Before last = before;
        boolean canUndo = last != null && last.demo() == shop.showsDemo();
        return switch (done) {
            case "saved" ->
                Optional.of(
                        canUndo
                                ? Notice.withUndo("The settings were saved.", "Undo the change", ADDRESS + "/undo")
                                : Notice.of("The settings were saved."));
            case "undone" -> Optional.of(Notice.of("The settings are as they were before."));
            case "restored" -> Optional.of(Notice.of("The backup is back: this is what was in it."));
            default -> Optional.empty();
        };
    }

    private void save(Context ctx) {
        SettingForm form = SettingForm.sent(name -> field(ctx, name));
        Workshop kept = shop.workshop();
        String now = SettingForm.of(kept).seen();
        if (!now.equals(field(ctx, "seen"))) {
            refuse(
                    ctx,
                    form,
                    now,
                    List.of(new Problem(
                            "",
                            "the settings were changed in another window after this page was opened, so nothing was saved",
                            "what you typed is still here; saving again puts it in place of that change")));
            return;
        }
        Outcome<Workshop> saved = form.read().then(this::kept);
        if (saved instanceof Outcome.Ok<Workshop>) {
            before = new Before(shop.showsDemo(), kept);
            Answers.seeOther(ctx, ADDRESS + "?done=saved");
        } else {
            refuse(ctx, form, now, saved.problems());
        }
    }

    private Outcome<Workshop> kept(Workshop workshop) {
        try {
            return shop.records().settings().save(workshop);
        } catch (RecordsTrouble e) {
            // a full disk must not cost what was typed
            return Outcome.refused(e.problem());
        }
    }

    private void refuse(Context ctx, SettingForm form, String seen, List<Problem> problems) {
        Answers.form(ctx, "setting/settings.jte", view.page(frame(), form, seen, problems, List.of()));
    }

    private void undo(Context ctx) {
        Before last = before;
        if (last == null || last.demo() != shop.showsDemo()) {
            throw new Refused(409, "This change cannot be undone any more.", "Change it back by hand under Settings.");
        }
        shop.records().settings().save(last.workshop());
        before = null;
        Answers.seeOther(ctx, ADDRESS + "?done=undone");
    }

    static String field(Context ctx, String name) {
        return SentField.of(ctx, name, LONGEST_FIELD);
    }
}
