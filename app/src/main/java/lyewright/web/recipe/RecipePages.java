package lyewright.web.recipe;

import io.javalin.config.RoutesConfig;
import lyewright.web.Feature;
import lyewright.web.Shop;

/** The addresses of the recipes, but for the editor's. They come after the editor's, since an id matches any word. */
public final class RecipePages implements Feature {

    private final ListPages list;
    private final ShowPages show;
    private final ComparePages compare;
    private final ImportPages imports;
    private final ExportFiles exports;
    private final RecipeWrites writes;

    /** The recipes of a shop. */
    public RecipePages(Shop shop) {
        list = new ListPages(shop);
        show = new ShowPages(shop);
        compare = new ComparePages(shop, show);
        imports = new ImportPages(shop);
        exports = new ExportFiles(show);
        writes = new RecipeWrites(shop);
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/recipes", list::list);
        routes.get("/recipes/deleted", list::deleted);
        routes.get("/recipes/import", imports::ask);
        routes.post("/recipes/import", imports::take);
        routes.get("/recipes/compare", compare::recipes);
        routes.get("/recipes/{id}/compare", compare::versions);
        routes.get("/recipes/{id}/versions/{n}", show::version);
        routes.post("/recipes/{id}/versions/{n}/again", writes::again);
        routes.post("/recipes/{id}/versions/{n}/own-figures", writes::takeFiguresOver);
        routes.post("/recipes/{id}/duplicate", writes::duplicate);
        routes.post("/recipes/{id}/delete", writes::delete);
        routes.post("/recipes/{id}/undelete", writes::undelete);
        routes.get("/recipes/{id}/{n}.yaml", exports::file);
        routes.get("/recipes/{id}", show::recipe);
    }
}
