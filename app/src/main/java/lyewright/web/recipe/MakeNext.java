package lyewright.web.recipe;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import lyewright.web.Notice;
import lyewright.web.Shop;

/** What a recipe that was just kept is to be made in: asked before it was kept, so that it need not be asked again. */
final class MakeNext {

    /** What the address may say, as the making page has it. */
    private static final List<String> ASKED = List.of("mould", "inside", "much", "amount");

    private final Context ctx;
    private final Shop shop;

    MakeNext(Context ctx, Shop shop) {
        this.ctx = ctx;
        this.shop = shop;
    }

    Notice told(String sentence, RecipeHead head) {
        StringBuilder address = new StringBuilder(head.make());
        ASKED.forEach(name -> {
            if (!said(name).isEmpty()) {
                address.append('&').append(name).append('=').append(RecipeSheet.encoded(said(name)));
            }
        });
        return Notice.withNext(sentence, label(), address.toString());
    }

    private String said(String name) {
        return Optional.ofNullable(ctx.queryParam(name)).orElse("").strip();
    }

    private String label() {
        String mould = said("mould");
        if (mould.equals("typed")) {
            return "Make it in your mould";
        }
        if (!mould.isEmpty()) {
            return shop.records().equipment().moulds().stream()
                    .filter(kept -> kept.id().equals(mould))
                    .findFirst()
                    .map(kept -> "Make it in the " + kept.name())
                    .orElse("Make it");
        }
        return said("amount").isEmpty() ? "Make it" : "Make " + said("amount") + " of it";
    }
}
