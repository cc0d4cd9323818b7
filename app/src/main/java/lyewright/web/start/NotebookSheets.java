package lyewright.web.start;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.web.Shop;

/** The sheets of what stands in the notebook: those whose figures it shows while somebody types. */
public final class NotebookSheets {

    private final Shop shop;
    private final KnownNames names;

    /**
     * For a workshop, or before there is one.
     *
     * @param shop whose
     */
    public NotebookSheets(Shop shop) {
        this.shop = shop;
        this.names = new KnownNames(shop);
    }

    /**
     * Reads the notebook's form.
     *
     * @param ctx a request with all fields of it
     * @param forTheMould whether the sheet for the mould is meant, not the one as it stands
     * @return the sheet, or what keeps it from being reckoned
     */
    public Outcome<MakingSheet> of(Context ctx, boolean forTheMould) {
        NotebookForm form = NotebookForm.of(ctx);
        NotebookAnswer answer = NotebookAnswer.of(form, Bench.of(shop, names, form));
        Optional<MakingSheet> sheet =
                answer.sheets().flatMap(sheets -> forTheMould ? sheets.filled() : Optional.of(sheets.paper()));
        return sheet.map(Outcome::ok).orElseGet(() -> new Outcome.Refused<>(List.of(trouble(answer))));
    }

    private static Problem trouble(NotebookAnswer answer) {
        boolean mould = answer.sheets().isPresent();
        return new Problem(
                mould ? "mould" : "text",
                mould ? "the mould cannot be read" : "what is typed cannot be read as a recipe",
                "go back and see what is said beside it");
    }
}
