package lyewright.web.photograph;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.web.Answers;
import lyewright.web.EmptyFile;
import lyewright.web.Feature;
import lyewright.web.Refused;
import lyewright.web.Shop;
import lyewright.web.Uploads;
import lyewright.web.recipe.ShowPages;

/** Takes photographs in and shows them. One is read at a time, so that two large ones do not meet in memory. */
public final class PhotographPages implements Feature {

    /** The largest file that is looked at. */
    static final int LARGEST = 32 << 20;

    private static final String SMALLER = "make it smaller, 1600 pixels are plenty";

    private static final int PATIENCE_SECONDS = 30;
    private static final String FOREVER = "private, max-age=31536000, immutable";

    private final Shop shop;
    private final ShowPages recipes;
    private final Semaphore turn = new Semaphore(1, true);
    private final Thumbnails thumbnails = new Thumbnails();

    /** The photographs of a shop. */
    public PhotographPages(Shop shop) {
        this.shop = shop;
        this.recipes = new ShowPages(shop);
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.post("/recipes/{id}/photograph", this::take);
        routes.post("/recipes/{id}/photograph/remove", this::takeOff);
        routes.get("/photographs/{hash}", this::large);
        routes.get("/photographs/{hash}/small", this::small);
    }

    private void take(Context ctx) {
        String id = living(ctx);
        Outcome<Photograph> read = Uploads.file(ctx, PhotographReader.PATH, SMALLER)
                .then(file -> file.map(this::read)
                        .orElseGet(() -> EmptyFile.told(ctx, PhotographReader.PATH)
                                .<Outcome<Photograph>>map(Outcome::refused)
                                .orElseGet(() ->
                                        refused("no photograph was chosen", "choose one, then press the button"))));
        if (read instanceof Outcome.Ok<Photograph> ok) {
            String hash = shop.records().photographs().keep(ok.value().large());
            thumbnails.put(hash, ok.value().small());
            shop.records().recipes().setPhotograph(id, Optional.of(hash));
            Answers.seeOther(ctx, "/recipes/" + id + "?done=photograph");
        } else {
            recipes.withPhotographTroubles(ctx, id, read.problems());
        }
    }

    private void takeOff(Context ctx) {
        String id = living(ctx);
        shop.records().recipes().setPhotograph(id, Optional.empty());
        Answers.seeOther(ctx, "/recipes/" + id + "?done=no-photograph");
    }

    private String living(Context ctx) {
        return shop.records()
                .recipes()
                .find(ctx.pathParam("id"))
                .filter(recipe -> recipe.deletedAt().isEmpty())
                .orElseThrow(() -> shop.notHere(
                        "recipe",
                        records -> records.recipes().find(ctx.pathParam("id")).isPresent(),
                        "There is no recipe at this address.",
                        "Look for it in the list of recipes."))
                .id();
    }

    private Outcome<Photograph> read(UploadedFile file) {
        if (file.size() > LARGEST) {
            return refused("the file is " + (file.size() >> 20) + " MB, and more than 32 MB is not read", SMALLER);
        }
        try {
            if (!turn.tryAcquire(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                return refused("other photographs are being read just now", "send it again in a minute");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped while a photograph waited", e);
        }
        try {
            return throughFile(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            turn.release();
        }
    }

    /** A file on the disk is read piece by piece; in memory it would be there whole, beside its pixels. */
    private static Outcome<Photograph> throughFile(UploadedFile file) throws IOException {
        Path beside = Files.createTempFile("lyewright-photograph-", ".tmp");
        try (InputStream in = file.content()) {
            Files.copy(in, beside, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            return PhotographReader.read(beside);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private static Outcome<Photograph> refused(String what, String remedy) {
        return new Outcome.Refused<>(List.of(new Problem(PhotographReader.PATH, what, remedy)));
    }

    private void large(Context ctx) {
        show(ctx, bytes(ctx.pathParam("hash")));
    }

    private void small(Context ctx) {
        String hash = ctx.pathParam("hash");
        show(ctx, thumbnails.of(hash, () -> bytes(hash)));
    }

    private byte[] bytes(String hash) {
        return shop.records()
                .photographs()
                .open(hash)
                .orElseThrow(() -> Refused.notHere(
                        "There is no photograph at this address.", "Look at the recipe it was taken of."));
    }

    private static void show(Context ctx, byte[] jpeg) {
        ctx.header("Cache-Control", FOREVER);
        ctx.contentType("image/jpeg").result(jpeg);
    }
}
