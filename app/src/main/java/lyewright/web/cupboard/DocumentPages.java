package lyewright.web.cupboard;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.file.DocumentFiles;
import lyewright.records.file.DocumentKind;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.LotDocument;
import lyewright.records.stock.LotDocuments;
import lyewright.records.store.Author;
import lyewright.web.Answers;
import lyewright.web.EmptyFile;
import lyewright.web.Feature;
import lyewright.web.Notice;
import lyewright.web.Refused;
import lyewright.web.Shop;
import lyewright.web.Uploads;
import lyewright.words.FileSizes;

/** Documents of a lot: in, out, and off it. They go through in pieces, however long they are. */
final class DocumentPages implements Feature {

    private static final String ALL = "/stores/lots/{id}/documents";
    private static final String ONE = ALL + "/{sha256}";

    private static final String DOCUMENT = "document";
    private static final String FOR_ALL = "all";

    private static final Outcome<List<LotDocuments.Added>> NO_ROOM =
            refused("there is no room on the disk for it", "make room and send it once more");

    private static final String ADDED = "added";
    private static final String ADDED_TO_ALL = "added-to-all";
    private static final String THERE_ALREADY = "there-already";
    private static final String OFF = "taken-off";

    private static final String SMALLER =
            "documents are kept up to " + DocumentsPart.LARGEST + ": scan it with fewer dots to the inch";

    /** A browser's own reader of PDFs styles the page that it builds around them, and cannot be put into a sandbox. */
    private static final String PDF_ONLY =
            "default-src 'none'; object-src 'self'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none';"
                    + " frame-ancestors 'none'";

    private static final String NO_PROGRAM = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none';"
            + " form-action 'none'; frame-ancestors 'none'; sandbox";

    private final Shop shop;

    DocumentPages(Shop shop) {
        this.shop = shop;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get(ALL, ctx -> Answers.seeOther(ctx, LotPages.addressOf(lot(ctx).id())));
        routes.post(ALL, this::add);
        routes.get(ONE, this::open);
        routes.post(ONE + "/take-off", this::takeOff);
    }

    private Author author() {
        return shop.records().author();
    }

    private KeptLot lot(Context ctx) {
        return LotPages.lot(shop, ctx);
    }

    // In

    private void add(Context ctx) {
        KeptLot lot = lot(ctx);
        Outcome<Optional<UploadedFile>> sent = Uploads.file(ctx, DOCUMENT, SMALLER);
        if (!(sent instanceof Outcome.Ok<Optional<UploadedFile>> came)) {
            again(ctx, lot, "", false, hasRoom(ctx) ? sent.problems() : NO_ROOM.problems());
            return;
        }
        String typed = typedName(ctx);
        boolean forAll = Typed.ticked(ctx, FOR_ALL);
        Outcome<List<LotDocuments.Added>> added =
                came.value().map(file -> add(lot, forAll, file, typed)).orElseGet(() -> nothing(ctx));
        if (added instanceof Outcome.Ok<List<LotDocuments.Added>> ok) {
            boolean isNew = ok.value().stream().anyMatch(LotDocuments.Added::isNew);
            String what = !isNew ? THERE_ALREADY : forAll ? ADDED_TO_ALL : ADDED;
            done(ctx, what, ok.value().get(0).document());
        } else {
            again(ctx, lot, typed, forAll, added.problems());
        }
    }

    /** What is sent waits on the disk of this computer until all of it is there; where that is full it does not come whole either. */
    private static boolean hasRoom(Context ctx) {
        try {
            Path waiting = Path.of(System.getProperty("java.io.tmpdir", "."));
            return Files.getFileStore(waiting).getUsableSpace() > ctx.req().getContentLengthLong();
        } catch (IOException e) {
            return true;
        }
    }

    private void again(Context ctx, KeptLot lot, String name, boolean forAll, List<Problem> problems) {
        LotPage page = new LotView(shop).page(lot, Map.of(), LotForm.of(lot.said()), Optional.empty(), List.of());
        Answers.form(ctx, "cupboard/lot.jte", page.with(new DocumentView(shop).part(lot.id(), name, forAll, problems)));
    }

    private static void done(Context ctx, String what, LotDocument document) {
        Answers.seeOther(
                ctx, LotPages.addressOf(document.lotId()) + "?done=" + what + "&document=" + document.sha256());
    }

    /** What has just been done with a document of a lot, as the lot's address says. */
    static Optional<Notice> done(Context ctx, Shop shop, KeptLot lot) {
        return Optional.ofNullable(ctx.queryParam(DOCUMENT))
                .flatMap(sha256 -> shop.records().documents().find(lot.id(), sha256))
                .flatMap(document -> done(String.valueOf(ctx.queryParam("done")), document.name()))
                .map(Notice::of);
    }

    private static Optional<String> done(String what, String name) {
        return switch (what) {
            case ADDED -> Optional.of("Kept with this lot: " + name + ".");
            case ADDED_TO_ALL -> Optional.of("Kept with this lot and with those that came with it: " + name + ".");
            case THERE_ALREADY ->
                Optional.of("This lot had that document already, as " + name + "; nothing was added.");
            case OFF -> Optional.of("Taken off this lot: " + name + ". It can still be opened.");
            default -> Optional.empty();
        };
    }

    private static String typedName(Context ctx) {
        return Typed.line(ctx, DocumentView.NAME).replace("\0", "").strip();
    }

    private static Outcome<List<LotDocuments.Added>> nothing(Context ctx) {
        return EmptyFile.told(ctx, DOCUMENT)
                .<Outcome<List<LotDocuments.Added>>>map(Outcome::refused)
                .orElseGet(() -> refused("no file was chosen", "choose one, then press the button"));
    }

    private Outcome<List<LotDocuments.Added>> add(KeptLot lot, boolean forAll, UploadedFile file, String typed) {
        if (file.size() > DocumentFiles.LARGEST) {
            return refused(
                    "the file is " + FileSizes.said(file.size()) + " long, and more than " + DocumentsPart.LARGEST
                            + " is not kept",
                    "scan it with fewer dots to the inch, or give only the pages that count");
        }
        String name = typed.isEmpty() ? DocumentName.ofFile(file.filename()) : typed;
        List<String> lots = new ArrayList<>(List.of(lot.id()));
        if (forAll) {
            shop.records().lots().cameWith(lot.id()).forEach(other -> lots.add(other.id()));
        }
        try (InputStream content = file.content()) {
            return Typed.kept(() -> shop.records().documents().add(author(), lots, name, content));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Outcome<List<LotDocuments.Added>> refused(String what, String remedy) {
        return Outcome.refused(new Problem(DOCUMENT, what, remedy));
    }

    // Out

    private void open(Context ctx) {
        LotDocument document = document(ctx, lot(ctx));
        Path file = shop.records()
                .documents()
                .file(document)
                .orElseThrow(() -> Refused.notHere(
                        "The file of this document is not there any more; its entry in the ledger is.",
                        "Add the same document to the lot again, or restore a backup that has it."));
        // read through before the first byte goes out: what has gone out cannot be taken back
        if (!shop.records().documents().isSound(document)) {
            throw new Refused(
                    409,
                    "The file of this document is not what was put to the lot: its bytes were changed since, so it is"
                            + " not shown.",
                    "Add the document from your own copy to the lot again, or restore a backup that has it. Verify, under"
                            + " Settings and Ledger, names every such file.");
        }
        boolean download = ctx.queryParam("download") != null;
        String name = DocumentName.forFile(document.name(), document.kind());
        ctx.header("Content-Security-Policy", document.kind() == DocumentKind.PDF ? PDF_ONLY : NO_PROGRAM);
        ctx.header("Content-Disposition", (download ? "attachment" : "inline") + "; filename=\"" + name + "\"");
        try {
            if (document.kind() == DocumentKind.TEXT) {
                ctx.contentType(document.kind().mediaType() + "; charset=utf-8");
            } else {
                // the others are packed tightly by themselves, so that they go out as long as they are
                ctx.disableCompression();
                ctx.contentType(document.kind().mediaType());
                ctx.header("Content-Length", Long.toString(Files.size(file)));
            }
            ctx.result(Files.newInputStream(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private LotDocument document(Context ctx, KeptLot lot) {
        return shop.records()
                .documents()
                .find(lot.id(), ctx.pathParam("sha256"))
                .orElseThrow(
                        () -> Refused.notHere("This lot has no such document.", "Look at the documents on its page."));
    }

    // Off

    private void takeOff(Context ctx) {
        KeptLot lot = lot(ctx);
        LotDocument document = document(ctx, lot);
        Outcome<LotDocument> off = Typed.kept(() ->
                shop.records().documents().takeOff(author(), lot.id(), document.sha256(), Typed.line(ctx, "why")));
        if (off instanceof Outcome.Ok<LotDocument> ok) {
            done(ctx, OFF, ok.value());
        } else {
            again(ctx, lot, "", false, off.problems());
        }
    }
}
