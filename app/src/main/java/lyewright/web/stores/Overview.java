package lyewright.web.stores;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lyewright.makingsheet.Balance;
import lyewright.material.Tables;
import lyewright.picture.Picture;
import lyewright.records.equipment.EquipmentRegister;
import lyewright.records.equipment.JugUse;
import lyewright.records.equipment.KeptBalance;
import lyewright.records.equipment.KeptJug;
import lyewright.records.equipment.KeptMould;
import lyewright.records.equipment.MouldMeasures.UsualMass;
import lyewright.records.setting.Units;
import lyewright.web.Answers;
import lyewright.web.Feature;
import lyewright.web.Frame;
import lyewright.web.Notice;
import lyewright.web.Section;
import lyewright.web.Shop;

/** The page of all that is in the stores. */
final class Overview implements Feature {

    private final Shop shop;
    private final Map<Thing, ThingPages<?, ?>> pages;

    Overview(Shop shop, Map<Thing, ThingPages<?, ?>> pages) {
        this.shop = shop;
        this.pages = pages;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/stores", this::show);
    }

    private void show(Context ctx) {
        EquipmentRegister register = shop.records().equipment();
        Units units = shop.workshop().units();
        List<KeptBalance> balances = register.balances();
        List<KeptJug> jugs = register.jugs();
        List<KeptMould> moulds = register.moulds();
        Map<UsualMass, String> usual = new RecipesByName(shop.records().recipes())
                .namesOf(moulds.stream()
                        .flatMap(mould -> mould.measures().usual().stream())
                        .toList());
        Frame frame = shop.frame("Stores", Section.STORES).withStyle("stores.css");
        StoresPage page = new StoresPage(
                notice(ctx).map(frame::telling).orElse(frame),
                moulds.stream().map(mould -> tile(mould, units, usual)).toList(),
                balances.isEmpty()
                        ? register.usualBalances().stream()
                                .map(b -> row("", b, units))
                                .toList()
                        : balances.stream()
                                .map(b -> row(b.id(), b.balance(), units))
                                .toList(),
                balances.isEmpty(),
                jugs.stream().map(jug -> row(jug, units)).toList(),
                List.of(JugUse.LYE_JUG, JugUse.OIL_POT).stream()
                        .flatMap(use -> note(use, jugs).stream())
                        .toList(),
                shop.records().materials().list().stream()
                        .map(MaterialWritten::row)
                        .toList(),
                known());
        Answers.page(ctx, "stores/stores.jte", page);
    }

    private Optional<Notice> notice(Context ctx) {
        Optional<Deed> deed = query(ctx, "done").flatMap(Deed::of);
        Optional<ThingPages<?, ?>> things =
                query(ctx, "what").flatMap(Thing::of).map(pages::get);
        Optional<String> id = query(ctx, "id");
        return deed.isPresent() && things.isPresent() && id.isPresent()
                ? things.get().notice(deed.get(), id.get())
                : Optional.empty();
    }

    private static Optional<String> query(Context ctx, String name) {
        return Optional.ofNullable(ctx.queryParam(name));
    }

    private static StoresPage.MouldTile tile(KeptMould mould, Units units, Map<UsualMass, String> usual) {
        String usualOf = mould.measures().usual().map(usual::get).orElse("");
        MouldShown shown = MouldShown.of(mould, units, usualOf);
        List<String> bars = shown.picture().map(Picture::sentence).filter(s -> !s.isEmpty()).stream()
                .toList();
        return new StoresPage.MouldTile(
                mould.id(),
                mould.name(),
                MouldKind.of(mould.measures().inside()).label(),
                shown.picture().map(Picture::drawing),
                mould.measures().inside().map(MouldForm::size).orElse("").replace(" x ", " × "),
                Stream.concat(bars.stream(), shown.sentences().stream()).toList());
    }

    private static StoresPage.BalanceRow row(String id, Balance balance, Units units) {
        return new StoresPage.BalanceRow(
                id,
                balance.name(),
                InUnits.mass(balance.capacity(), units),
                InUnits.mass(balance.step(), units),
                balance.accuracyClass()
                        .map(c -> "OIML class " + c)
                        .orElse("class not known, taken for " + balance.classTaken()));
    }

    private static StoresPage.JugRow row(KeptJug jug, Units units) {
        return new StoresPage.JugRow(
                jug.id(),
                jug.name(),
                InUnits.mass(jug.emptyWeight(), units),
                jug.use().word());
    }

    /** Of two jugs for one thing nobody knows which is taken. */
    private static Optional<String> note(JugUse use, List<KeptJug> jugs) {
        long count = jugs.stream().filter(jug -> jug.use() == use).count();
        return count < 2
                ? Optional.empty()
                : Optional.of("There are " + count + " of the kind " + use.word()
                        + ", so a sheet tares that vessel unless one is chosen for it.");
    }

    private static String known() {
        Tables tables = Tables.bundled();
        return tables.oils().size() + " oils, fats, waxes and fatty acids and "
                + tables.additives().size() + " additions, edition of " + TablesPages.edition();
    }
}
