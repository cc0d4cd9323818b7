package lyewright.web.make;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import lyewright.formula.FormulaFile;
import lyewright.formula.OwnMaterial;
import lyewright.records.Records;
import lyewright.records.setting.Units;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Delivery;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.LotSaid;
import lyewright.stock.LotStatus;
import lyewright.web.TestWorkshop;

/** A workshop with a recipe of two oils, and a cupboard that fills. */
final class StockedShop implements AutoCloseable {

    final LocalDate today = LocalDate.now(ZoneOffset.UTC);
    final TestWorkshop workshop;
    final String recipe;

    StockedShop(Path home) {
        workshop = TestWorkshop.start(home, Units.GRAMS, shop -> List.of(new MakePages(shop)));
        recipe = records()
                .recipes()
                .add(FormulaFile.read("""
                                recipe: Harbour Plain
                                oils: {olive-virgin: 750 g, coconut: 250 g}
                                alkali: sodium
                                superfat: 5 %
                                water: 33 % lye
                                additions: [{of: kaolin, amount: 10 g, stage: trace}]
                                """).formula().orElseThrow())
                .orThrow()
                .recipeId();
    }

    Records records() {
        return workshop.shop().records();
    }

    KeptLot came(String key, ItemKind kind, long grams, LocalDate bestBefore, LotStatus status) {
        return came(ItemSaid.of(key, kind, Identity.ofKey(key)), grams, bestBefore, status);
    }

    KeptLot came(ItemSaid item, long grams, LocalDate bestBefore, LotStatus status) {
        LotSaid said = LotSaid.of(today.minusDays(90))
                .withBestBefore(Optional.of(bestBefore))
                .withStatus(status);
        return records()
                .lots()
                .receive(records().author(), "", new Delivery("", List.of(Arrival.of(item, said, grams * 1000))))
                .orThrow()
                .get(0);
    }

    void certify(KeptLot lot, String key, String figures) {
        OwnMaterial own = FormulaFile.read(
                        "recipe: x\noils: {olive-virgin: 100 %}\nalkali: sodium\nsuperfat: 5 %\nwater: 33 % lye\n"
                                + "materials:\n  " + key + ":\n    source: certificate NQ-7\n" + figures.indent(4))
                .formula()
                .orElseThrow()
                .materials()
                .get(0);
        records()
                .lots()
                .change(records().author(), lot.id(), lot.said().withCertificate(Optional.of(own)))
                .orThrow();
    }

    String sheet() throws Exception {
        return sheet("");
    }

    /** The page of the sheet, with more in its address. */
    String sheet(String more) throws Exception {
        return workshop.get("/make?recipe=" + recipe + "&much=written" + more).body();
    }

    @Override
    public void close() {
        workshop.close();
    }
}
