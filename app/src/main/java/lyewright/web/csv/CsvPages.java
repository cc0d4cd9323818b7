package lyewright.web.csv;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.RecordsTrouble;
import lyewright.records.csv.CsvChoice;
import lyewright.records.csv.CsvFile;
import lyewright.records.csv.CsvImport;
import lyewright.records.csv.Separator;
import lyewright.web.Answers;
import lyewright.web.EmptyFile;
import lyewright.web.Feature;
import lyewright.web.Frame;
import lyewright.web.OpenedIn;
import lyewright.web.Refused;
import lyewright.web.Section;
import lyewright.web.Shop;
import lyewright.web.Uploads;
import lyewright.web.csv.SentFiles.Sent;
import lyewright.web.csv.SentFiles.Taken;
import lyewright.words.Sentences;

/** The cupboard in and out as CSV files. */
public final class CsvPages implements Feature {

    static final String ADDRESS = "/stores/csv";
    private static final String READ = ADDRESS + "/read/";
    private static final int NAMED = 80;

    private final Shop shop;
    private final CsvOut out;
    private final SentFiles files = new SentFiles();

    /**
     * The pages of a workshop.
     *
     * @param shop the workshop that is shown
     */
    public CsvPages(Shop shop) {
        this.shop = shop;
        this.out = new CsvOut(shop);
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get(ADDRESS, this::ask);
        routes.post(ADDRESS, this::receive);
        routes.get(ADDRESS + "/out", out::download);
        routes.get(READ + "{token}", this::look);
        routes.post(READ + "{token}", this::take);
        routes.get(READ + "{token}/done", this::done);
        routes.get(READ + "{token}/left-out.csv", this::leftOut);
    }

    private Frame frame(String title) {
        return shop.frame(title, Section.STORES).withStyle("csv.css");
    }

    private void ask(Context ctx) {
        Answers.page(ctx, "csv/csv.jte", new CsvPage(frame("In and out as CSV"), "", List.of(), out.files()));
    }

    // A file comes

    private void receive(Context ctx) {
        Outcome<Optional<UploadedFile>> received =
                Uploads.file(ctx, "file", "choose a CSV file of 5 MB at most, or split it");
        if (!(received instanceof Outcome.Ok<Optional<UploadedFile>> file)) {
            again(ctx, "", received.problems());
            return;
        }
        String text = Optional.ofNullable(ctx.formParam("text")).orElse("");
        if (file.value().isPresent()) {
            byte[] bytes = bytes(file.value().get());
            read(ctx, text, named(file.value().get().filename()), separator -> CsvFile.read(bytes, separator));
        } else if (EmptyFile.told(ctx, "file").isPresent()) {
            again(ctx, text, List.of(EmptyFile.told(ctx, "file").get()));
        } else if (text.isBlank()) {
            again(
                    ctx,
                    text,
                    List.of(new Problem(
                            "", "there is neither a file nor a text", "choose a file, or paste its text below")));
        } else {
            read(ctx, text, "the pasted text", separator -> CsvFile.read(text, separator));
        }
    }

    /** Something that reads a file, which may turn out to be none. */
    private interface Try {
        Outcome<CsvFile> read(Optional<Separator> separator);
    }

    private void read(Context ctx, String text, String name, Try reading) {
        Outcome<CsvFile> read = reading.read(Optional.empty());
        if (read instanceof Outcome.Ok<CsvFile> ok) {
            // with a separator that does not fit, the file is shown as it was understood before
            String token = files.keep(
                    name,
                    separator ->
                            reading.read(separator) instanceof Outcome.Ok<CsvFile> fits ? fits.value() : ok.value());
            Answers.seeOther(ctx, READ + token);
        } else {
            again(ctx, text, read.problems());
        }
    }

    private void again(Context ctx, String text, List<Problem> problems) {
        Answers.form(
                ctx,
                "csv/csv.jte",
                new CsvPage(
                        frame("In and out as CSV"),
                        text,
                        problems.stream().map(Sentences::whole).toList(),
                        out.files()));
    }

    /** One byte over the limit is enough to be refused. */
    private static byte[] bytes(UploadedFile file) {
        try (InputStream in = file.content()) {
            return in.readNBytes(CsvFile.LARGEST + 1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String named(String name) {
        String seen = name.codePoints()
                .limit(NAMED)
                .filter(c -> !Character.isISOControl(c) && Character.getType(c) != Character.FORMAT)
                .mapToObj(Character::toString)
                .collect(Collectors.joining());
        return seen.isBlank() ? "the file" : seen;
    }

    // It is looked at

    private Sent sent(Context ctx) {
        return files.find(ctx.pathParam("token"))
                .orElseThrow(() -> new Refused(
                        409,
                        "That file is not here any more, and nothing of it was kept by this.",
                        "Choose it once more under Stores, In and out as CSV."));
    }

    private void look(Context ctx) {
        Sent sent = sent(ctx);
        ChoiceFields.Values fields = name -> name == null ? null : ctx.queryParam(name);
        CsvFile file = sent.reading().read(ChoiceFields.separator(fields));
        CsvChoice choice = ChoiceFields.choice(fields, file);
        CsvImport.Result result = CsvImport.look(shop.records(), file, choice, currency());
        Answers.page(ctx, "csv/preview.jte", preview(ctx, sent, file, choice, result));
    }

    private PreviewPage preview(Context ctx, Sent sent, CsvFile file, CsvChoice choice, CsvImport.Result result) {
        String address = READ + ctx.pathParam("token");
        String query = ChoiceFields.of(choice, file).stream()
                .map(field -> field.name() + "=" + URLEncoder.encode(field.value(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return PreviewView.page(
                frame("A CSV file"), address, address + "/left-out.csv?" + query, sent.name(), file, choice, result);
    }

    private String currency() {
        return shop.workshop().currency();
    }

    // It is taken in

    private void take(Context ctx) {
        Sent sent = sent(ctx);
        OpenedIn.check(ctx, shop);
        ChoiceFields.Values fields = name -> name == null ? null : ctx.formParam(name);
        CsvFile file = sent.reading().read(ChoiceFields.separator(fields));
        CsvChoice choice = ChoiceFields.choice(fields, file);
        try {
            CsvImport.Result result =
                    CsvImport.take(shop.records(), shop.records().author(), file, choice, currency());
            files.taken(ctx.pathParam("token"), new Taken(file, result));
            Answers.seeOther(ctx, READ + ctx.pathParam("token") + "/done");
        } catch (RecordsTrouble e) {
            CsvImport.Result still = CsvImport.look(shop.records(), file, choice, currency());
            PreviewPage page = preview(ctx, sent, file, choice, still);
            Answers.form(ctx, "csv/preview.jte", page.blocked(Sentences.whole(e.problem())));
        }
    }

    private void done(Context ctx) {
        Sent sent = sent(ctx);
        String address = READ + ctx.pathParam("token");
        if (sent.taken().isEmpty()) {
            Answers.seeOther(ctx, address);
            return;
        }
        CsvImport.Result result = sent.taken().get().result();
        Answers.page(
                ctx,
                "csv/done.jte",
                new DonePage(
                        frame("A CSV file"),
                        sent.name(),
                        result.told(),
                        result.wrong() == 0 ? "" : address + "/left-out.csv",
                        PreviewView.problems(result.troubles()),
                        PreviewView.problems(result.notes())));
    }

    private void leftOut(Context ctx) {
        Sent sent = sent(ctx);
        ChoiceFields.Values fields = name -> name == null ? null : ctx.queryParam(name);
        byte[] bytes;
        if (sent.taken().isPresent() && ctx.queryParam(ChoiceFields.KIND) == null) {
            bytes = CsvImport.leftOut(
                    sent.taken().get().file(), sent.taken().get().result());
        } else {
            CsvFile file = sent.reading().read(ChoiceFields.separator(fields));
            CsvChoice choice = ChoiceFields.choice(fields, file);
            bytes = CsvImport.leftOut(file, CsvImport.look(shop.records(), file, choice, currency()));
        }
        CsvOut.send(ctx, "left-out.csv", "text/csv; charset=utf-8", bytes);
    }
}
