package lyewright.records.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lyewright.makingsheet.Balance;
import lyewright.measure.Outcome;
import lyewright.measure.WrittenMass;
import lyewright.records.Formulas;
import lyewright.records.OnBoth;
import lyewright.records.Records;
import lyewright.records.Workbench;
import lyewright.records.equipment.JugUse;
import lyewright.records.setting.Degrees;
import lyewright.records.setting.Market;
import lyewright.records.setting.Paper;
import lyewright.records.setting.Units;
import lyewright.records.setting.Workshop;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.LotSaid;
import lyewright.records.stock.MoveKind;
import lyewright.records.stock.StockItem;
import lyewright.records.stock.StockMove;
import lyewright.records.stock.Taking;
import lyewright.records.store.Author;
import lyewright.stock.LotStatus;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A helper weighs and ticks; changes no recipe, no lot, no price. Whoever writes anything is written beside it. */
@OnBoth
class RolesTest extends Workbench {

    private Records wennas;
    private Author wenna = Author.DESK;
    private String recipe = "";
    private String item = "";
    private String lot = "";

    @BeforeEach
    void a_workshop_with_a_helper() {
        Person person = records.people().add("Wenna", Role.HELPER).orThrow();
        Device telephone =
                records.devices().letIn(person.id(), "telephone").orThrow().device();
        wenna = new Author(person.id(), Optional.of(telephone.id()));
        wennas = records.as(wenna);
        recipe = records.recipes().add(Formulas.named("Tideline")).orThrow().recipeId();
        StockItem coconut = records.items()
                .add(ItemSaid.of("Coconut oil", ItemKind.OIL, Identity.ofKey("coconut")))
                .orThrow();
        item = coconut.id();
        lot = records.lots()
                .receive(Author.DESK, "", List.of(new Arrival(item, said(), 1_000_000)))
                .orThrow()
                .get(0)
                .id();
    }

    private static LotSaid said() {
        return new LotSaid(
                "",
                Optional.empty(),
                "NQ-118",
                LocalDate.of(2026, 11, 25),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                LotStatus.USABLE,
                Optional.empty(),
                "");
    }

    @Test
    void a_helper_changes_no_recipe_no_lot_and_no_price() {
        KeptLot kept = records.lots().find(lot).orElseThrow();
        long received = records.lots().moves(lot).get(0).number();
        Stream<Outcome<?>> tried = Stream.of(
                wennas.recipes().add(Formulas.named("Ebb")),
                wennas.recipes().save(recipe, 1, Formulas.of("Tideline", 1, "6 %", ""), false, ""),
                wennas.recipes().importFormula(Formulas.named("Ebb")),
                wennas.recipes().rename(recipe, "Ebb"),
                wennas.recipes().duplicate(recipe, "Ebb"),
                wennas.recipes().delete(recipe),
                wennas.recipes().undelete(recipe),
                wennas.recipes().setPhotograph(recipe, Optional.empty()),
                wennas.settings().save(records.settings().workshop().orElseGet(RolesTest::workshop)),
                wennas.equipment()
                        .addBalance(Balance.parse("fine:200g:0.01g:II").orThrow()),
                wennas.equipment()
                        .addJug("white jug", WrittenMass.parse("300 g").orThrow(), JugUse.LYE_JUG),
                wennas.suppliers().add("North Quay", "", ""),
                wennas.items().add(ItemSaid.of("Olive oil", ItemKind.OIL, Identity.ofKey("olive"))),
                wennas.items().change(records.items().find(item).orElseThrow()),
                wennas.items().remove(item),
                wennas.lots().receive(wenna, "", List.of(new Arrival(item, said(), 1))),
                wennas.lots().make(wenna, "", new Arrival(item, said(), 1), List.of(new Taking(lot, 1, ""))),
                wennas.lots().change(wenna, lot, kept.said()),
                wennas.lots().correct(wenna, received, "wrong"),
                wennas.people().add("Jory", Role.MAKER),
                wennas.people().change(wenna.person(), "Wenna", Role.MAKER),
                wennas.devices().letIn(wenna.person(), "another"));

        assertThat(tried.toList())
                .hasSize(22)
                .allSatisfy(outcome -> assertThat(outcome.problems())
                        .anyMatch(problem -> problem.what().contains("a helper weighs and ticks")));
        assertThat(records.recipes().find(recipe).orElseThrow().name()).isEqualTo("Tideline");
        assertThat(records.lots().find(lot).orElseThrow().left()).isEqualTo(1_000_000);
    }

    private static Workshop workshop() {
        return new Workshop(
                "Gannet Stair Soap",
                Units.GRAMS,
                Degrees.CELSIUS,
                "GBP",
                Market.GB,
                Paper.A4,
                Optional.empty(),
                Optional.empty(),
                "1 %");
    }

    @Test
    void a_helper_takes_what_is_weighed_counts_what_is_there_and_prints_a_sheet() {
        wennas.lots()
                .take(wenna, "", List.of(new Taking(lot, 250_000, "")), StockMove.Told.of(MoveKind.USE, 0))
                .orThrow();
        wennas.lots()
                .count(wenna, "", Map.of(lot, 740_000L), Map.of(lot, "spilt"))
                .orThrow();
        wennas.recipes().markMade(recipe, 1).orThrow();

        assertThat(records.lots().find(lot).orElseThrow().left()).isEqualTo(740_000);
        assertThat(records.lots().moves(lot))
                .filteredOn(move -> move.told().kind() != MoveKind.RECEIPT)
                .hasSize(2)
                .allMatch(move -> move.author().equals(wenna));
        assertThat(records.signatures().last(1))
                .allMatch(line -> line.deed().equals(new Deed(Deed.Thing.RECIPE, Deed.Act.MADE))
                        && line.author().equals(wenna));
    }

    @Test
    void what_is_written_is_signed_by_whoever_wrote_it() {
        Person ruth = records.people().add("Ruth", Role.MAKER).orThrow();
        Device laptop = records.devices().letIn(ruth.id(), "laptop").orThrow().device();
        Author hers = new Author(ruth.id(), Optional.of(laptop.id()));

        records.as(hers)
                .recipes()
                .save(recipe, 1, Formulas.of("Tideline", 1, "6 %", ""), true, "milder")
                .orThrow();

        assertThat(records.signatures().versions(recipe).values())
                .extracting(Person::name)
                .containsExactly("The maker", "Ruth");
        assertThat(records.signatures().last(1).get(0).author()).isEqualTo(hers);
    }

    @Test
    void what_is_refused_is_not_signed() {
        int before = records.signatures().last(100).size();

        records.recipes().rename(recipe, "");
        records.recipes().rename("no such recipe", "Ebb");
        wennas.recipes().delete(recipe);

        assertThat(records.signatures().last(100)).hasSize(before);
    }

    @Test
    void a_helper_becomes_a_maker_and_back_and_it_counts_at_once() {
        records.people().change(wenna.person(), "Wenna", Role.MAKER).orThrow();
        assertThat(wennas.recipes().rename(recipe, "Ebb").problems()).isEmpty();

        records.people().change(wenna.person(), "Wenna", Role.HELPER).orThrow();
        assertThat(wennas.recipes().rename(recipe, "Flow").problems()).isNotEmpty();
    }

    @Test
    void the_maker_at_the_computer_stays_one() {
        String first = Author.DESK.person();

        assertThat(records.people().change(first, "Ruth", Role.HELPER).problems())
                .isNotEmpty();
        assertThat(records.people().remove(first).problems()).isNotEmpty();
        records.people().change(first, "Ruth", Role.MAKER).orThrow();
        assertThat(records.people().list()).extracting(Person::name).containsExactly("Ruth", "Wenna");
    }

    @Test
    void two_people_of_one_name_could_not_be_told_apart() {
        assertThat(records.people().add("wenna", Role.HELPER).problems()).isNotEmpty();
        assertThat(records.people().add("The maker", Role.HELPER).problems()).isNotEmpty();
    }
}
