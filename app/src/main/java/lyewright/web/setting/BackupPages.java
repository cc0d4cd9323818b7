package lyewright.web.setting;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.RecordsTrouble;
import lyewright.records.backup.BackupContents;
import lyewright.records.backup.Backups;
import lyewright.records.backup.Overtaken;
import lyewright.records.backup.Restored;
import lyewright.web.Answers;
import lyewright.web.EmptyFile;
import lyewright.web.Feature;
import lyewright.web.FileNames;
import lyewright.web.Frame;
import lyewright.web.Refused;
import lyewright.web.Section;
import lyewright.web.Shop;
import lyewright.web.Uploads;
import lyewright.web.setting.SettingPage.About;
import lyewright.words.Dates;

/** A backup to download while the workshop runs, and one to put back. */
final class BackupPages implements Feature {

    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmm", Locale.ROOT);

    private final Shop shop;
    private final SettingView view;
    private final SentBackups sent = new SentBackups();

    BackupPages(Shop shop, SettingView view) {
        this.shop = shop;
        this.view = view;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get(SettingPages.ADDRESS + "/backup", this::download);
        routes.post(SettingPages.ADDRESS + "/restore", this::look);
        routes.post(SettingPages.ADDRESS + "/restore/{token}", this::restore);
        routes.post(SettingPages.ADDRESS + "/restore/{token}/leave", this::leave);
    }

    /** Written to a file first, so that what is downloaded is whole or not there at all. */
    private void download(Context ctx) throws IOException {
        Path file = Files.createTempFile("lyewright-backup-", ".zip");
        try {
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
                shop.records().backups().write(out);
            }
            long size = Files.size(file);
            InputStream content = Files.newInputStream(file, StandardOpenOption.DELETE_ON_CLOSE);
            ctx.contentType("application/zip");
            ctx.header("Content-Disposition", "attachment; filename=\"" + fileName() + "\"");
            ctx.header("Content-Length", Long.toString(size));
            ctx.result(content);
        } catch (IOException | RuntimeException e) {
            Files.deleteIfExists(file);
            throw e;
        }
    }

    private String fileName() {
        String who = FileNames.plain(shop.workshop().name(), "");
        String when = LocalDateTime.now(shop.clock()).format(MINUTE);
        return "lyewright-" + (who.isEmpty() ? "" : who + "-") + when + ".zip";
    }

    /** Looks into what was sent; nothing is put back yet. */
    private void look(Context ctx) throws IOException {
        refuseInDemo();
        Outcome<String> received = received(ctx);
        if (!(received instanceof Outcome.Ok<String> kept)) {
            refuse(ctx, received.problems());
            return;
        }
        String token = kept.value();
        Outcome<BackupContents> checked = Backups.check(sent.file(token).orElseThrow());
        if (checked instanceof Outcome.Ok<BackupContents> ok) {
            Overtaken overtaken = shop.records()
                    .backups()
                    .overtaken(sent.file(token).orElseThrow())
                    .orThrow();
            Answers.page(ctx, "setting/restore.jte", asked(token, ok.value(), overtaken, false));
        } else {
            sent.forget(token);
            refuse(ctx, checked.problems());
        }
    }

    private RestorePage asked(String token, BackupContents contents, Overtaken overtaken, boolean unticked) {
        Frame frame = shop.frame("Put a backup back", Section.SETTINGS).withStyle("setting.css");
        return new RestorePage(frame, token, said(contents), view.holds(), overtaken, unticked);
    }

    private Outcome<String> received(Context ctx) throws IOException {
        Outcome<Optional<UploadedFile>> received =
                Uploads.file(ctx, "backup", "put it back with ./lyewright restore; nothing was touched");
        if (!(received instanceof Outcome.Ok<Optional<UploadedFile>> file)) {
            return new Outcome.Refused<>(received.problems());
        }
        if (file.value().isEmpty()) {
            return Outcome.refused(EmptyFile.told(ctx, "backup")
                    .orElseGet(() ->
                            new Problem("backup", "no file was chosen", "choose a backup that was downloaded here")));
        }
        try (InputStream content = file.value().get().content()) {
            return Outcome.ok(sent.keep(content));
        }
    }

    private void refuseInDemo() {
        if (shop.showsDemo()) {
            throw new Refused(
                    409,
                    "You are looking round the demo workshop, so nothing was put back.",
                    "Go back to your own workshop under Settings, then put the backup back there.");
        }
    }

    private void refuse(Context ctx, List<Problem> problems) {
        SettingForm form = SettingForm.of(shop.workshop());
        Frame frame = shop.frame("Settings", Section.SETTINGS).withStyle("setting.css");
        Answers.form(ctx, "setting/settings.jte", view.page(frame, form, form.seen(), List.of(), problems));
    }

    private List<About> said(BackupContents contents) {
        List<About> said = new ArrayList<>();
        said.add(new About("Workshop", contents.workshop().orElse("not named yet")));
        said.add(new About("Made", Dates.minute(contents.madeAt(), shop.clock())));
        said.add(new About(
                "Recipes",
                SettingView.count(contents.recipes(), "recipe") + " in "
                        + SettingView.count(contents.versions(), "version")
                        + ", those that were deleted among them"));
        said.add(new About(
                "Photographs",
                SettingView.count(contents.photographs(), "photograph")
                        + (contents.documents() > 0
                                ? " and " + SettingView.count(contents.documents(), "document")
                                : "")
                        + (contents.missingFiles() > 0
                                ? "; " + contents.missingFiles() + " had gone when it was made"
                                : "")));
        said.add(new About(
                "Stores",
                SettingView.count(contents.moulds(), "mould") + ", "
                        + SettingView.count(contents.balances(), "balance") + ", "
                        + SettingView.count(contents.jugs(), "jug") + ", "
                        + SettingView.count(contents.materials(), "material")
                        + " of its own, those that were removed among them"));
        said.add(new About(
                "Cupboard",
                SettingView.count(contents.lots(), "lot") + " with " + SettingView.count(contents.moves(), "move")));
        said.add(new About(
                "Ledger",
                contents.ledger()
                        .map(head -> head.isEmpty() ? "nothing written yet" : "goes to " + head.printed())
                        .orElse("none: this backup is of a time before there was one")));
        return said;
    }

    private void restore(Context ctx) {
        refuseInDemo();
        String token = ctx.pathParam("token");
        Path file = sent.file(token)
                .orElseThrow(() -> new Refused(
                        409,
                        "The file that was sent is not here any more, so nothing was put back.",
                        "Choose it once more under Settings."));
        Outcome<Restored> restored;
        try {
            Outcome<Overtaken> overtaken = shop.records().backups().overtaken(file);
            if (overtaken instanceof Outcome.Ok<Overtaken> ok && ok.value().lost() > 0 && !isWanted(ctx, ok.value())) {
                Answers.form(
                        ctx,
                        "setting/restore.jte",
                        asked(token, Backups.check(file).orThrow(), ok.value(), true));
                return;
            }
            restored = overtaken.then(it -> it.lost() == 0
                    ? shop.records().backups().restore(file)
                    : shop.records().backups().restoreOverNewer(file));
        } catch (RecordsTrouble e) {
            refuse(ctx, List.of(e.problem()));
            return;
        }
        sent.forget(token);
        if (restored instanceof Outcome.Ok<Restored>) {
            Answers.seeOther(ctx, SettingPages.ADDRESS + "?done=restored");
        } else {
            refuse(ctx, restored.problems());
        }
    }

    /** Whether what would be lost was ticked, and is still what was shown then. */
    private static boolean isWanted(Context ctx, Overtaken overtaken) {
        return "yes".equals(ctx.formParam("over"))
                && Long.toString(overtaken.here().number()).equals(ctx.formParam("upTo"));
    }

    private void leave(Context ctx) {
        sent.forget(ctx.pathParam("token"));
        Answers.seeOther(ctx, SettingPages.ADDRESS);
    }
}
