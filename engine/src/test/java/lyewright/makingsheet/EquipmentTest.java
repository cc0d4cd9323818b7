package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import lyewright.fill.Fill;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EquipmentTest {

    private static Equipment register(String text) {
        return Equipment.parseBalances(text).orThrow();
    }

    @Test
    void without_a_register_there_is_a_kitchen_and_a_fine_balance() {
        assertThat(Equipment.USUAL.balances())
                .extracting(Balance::toString)
                .containsExactly("fine:500g:0.1g", "kitchen:5kg:1g");
    }

    @Test
    void balances_stand_finest_first_and_among_equals_the_weaker_first() {
        assertThat(register("kitchen:5kg:1g, shop:20kg:1g,fine:200g:0.01g").balances())
                .extracting(Balance::name)
                .containsExactly("fine", "kitchen", "shop");
    }

    @Test
    void the_finest_that_carries_the_load_is_taken() {
        Equipment three = register("shop:20kg:5g,kitchen:5kg:1g,fine:200g:0.01g");

        assertThat(three.finestFor(200).name()).isEqualTo("fine");
        assertThat(three.finestFor(200.01).name()).isEqualTo("kitchen");
        assertThat(three.finestFor(5000).name()).isEqualTo("kitchen");
        assertThat(three.finestFor(5001).name()).isEqualTo("shop");
    }

    @Test
    void where_none_carries_it_the_strongest_is_taken() {
        assertThat(register("shop:20kg:5g,kitchen:5kg:1g,fine:200g:0.01g")
                        .finestFor(21_000)
                        .name())
                .isEqualTo("shop");
        assertThat(register("fine:200g:1g,weak:100g:5g").finestFor(300).name())
                .as("the coarser is weaker here")
                .isEqualTo("fine");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | is not a balance",
                "kitchen:5kg:1g, | is not a balance",
                "kitchen:5kg:1g,fine | is not a balance",
                "kitchen:5kg:1g;fine:200g:0.01g | is not a balance",
                "kitchen:5kg:none | does not begin with a number"
            })
    void a_register_with_something_else_in_it_is_refused(String text, String reason) {
        Outcome<Equipment> register = Equipment.parseBalances(text);

        assertThat(register.problems()).hasSize(1);
        assertThat(register.problems().get(0).what()).contains(reason);
    }

    @Test
    void equipment_without_a_balance_is_a_broken_promise() {
        assertThatThrownBy(() -> new Equipment(List.of(), Map.of())).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void vessels_are_tared_unless_their_weight_is_given() {
        Equipment equipment =
                Equipment.USUAL.withVessels("lye jug:312g, oil pot:1.48kg").orThrow();

        assertThat(equipment.vesselGrams("lye jug")).isEqualTo(312);
        assertThat(equipment.vesselGrams("oil pot")).isEqualTo(1480);
        assertThat(equipment.vesselGrams("jug kelp")).isZero();
        assertThat(Equipment.USUAL.vesselGrams("lye jug")).isZero();
        assertThat(equipment.balances()).isEqualTo(Equipment.USUAL.balances());
    }

    @Test
    void a_portions_jug_may_have_colons_in_its_name() {
        assertThat(Equipment.USUAL.withVessels("jug sea: deep:95g").orThrow().vesselGrams("jug sea: deep"))
                .isEqualTo(95);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "lye jug | is not a vessel",
                ":312g | is not a vessel",
                "lye jug:312 | has no unit",
                "lye jug:-312g | is negative",
                "lye jug:heavy | does not begin with a number"
            })
    void what_is_no_vessel_is_refused(String text, String reason) {
        Outcome<Equipment> equipment = Equipment.USUAL.withVessels(text);

        assertThat(equipment.problems()).hasSize(1);
        assertThat(equipment.problems().get(0).what()).contains(reason);
        assertThat(equipment.problems().get(0).remedy()).isNotBlank();
    }

    @Test
    void a_vessels_weight_counts_in_the_load_and_in_every_reading() {
        AFormula bar = AFormula.ofOils("house-oil", "100 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("5 %");
        Equipment equipment =
                Equipment.USUAL.withVessels("lye jug:312g,oil pot:1480g").orThrow();

        MakingSheet light = bar.sheet(
                Fill.oilMass(300),
                Equipment.USUAL.withVessels("lye jug:312g,oil pot:150g").orThrow());
        MakingSheet standing = bar.sheet(Fill.oilMass(300), equipment);

        // 300 g of oil fit the fine balance in a pot of 150 g; with the pot of 1480 g they do not
        assertThat(pot(light).weighings().get(0).balance().name()).isEqualTo("fine");
        assertThat(pot(standing).weighings().get(0).balance().name()).isEqualTo("kitchen");
        assertThat(pot(standing).emptyGrams()).isEqualTo(1480);
        assertThat(pot(standing).weighings().get(0).reading().grams()).isEqualTo(1780, within(1e-9));
    }

    @Test
    void a_vessel_of_unknown_weight_burdens_its_balance_as_one_usually_does_but_is_tared() {
        AFormula bar = AFormula.ofOils("house-oil", "100 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("5 %");
        MakingSheet sheet = bar.sheet(Fill.oilMass(300), Equipment.USUAL);

        // 300 g of oil and a pot of 500 g are too much for 500 g, though the oil alone is not
        assertThat(pot(sheet).weighings().get(0).balance().name()).isEqualTo("kitchen");
        assertThat(pot(sheet).emptyGrams()).isZero();
        assertThat(pot(sheet).weighings().get(0).reading().grams()).isEqualTo(300, within(1e-9));
    }

    @Test
    void what_vessels_usually_weigh_is_common_practice() {
        assertThat(Vessel.Kind.values())
                .extracting(kind -> kind.word() + " " + kind.usualGrams(Tables.bundled()))
                .containsExactly("lye jug 300.0", "oil pot 500.0", "cup 20.0");
    }

    private static Vessel pot(MakingSheet sheet) {
        return sheet.vessels().stream()
                .filter(v -> v.kind() == Vessel.Kind.OIL_POT)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_decimal_comma_in_a_register_is_told_as_one() {
        assertThat(Equipment.parseBalances("kitchen:5kg:1g,fine:200g:0,01g")
                        .problems()
                        .get(0)
                        .remedy())
                .isEqualTo("write 0.01g");
        assertThat(Equipment.parseBalances("kitchen:5kg:1g,2nd:200g:0.1g")
                        .orThrow()
                        .balances())
                .extracting(Balance::name)
                .containsExactly("2nd", "kitchen");
    }

    @Test
    void a_vessel_the_sheet_does_not_have_is_refused() {
        assertThat(Equipment.USUAL.withVessels("lye jgu:312g").problems().get(0).what())
                .contains("lye jgu");
    }
}
