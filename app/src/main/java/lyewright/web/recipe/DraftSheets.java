package lyewright.web.recipe;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.web.Shop;

/** The sheet of what the editor sent: the one whose figures it shows while somebody types. */
public final class DraftSheets {

    private final Workbench workbench;

    /**
     * For a workshop.
     *
     * @param shop whose
     */
    public DraftSheets(Shop shop) {
        this.workbench = new Workbench(shop);
    }

    /**
     * Reads the editor's form.
     *
     * @param ctx a request with all fields of it
     * @return the sheet, or what keeps it from being reckoned
     */
    public Outcome<MakingSheet> of(Context ctx) {
        Optional<Problem> tooMuch = FormFields.tooMuch(ctx.formParamMap());
        if (tooMuch.isPresent()) {
            return new Outcome.Refused<>(List.of(tooMuch.get()));
        }
        return workbench.sheet(Typed.of(ctx).drafted());
    }
}
