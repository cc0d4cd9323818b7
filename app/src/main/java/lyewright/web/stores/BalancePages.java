package lyewright.web.stores;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import lyewright.makingsheet.Balance;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.Records;
import lyewright.records.equipment.EquipmentRegister;
import lyewright.records.equipment.KeptBalance;
import lyewright.records.setting.Units;
import lyewright.web.Frame;
import lyewright.web.Section;
import lyewright.web.Shop;
import lyewright.web.TextField;

/** Balances: the most they carry, and what they count in. */
final class BalancePages extends ThingPages<KeptBalance, BalanceForm> {

    BalancePages(Shop shop) {
        super(shop, Thing.BALANCE);
    }

    private EquipmentRegister register() {
        return shop().records().equipment();
    }

    @Override
    void openNew(Context ctx) {
        show(ctx, BalanceForm.EMPTY, Standing.NEW, List.of());
    }

    @Override
    BalanceForm sent(Context ctx) {
        return new BalanceForm(field(ctx, "name"), field(ctx, "capacity"), field(ctx, "step"), field(ctx, "class"));
    }

    @Override
    BalanceForm form(KeptBalance kept) {
        return BalanceForm.of(kept.balance());
    }

    @Override
    Outcome<KeptBalance> save(Optional<String> id, BalanceForm form) {
        return form.read().then(balance -> keep(id, balance));
    }

    private Outcome<KeptBalance> keep(Optional<String> id, Balance balance) {
        return id.isPresent()
                ? register().changeBalance(id.get(), balance)
                : register().addBalance(balance);
    }

    @Override
    Outcome<KeptBalance> restore(String id, KeptBalance previous) {
        return keep(Optional.of(id), previous.balance());
    }

    @Override
    Optional<KeptBalance> find(Records records, String id) {
        return records.equipment().balance(id);
    }

    @Override
    List<KeptBalance> all() {
        return register().balances();
    }

    @Override
    Outcome<KeptBalance> remove(String id) {
        return register().removeBalance(id);
    }

    @Override
    Outcome<KeptBalance> putBack(String id) {
        return register().putBackBalance(id);
    }

    @Override
    String idOf(KeptBalance kept) {
        return kept.id();
    }

    @Override
    String nameTyped(BalanceForm form) {
        return form.name();
    }

    @Override
    String nameField() {
        return "name";
    }

    @Override
    String nameOf(KeptBalance kept) {
        return kept.name();
    }

    @Override
    void show(Context ctx, BalanceForm form, Standing standing, List<Problem> problems) {
        String title = standing.isNew() || form.name().isBlank() ? "A balance" : form.name();
        boolean ounces = shop().workshop().units() == Units.OUNCES;
        Frame frame = shop().frame(title, Section.STORES).withStyle("stores.css");
        BalancePage page = new BalancePage(
                head(frame, title, form, standing, problems, BalancePage.FIELDS),
                TextField.of("name", "Name", "what you call it, as in kitchen", form.name())
                        .with(problems),
                TextField.of("capacity", "The most it carries", "as in " + (ounces ? "11 lb" : "5 kg"), form.capacity())
                        .with(problems),
                TextField.of(
                                "step",
                                "What it counts in",
                                "the smallest step of its display, as in " + (ounces ? "0.05 oz" : "1 g"),
                                form.step())
                        .with(problems),
                form.accuracyClass(),
                problems.stream()
                        .filter(p -> p.path().equals("class"))
                        .map(Problem::sentence)
                        .toList());
        answer(ctx, "stores/balance.jte", page, problems);
    }
}
