package lyewright.web.cupboard;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.SuperfatBand;
import lyewright.measure.Outcome;
import lyewright.records.recipe.RecipeSummary;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.StockItem;
import lyewright.web.Answers;
import lyewright.web.Feature;
import lyewright.web.Shop;
import lyewright.web.recipe.RecipeSheet;
import lyewright.words.GainWords;

/**
 * What a certificate of a lot would gain. Each recipe's superfat is drawn twice for it, so that it is worked out only for who asks, and
 * of few recipes.
 */
final class GainPages implements Feature {

    static final String ADDRESS = "/stores/lots/{id}/gain";

    /** The ones changed last. */
    private static final int MOST = 3;

    /** A name or a note may have the word too. */
    private static final int LOOKED_AT = 12;

    private final Shop shop;

    GainPages(Shop shop) {
        this.shop = shop;
    }

    /** Whether a certificate of a lot could say something that sheets do not know. */
    static boolean mayGain(StockItem item, KeptLot lot) {
        return lot.left() > 0
                && lot.said().certificate().isEmpty()
                && item.said().identity().materialKey().isPresent()
                && CertificateForm.figures(item.said()).contains(CertificateForm.SV);
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get(ADDRESS, this::show);
    }

    private void show(Context ctx) {
        String id = ctx.pathParam("id");
        KeptLot lot = shop.records()
                .lots()
                .find(id)
                .orElseThrow(() -> shop.notHere(
                        "lot",
                        records -> records.lots().find(id).isPresent(),
                        "There is no such lot.",
                        "Go back to the cupboard."));
        StockItem item = shop.records().items().find(lot.itemId()).orElseThrow();
        List<GainPage.Gain> gains =
                mayGain(item, lot) ? gains(item.said().identity().materialKey().orElseThrow()) : List.of();
        GainPage page = new GainPage(
                CupboardFrame.of(shop, "Lot " + lot.said().ownCode() + ", a certificate"),
                lot.said().ownCode(),
                item.name(),
                "/stores/lots/" + lot.id(),
                gains);
        Answers.page(ctx, Answers.isInPlace(ctx) ? "cupboard/gains.jte" : "cupboard/gain.jte", page);
    }

    private List<GainPage.Gain> gains(String key) {
        return shop.records().recipes().lastChanged(key, LOOKED_AT).stream()
                .flatMap(summary -> FormulaFile.read(summary.text())
                        .formula()
                        .filter(formula -> formula.oils().stream()
                                .anyMatch(oil -> oil.key().equals(key)))
                        .map(formula -> new Asked(summary, formula))
                        .stream())
                .limit(MOST)
                .flatMap(asked -> gain(asked, key).stream())
                .toList();
    }

    private record Asked(RecipeSummary recipe, Formula formula) {}

    private Optional<GainPage.Gain> gain(Asked asked, String key) {
        Outcome<MakingSheet> sheet = RecipeSheet.of(asked.formula(), shop);
        if (!(sheet instanceof Outcome.Ok<MakingSheet> ok)) {
            return Optional.empty();
        }
        SuperfatBand band = ok.value().band();
        return band.certificateGain(key)
                .filter(gain -> GainWords.isWorthTelling(band, gain))
                .map(gain -> told(asked.recipe(), band, gain));
    }

    private static GainPage.Gain told(RecipeSummary recipe, SuperfatBand band, SuperfatBand.Gain gain) {
        return new GainPage.Gain(recipe.name(), "/recipes/" + recipe.id(), GainWords.narrowed(band, gain));
    }
}
