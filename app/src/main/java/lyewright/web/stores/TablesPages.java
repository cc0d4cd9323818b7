package lyewright.web.stores;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import lyewright.material.Additive;
import lyewright.material.Oil;
import lyewright.material.Tables;
import lyewright.picture.FattyAcidsPicture;
import lyewright.picture.Picture;
import lyewright.records.material.KeptMaterial;
import lyewright.web.Answers;
import lyewright.web.Feature;
import lyewright.web.Frame;
import lyewright.web.Refused;
import lyewright.web.Section;
import lyewright.web.Shop;
import lyewright.words.Dates;

/** What the tables know, and from where. */
final class TablesPages implements Feature {

    static final String ADDRESS = "/stores/tables";

    private static final int LONGEST_QUERY = 200;

    private final Shop shop;
    private final Tables tables = Tables.bundled();

    TablesPages(Shop shop) {
        this.shop = shop;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get(ADDRESS, this::list);
        routes.get(ADDRESS + "/{key}", this::card);
    }

    private void list(Context ctx) {
        String typed = Optional.ofNullable(ctx.queryParam("q")).orElse("");
        String query = typed.length() > LONGEST_QUERY ? typed.substring(0, LONGEST_QUERY) : typed;
        TablesFound found = TablesFound.of(query, tables);
        if (Answers.isInPlace(ctx)) {
            Answers.page(ctx, "stores/tables-found.jte", found);
        } else {
            Answers.page(ctx, "stores/tables.jte", new TablesPage(frame("What the tables know"), edition(), found));
        }
    }

    /** The edition as a date is written on paper. */
    static String edition() {
        return Dates.day(LocalDate.parse(Tables.bundled().edition()));
    }

    private void card(Context ctx) {
        String key = ctx.pathParam("key");
        CardPage page = tables.oil(key)
                .map(this::card)
                .or(() -> tables.additive(key).map(this::card))
                .orElseThrow(() -> Refused.notHere(
                        "The tables have no material with this key.",
                        "Search the tables under Stores, What the tables know."));
        Answers.page(ctx, "stores/card.jte", page);
    }

    private CardPage card(Oil oil) {
        List<AcidRow> acids = oil.acids().acids().stream().map(AcidRow::of).toList();
        List<String> sources = acids.stream().map(AcidRow::source).distinct().toList();
        return new CardPage(
                frame(oil.name()),
                oil.key(),
                oil.name(),
                TableCards.of(oil),
                acids,
                sources.size() == 1 ? sources.get(0) : "",
                acids.isEmpty() ? Optional.empty() : picture(oil),
                edition(),
                own(oil.key()));
    }

    /** Of a formula that is nothing but this oil. */
    private Optional<Picture> picture(Oil oil) {
        MaterialForm alone = MaterialForm.empty(MaterialKind.OF_TABLES, oil.key());
        return MaterialReading.read(alone, List.of(), tables).resolved().map(FattyAcidsPicture::of);
    }

    private CardPage card(Additive additive) {
        return new CardPage(
                frame(additive.name()),
                additive.key(),
                additive.name(),
                TableCards.of(additive),
                List.of(),
                "",
                Optional.empty(),
                edition(),
                own(additive.key()));
    }

    private Frame frame(String title) {
        return shop.frame(title, Section.STORES).withStyle("stores.css");
    }

    private String own(String key) {
        return shop.records().materials().findKey(key).map(KeptMaterial::id).orElse("");
    }
}
