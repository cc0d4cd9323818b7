package lyewright.web.recipe;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.RecordsTrouble;
import lyewright.records.recipe.Imported;
import lyewright.web.Answers;
import lyewright.web.EmptyFile;
import lyewright.web.Frame;
import lyewright.web.OpenedIn;
import lyewright.web.Section;
import lyewright.web.Shop;
import lyewright.web.Uploads;
import lyewright.words.Sentences;

/** Takes formula files in. */
final class ImportPages {

    private static final int MOST_TOLD = 60;

    private final Shop shop;

    ImportPages(Shop shop) {
        this.shop = shop;
    }

    void ask(Context ctx) {
        Answers.page(ctx, "recipe/import.jte", new ImportPage(frame(), "", "", List.of(), 0));
    }

    void take(Context ctx) {
        Outcome<Optional<UploadedFile>> sent =
                Uploads.file(ctx, "file", "choose a formula file, a text that begins with recipe:");
        if (!(sent instanceof Outcome.Ok<Optional<UploadedFile>> file)) {
            again(ctx, "", "", sent.problems().stream().map(ImportPages::whole).toList());
        } else if (file.value().isPresent()) {
            take(ctx, file.value().get());
        } else if (EmptyFile.told(ctx, "file").isPresent()) {
            Problem empty = EmptyFile.told(ctx, "file").get();
            again(ctx, "", "", List.of(whole(empty.what(), empty.remedy())));
        } else {
            takeText(ctx);
        }
    }

    private void takeText(Context ctx) {
        String text = Optional.ofNullable(ctx.formParam("text")).orElse("");
        if (text.isBlank()) {
            again(
                    ctx,
                    "",
                    "",
                    List.of(whole("there is neither a file nor a text", "choose a file, or paste its text below")));
            return;
        }
        keep(ctx, ImportText.read(text, shop), text, "");
    }

    private void take(Context ctx, UploadedFile file) {
        byte[] bytes = bytes(file);
        Optional<String> text = text(bytes);
        String name = file.filename();
        Optional<String> kind = Alien.kind(bytes);
        if (kind.isPresent()) {
            again(
                    ctx,
                    "",
                    name,
                    List.of(whole(
                            "the file is " + kind.get(), "choose a formula file, a text that begins with recipe:")));
        } else {
            keep(ctx, ImportText.read(bytes, text.orElse(""), shop), text.orElse(""), name);
        }
    }

    private void keep(Context ctx, ImportText read, String text, String file) {
        if (read.formula().isEmpty()) {
            again(ctx, text, file, read.troubles());
            return;
        }
        OpenedIn.check(ctx, shop);
        Outcome<Imported> imported = kept(read.formula().get());
        if (imported instanceof Outcome.Ok<Imported> ok) {
            Answers.seeOther(ctx, done(ok.value()).address(ok.value().version().recipeId()));
        } else {
            again(
                    ctx,
                    text,
                    file,
                    imported.problems().stream().map(ImportPages::whole).toList());
        }
    }

    private Outcome<Imported> kept(Formula formula) {
        try {
            return shop.records().recipes().importFormula(formula);
        } catch (RecordsTrouble e) {
            // a full disk must not cost what was pasted
            return Outcome.refused(e.problem());
        }
    }

    private static Done done(Imported imported) {
        return switch (imported.what()) {
            case NEW_RECIPE -> Done.NEW;
            case NEXT_VERSION -> Done.NEXT;
            case ALREADY_KEPT -> Done.KEPT;
        };
    }

    private void again(Context ctx, String text, String file, List<ImportPage.Trouble> troubles) {
        List<ImportPage.Trouble> told = troubles.stream().limit(MOST_TOLD).toList();
        Answers.form(
                ctx, "recipe/import.jte", new ImportPage(frame(), text, file, told, troubles.size() - told.size()));
    }

    private static ImportPage.Trouble whole(String what, String remedy) {
        return whole(new Problem("", what, remedy));
    }

    private static ImportPage.Trouble whole(Problem problem) {
        return new ImportPage.Trouble(0, 0, "", "", "", Sentences.whole(problem));
    }

    private Frame frame() {
        return shop.frame("Import a formula file", Section.RECIPES).withStyle("recipe.css");
    }

    /** One byte over the limit is enough to be refused. */
    private static byte[] bytes(UploadedFile file) {
        try (InputStream in = file.content()) {
            return in.readNBytes(FormulaFile.LARGEST + 1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What the bytes say, where they are text of a size that can be given back. */
    private static Optional<String> text(byte[] bytes) {
        if (bytes.length > FormulaFile.LARGEST) {
            return Optional.empty();
        }
        try {
            return Optional.of(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString());
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }
}
