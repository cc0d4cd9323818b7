package lyewright.web.ledger;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import lyewright.chain.Entry;
import lyewright.chain.PrintedHead;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.ledger.Head;
import lyewright.records.ledger.Ledger;
import lyewright.records.ledger.Verified;
import lyewright.web.Answers;
import lyewright.web.Feature;
import lyewright.web.Section;
import lyewright.web.Shop;
import lyewright.web.TextField;
import lyewright.words.Dates;

/** What was written, and whether it still stands as it was written. */
public final class LedgerPages implements Feature {

    private static final String ADDRESS = "/ledger";
    private static final int ON_A_PAGE = 40;
    private static final int LONGEST_HEAD = 100;

    private final Shop shop;

    /**
     * The ledger of a workshop.
     *
     * @param shop the workshop that is shown
     */
    public LedgerPages(Shop shop) {
        this.shop = shop;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get(ADDRESS, this::open);
        routes.get(ADDRESS + "/head", this::paper);
        routes.post(ADDRESS + "/verify", this::verify);
        // whoever loads the answer's address by itself is shown the ledger
        routes.get(ADDRESS + "/verify", ctx -> Answers.seeOther(ctx, ADDRESS));
    }

    private void open(Context ctx) {
        if (!shop.started()) {
            Answers.seeOther(ctx, "/start");
            return;
        }
        Shop held = shop.held();
        Answers.page(ctx, "ledger/ledger.jte", page(held, from(ctx), field(""), Optional.empty()));
    }

    private static long from(Context ctx) {
        String typed = Optional.ofNullable(ctx.queryParam("from")).orElse("");
        return typed.matches("[1-9][0-9]{0,17}") ? Long.parseLong(typed) : Long.MAX_VALUE;
    }

    private static TextField field(String typed) {
        return TextField.of(
                "head",
                "A head from your paper, if you have one",
                "such as 214-3f09ab51c2d7; without one nobody can tell whether the last entries were cut off",
                typed);
    }

    private void verify(Context ctx) {
        Shop held = shop.held();
        String typed = Optional.ofNullable(ctx.formParam("head")).orElse("").strip();
        String shown = typed.length() > LONGEST_HEAD ? typed.substring(0, LONGEST_HEAD) : typed;
        Outcome<Optional<PrintedHead>> printed = typed.isEmpty()
                ? Outcome.ok(Optional.empty())
                : PrintedHead.parse(typed).then(head -> Outcome.ok(Optional.of(head)));
        if (printed instanceof Outcome.Ok<Optional<PrintedHead>> ok) {
            Verified verified = held.records().ledger().verify(ok.value());
            Optional<LedgerPage.Said> said = Optional.of(VerifiedWords.said(verified, ok.value()));
            Answers.page(ctx, "ledger/ledger.jte", page(held, Long.MAX_VALUE, field(shown), said));
            return;
        }
        List<Problem> problems = printed.problems().stream()
                .map(problem -> new Problem("head", problem.what(), problem.remedy()))
                .toList();
        Answers.form(
                ctx,
                "ledger/ledger.jte",
                page(held, Long.MAX_VALUE, field(shown).with(problems), Optional.empty()));
    }

    private static LedgerPage page(Shop held, long from, TextField field, Optional<LedgerPage.Said> said) {
        Ledger ledger = held.records().ledger();
        Head head = ledger.head();
        List<Entry> entries = ledger.entries(from, ON_A_PAGE);
        EntryWords words = new EntryWords(held);
        long newest = entries.isEmpty() ? 0 : entries.get(0).number();
        long oldest = entries.isEmpty() ? 0 : entries.get(entries.size() - 1).number();
        return new LedgerPage(
                held.frame("Ledger", Section.SETTINGS).withStyle("ledger.css"),
                head.isEmpty() ? "" : head.printed(),
                head.number(),
                field,
                said,
                entries.stream().map(words::line).toList(),
                newest < head.number() && newest > 0
                        ? ADDRESS + "?from=" + Math.min(head.number(), newest + ON_A_PAGE)
                        : "",
                oldest > 1 ? ADDRESS + "?from=" + (oldest - 1) : "");
    }

    private void paper(Context ctx) {
        Shop held = shop.held();
        Head head = held.records().ledger().head();
        if (head.isEmpty()) {
            Answers.seeOther(ctx, ADDRESS);
            return;
        }
        Answers.page(
                ctx,
                "ledger/head.jte",
                new HeadPaper(
                        held.frame("Head of the ledger", Section.SETTINGS).withStyle("ledger.css"),
                        held.workshop().name(),
                        head.printed(),
                        head.number(),
                        Dates.minute(held.clock().instant(), held.clock())));
    }
}
