package lyewright.web.stores;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.material.Tables;
import lyewright.records.equipment.EquipmentRegister;
import lyewright.records.material.OwnMaterials;
import lyewright.records.setting.Units;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The stores over HTTP, by whole pages, as they are without scripts. */
class StoresPagesTest {

    private static final int LARGEST_PAGE = 150 * 1024;

    @TempDir
    private static Path home;

    private static TestWorkshop workshop;

    @BeforeAll
    static void start() {
        workshop = TestWorkshop.start(home, Units.GRAMS, shop -> List.of(new StoresPages(shop)));
    }

    @AfterAll
    static void stop() {
        workshop.close();
    }

    @BeforeEach
    void clearTheStores() {
        EquipmentRegister register = workshop.shop().records().equipment();
        register.moulds().forEach(mould -> register.removeMould(mould.id()));
        register.balances().forEach(balance -> register.removeBalance(balance.id()));
        register.jugs().forEach(jug -> register.removeJug(jug.id()));
        OwnMaterials materials = workshop.shop().records().materials();
        materials.list().forEach(material -> materials.remove(material.id()));
    }

    /** A thing as it is typed, right and wrong. */
    record Typed(Thing thing, String name, List<String> right, List<String> changed, List<String> wrong, String field) {

        String[] with(List<String> fields, String... more) {
            List<String> all = new ArrayList<>(fields);
            all.addAll(Arrays.asList(more));
            return all.toArray(String[]::new);
        }

        @Override
        public String toString() {
            return thing.word();
        }
    }

    static List<Typed> things() {
        return List.of(
                new Typed(
                        Thing.MOULD,
                        "Long loaf",
                        List.of("kind", "loaf", "name", "Long loaf", "size", "300 x 80 x 65 mm", "bar", "25 mm"),
                        List.of("kind", "loaf", "name", "Long loaf", "size", "400 x 80 x 65 mm", "bar", "25 mm"),
                        List.of("kind", "loaf", "name", "Long loaf", "size", "300 by eighty", "bar", "25 mm"),
                        "size"),
                new Typed(
                        Thing.BALANCE,
                        "letters",
                        List.of("name", "letters", "capacity", "11 lb", "step", "0.05 oz", "class", ""),
                        List.of("name", "letters", "capacity", "11 lb", "step", "0.1 oz", "class", "III"),
                        List.of("name", "letters", "capacity", "11 lb", "step", "0,05 oz", "class", ""),
                        "step"),
                new Typed(
                        Thing.JUG,
                        "White jug",
                        List.of("name", "White jug", "empty", "312 g", "use", "lye jug"),
                        List.of("name", "White jug", "empty", "298 g", "use", "oil pot"),
                        List.of("name", "White jug", "empty", "312", "use", "lye jug"),
                        "empty"),
                new Typed(
                        Thing.MATERIAL,
                        "house-olive",
                        List.of("kind", "oil", "key", "house-olive", "saponification value", "189.5 ± 1.0"),
                        List.of("kind", "oil", "key", "house-olive", "saponification value", "188 to 190"),
                        List.of("kind", "oil", "key", "house-olive", "saponification value", "0.1895"),
                        "saponification value"));
    }

    @ParameterizedTest
    @MethodSource("things")
    void is_added_and_listed_with_a_way_back(Typed typed) throws Exception {
        HttpResponse<String> added = workshop.post(typed.thing().address(), typed.with(typed.right()));
        assertThat(added.statusCode()).isEqualTo(303);
        HttpResponse<String> told = workshop.get(TestWorkshop.wayOn(added));
        assertThat(told.body()).contains(typed.name() + " was added.").contains("Take it out again");
        String id = onlyId(typed);
        workshop.post(typed.thing().address() + "/" + id + "/remove");
        assertThat(workshop.get("/stores").body()).doesNotContain("/" + id);
    }

    @ParameterizedTest
    @MethodSource("things")
    void a_second_one_of_the_same_name_is_refused_and_leads_to_the_first(Typed typed) throws Exception {
        workshop.post(typed.thing().address(), typed.with(typed.right()));
        String id = onlyId(typed);
        List<String> again = new ArrayList<>(typed.changed());
        int name = again.indexOf(typed.name());
        again.set(name, typed.name().toUpperCase(java.util.Locale.ROOT));
        if (typed.thing() == Thing.MATERIAL) {
            again.set(name, typed.name());
        }
        HttpResponse<String> refused = workshop.post(typed.thing().address(), typed.with(again));
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body())
                .contains("there is a " + typed.thing().word() + " '" + typed.name() + "' already")
                .contains("href=\"" + typed.thing().address() + "/" + id + "\"");
        assertThat(ids(typed)).containsExactly(id);
        workshop.post(typed.thing().address() + "/" + id + "/remove");
        assertThat(workshop.post(typed.thing().address(), typed.with(typed.right()))
                        .statusCode())
                .isEqualTo(303);
        workshop.post(typed.thing().address() + "/" + onlyId(typed) + "/remove");
    }

    @ParameterizedTest
    @MethodSource("things")
    void wrong_input_comes_back_as_typed_with_its_trouble_beside_its_field(Typed typed) throws Exception {
        HttpResponse<String> refused = workshop.post(typed.thing().address(), typed.with(typed.wrong()));
        assertThat(refused.statusCode()).isEqualTo(422);
        String field = "f-" + typed.field().replace(' ', '-');
        assertThat(refused.body())
                .contains("id=\"" + field + "-trouble\"")
                .containsPattern("id=\"" + field + "\"[^>]*aria-invalid=\"true\"");
        for (int i = 0; i < typed.wrong().size(); i += 2) {
            if (!List.of("class", "use").contains(typed.wrong().get(i))) {
                assertThat(refused.body()).contains("value=\"" + typed.wrong().get(i + 1) + "\"");
            }
        }
        assertThat(ids(typed)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("things")
    void nothing_typed_is_refused_with_what_is_missing(Typed typed) throws Exception {
        HttpResponse<String> refused =
                workshop.post(typed.thing().address(), "kind", typed.right().get(1));
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("aria-invalid=\"true\"");
        assertThat(workshop.post(typed.thing().address()).statusCode()).isEqualTo(422);
    }

    @ParameterizedTest
    @MethodSource("things")
    void is_changed_and_changed_back(Typed typed) throws Exception {
        String id = add(typed);
        String at = typed.thing().address() + "/" + id;
        String before = workshop.get(at).body();
        HttpResponse<String> changed =
                workshop.post(at, typed.with(typed.changed(), "seen", TestWorkshop.hidden(workshop.get(at), "seen")));
        assertThat(changed.statusCode()).isEqualTo(303);
        assertThat(workshop.get(TestWorkshop.wayOn(changed)).body())
                .contains(typed.name() + " was changed.")
                .contains("Undo the change");
        assertThat(workshop.get(at).body()).isNotEqualTo(before);
        HttpResponse<String> undone = workshop.post(at + "/undo");
        assertThat(undone.statusCode()).isEqualTo(303);
        assertThat(workshop.get(at).body()).isEqualTo(before);
        assertThat(workshop.post(at + "/undo").statusCode()).isEqualTo(409);
    }

    @ParameterizedTest
    @MethodSource("things")
    void two_windows_do_not_write_over_each_other_unseen(Typed typed) throws Exception {
        String at = typed.thing().address() + "/" + add(typed);
        String seen = TestWorkshop.hidden(workshop.get(at), "seen");
        assertThat(workshop.post(at, typed.with(typed.changed(), "seen", seen)).statusCode())
                .isEqualTo(303);
        HttpResponse<String> late = workshop.post(at, typed.with(typed.right(), "seen", seen));
        assertThat(late.statusCode()).isEqualTo(422);
        assertThat(late.body()).contains("changed in another window");
        assertThat(late.body()).contains("value=\"" + typed.right().get(3) + "\"");
        HttpResponse<String> again =
                workshop.post(at, typed.with(typed.right(), "seen", TestWorkshop.hidden(late, "seen")));
        assertThat(again.statusCode()).isEqualTo(303);
    }

    @ParameterizedTest
    @MethodSource("things")
    void is_removed_and_put_back(Typed typed) throws Exception {
        String id = add(typed);
        String at = typed.thing().address() + "/" + id;
        HttpResponse<String> removed = workshop.post(at + "/remove");
        assertThat(removed.statusCode()).isEqualTo(303);
        assertThat(workshop.get(TestWorkshop.wayOn(removed)).body())
                .contains(typed.name() + " was removed.")
                .contains("action=\"" + at + "/put-back\"");
        HttpResponse<String> gone = workshop.get(at);
        assertThat(gone.statusCode()).isEqualTo(410);
        assertThat(gone.body()).contains("Put it back");
        assertThat(workshop.post(at + "/put-back").statusCode()).isEqualTo(303);
        assertThat(ids(typed)).containsExactly(id);
        // the way back is told once, not again when the page of the removal is loaded again
        assertThat(workshop.get(TestWorkshop.wayOn(removed)).body()).doesNotContain("was removed.");
    }

    @ParameterizedTest
    @MethodSource("things")
    void what_was_removed_meanwhile_keeps_what_was_typed_and_becomes_a_new_one(Typed typed) throws Exception {
        String at = typed.thing().address() + "/" + add(typed);
        String seen = TestWorkshop.hidden(workshop.get(at), "seen");
        workshop.post(at + "/remove");
        HttpResponse<String> late = workshop.post(at, typed.with(typed.changed(), "seen", seen));
        assertThat(late.statusCode()).isEqualTo(422);
        assertThat(late.body())
                .contains("was removed in the meantime")
                .contains("action=\"" + typed.thing().address() + "\"")
                .contains("value=\"" + typed.changed().get(3) + "\"");
        assertThat(workshop.post(typed.thing().address(), typed.with(typed.changed()))
                        .statusCode())
                .isEqualTo(303);
    }

    @ParameterizedTest
    @MethodSource("things")
    void what_was_never_there_is_not_here(Typed typed) throws Exception {
        for (String id : List.of("01a22107-18b7-774e-b03e-f6eaee929af7", "x", "%3Cscript%3E")) {
            String at = typed.thing().address() + "/" + id;
            assertThat(workshop.get(at).statusCode()).as(at).isEqualTo(404);
            assertThat(workshop.post(at, typed.with(typed.right())).statusCode())
                    .as(at)
                    .isEqualTo(404);
            for (String step : List.of("/remove", "/put-back", "/undo")) {
                assertThat(workshop.post(at + step).statusCode()).as(at + step).isEqualTo(409);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("things")
    void hostile_text_is_shown_as_text(Typed typed) throws Exception {
        String hostile = "<script>alert(1)</script>\"' onload=x &amp;";
        List<String> fields = new ArrayList<>(typed.right());
        for (int i = 0; i < fields.size(); i += 2) {
            if (List.of("name", "key").contains(fields.get(i))) {
                fields.set(i + 1, hostile);
            }
        }
        HttpResponse<String> added = workshop.post(typed.thing().address(), typed.with(fields));
        assertThat(added.statusCode()).isEqualTo(303);
        for (String page : List.of(TestWorkshop.wayOn(added), typed.thing().address() + "/" + onlyId(typed))) {
            assertThat(workshop.get(page).body())
                    .doesNotContain("<script>alert")
                    .contains("&lt;script&gt;alert");
        }
    }

    @ParameterizedTest
    @MethodSource("things")
    void names_without_end_and_control_characters_are_refused(Typed typed) throws Exception {
        for (String name : List.of("x".repeat(201), "a\u0001b", "\u200b", "a\nb", "x".repeat(3_000_000))) {
            List<String> fields = new ArrayList<>(typed.right());
            int at = fields.indexOf("name") >= 0 ? fields.indexOf("name") : fields.indexOf("key");
            fields.set(at + 1, name);
            HttpResponse<String> answer = workshop.post(typed.thing().address(), typed.with(fields));
            assertThat(answer.statusCode()).as("%.20s", name).isEqualTo(name.contains("\u0000") ? 400 : 422);
            assertThat(answer.body().length()).isLessThan(LARGEST_PAGE);
        }
        assertThat(ids(typed)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(MouldKind.class)
    void each_kind_of_mould_is_asked_only_what_it_needs(MouldKind kind) throws Exception {
        assertThat(workshop.get("/stores/moulds/new").body()).contains("new?kind=" + kind.word());
        String form = workshop.get("/stores/moulds/new?kind=" + kind.word()).body();
        assertThat(form.contains("name=\"bar\"")).isEqualTo(kind.isCut());
        assertThat(form.contains("name=\"size\"")).isEqualTo(kind != MouldKind.UNMEASURED);
        assertThat(form.contains("name=\"trim\"")).isEqualTo(kind.hasTop());
    }

    @ParameterizedTest
    @EnumSource(MaterialKind.class)
    void each_kind_of_material_has_a_form(MaterialKind kind) throws Exception {
        String word = kind.word().isEmpty() ? "tables" : kind.word();
        assertThat(workshop.get("/stores/materials/new").body()).contains("new?kind=" + word);
        boolean ofTables = kind == MaterialKind.OF_TABLES;
        HttpResponse<String> form =
                workshop.get("/stores/materials/new?kind=" + word + (ofTables ? "&key=olive-virgin" : ""));
        assertThat(form.statusCode()).isEqualTo(200);
        kind.asked().forEach(field -> assertThat(form.body()).contains("name=\"" + field.path() + "\""));
        kind.folded().forEach(field -> assertThat(form.body()).contains("name=\"" + field.path() + "\""));
    }

    @Test
    void an_unknown_kind_is_asked_again() throws Exception {
        assertThat(workshop.get("/stores/moulds/new?kind=%3Cb%3E").body()).contains("What kind of mould is it?");
        assertThat(workshop.get("/stores/materials/new?kind=%3Cb%3E").body()).contains("What is it?");
    }

    @Test
    void the_picture_changes_with_what_is_typed_and_keeps_nothing() throws Exception {
        HttpResponse<String> drawn = workshop.post(
                "/stores/moulds/shown", "kind", "loaf", "size", "300 x 80 x 65 mm", "bar", "25 mm", "name", "");
        assertThat(drawn.statusCode()).isEqualTo(200);
        assertThat(drawn.body())
                .contains("<svg")
                .contains("12 bars")
                .contains("Holds 1560 ml")
                .doesNotContain("<html");
        HttpResponse<String> half = workshop.post("/stores/moulds/shown", "kind", "loaf", "size", "300 x 80");
        assertThat(half.statusCode()).isEqualTo(200);
        assertThat(half.body()).doesNotContain("<svg").contains("has 2 measures, not 3");
        assertThat(workshop.shop().records().equipment().moulds()).isEmpty();
    }

    @Test
    void the_tables_stand_beside_a_material_of_their_key() throws Exception {
        HttpResponse<String> beside =
                workshop.post("/stores/materials/shown", "kind", "", "key", "coconut", "saponification value", "257");
        assertThat(beside.body())
                .contains("248 to 265")
                .contains("CXS 210-1999")
                .contains("257.0 mg KOH/g");
        assertThat(workshop.get("/stores/materials/new?key=coconut").body()).contains("248 to 265");
        workshop.post("/stores/materials", "kind", "", "key", "coconut", "saponification value", "257");
        assertThat(workshop.get("/stores").body()).contains("goes before them");
        assertThat(workshop.get("/stores/tables/coconut").body()).contains("My own figures go before these");
    }

    @Test
    void two_materials_of_one_key_are_refused_at_the_key() throws Exception {
        String[] olive = {"kind", "oil", "key", "house-olive", "saponification value", "189"};
        assertThat(workshop.post("/stores/materials", olive).statusCode()).isEqualTo(303);
        HttpResponse<String> second = workshop.post("/stores/materials", olive);
        assertThat(second.statusCode()).isEqualTo(422);
        assertThat(second.body()).contains("id=\"f-key-trouble\"").contains("there is a material");
    }

    @Test
    void a_removed_key_that_was_given_again_is_not_put_back_over_it() throws Exception {
        String[] olive = {"kind", "oil", "key", "house-olive", "saponification value", "189"};
        workshop.post("/stores/materials", olive);
        String id = workshop.shop().records().materials().list().get(0).id();
        workshop.post("/stores/materials/" + id + "/remove");
        workshop.post("/stores/materials", olive);
        HttpResponse<String> back = workshop.post("/stores/materials/" + id + "/put-back");
        assertThat(back.statusCode()).isEqualTo(409);
        assertThat(back.body()).contains("There is a material");
        assertThat(workshop.shop().records().materials().list()).hasSize(1);
    }

    @Test
    void without_a_register_the_usual_two_balances_are_named_as_taken_for_granted() throws Exception {
        String empty = workshop.get("/stores").body();
        assertThat(empty)
                .contains("for granted")
                .contains("carries 5 kg in steps of 1 g")
                .contains("0.1 g");
        workshop.post("/stores/balances", "name", "letters", "capacity", "11 lb", "step", "0.05 oz");
        assertThat(workshop.get("/stores").body()).doesNotContain("for granted").contains("0.05 oz");
    }

    @Test
    void two_lye_jugs_are_told_to_be_tared() throws Exception {
        workshop.post("/stores/jugs", "name", "White", "empty", "312 g", "use", "lye jug");
        assertThat(workshop.get("/stores").body()).doesNotContain("tares that vessel");
        workshop.post("/stores/jugs", "name", "Blue", "empty", "298 g", "use", "lye jug");
        assertThat(workshop.get("/stores").body()).contains("tares that vessel");
    }

    @Test
    void every_material_of_the_tables_has_a_page_with_its_sources() throws Exception {
        Tables tables = Tables.bundled();
        List<String> keys = new ArrayList<>();
        tables.oils().forEach(oil -> keys.add(oil.key()));
        tables.additives().forEach(add -> keys.add(add.key()));
        for (String key : keys) {
            HttpResponse<String> page = workshop.get("/stores/tables/" + key);
            assertThat(page.statusCode()).as(key).isEqualTo(200);
            assertThat(page.body().length()).as(key).isLessThan(LARGEST_PAGE);
        }
        assertThat(workshop.get("/stores/tables/nothing-of-the-kind").statusCode())
                .isEqualTo(404);
    }

    @Test
    void the_tables_are_searched_by_name_key_and_kind() throws Exception {
        assertThat(workshop.get("/stores/tables?q=olive+virgin").body())
                .contains("tables/olive-virgin")
                .doesNotContain("tables/coconut");
        assertThat(workshop.get("/stores/tables?q=clay").body()).contains("tables/green-clay");
        HttpResponse<String> none = workshop.get("/stores/tables?q=coconutt");
        assertThat(none.body())
                .contains("Nothing with")
                .contains("Did you mean")
                .contains("tables/coconut");
        assertThat(workshop.get("/stores/tables?q=%3Cscript%3Ealert(1)%3C/script%3E")
                        .body())
                .doesNotContain("<script>alert");
    }

    @Test
    void pages_stay_small_with_thirty_moulds() throws Exception {
        for (int i = 0; i < 30; i++) {
            workshop.post(
                    "/stores/moulds",
                    "kind",
                    "slab",
                    "name",
                    "Slab " + i,
                    "size",
                    "360 x 240 x 30 mm",
                    "bar",
                    "60 x 80 mm");
        }
        for (String page : List.of(
                "/stores",
                "/stores/tables",
                "/stores/moulds/new",
                "/stores/materials/new",
                "/stores/materials/new?kind=tables")) {
            int bytes = workshop.get(page).body().getBytes(StandardCharsets.UTF_8).length;
            assertThat(bytes).as(page).isLessThan(LARGEST_PAGE);
        }
    }

    private String add(Typed typed) throws Exception {
        HttpResponse<String> added = workshop.post(typed.thing().address(), typed.with(typed.right()));
        assertThat(added.statusCode()).isEqualTo(303);
        return onlyId(typed);
    }

    private String onlyId(Typed typed) throws Exception {
        List<String> ids = ids(typed);
        assertThat(ids).hasSize(1);
        return ids.get(0);
    }

    /** Ids of what the page of all lists. */
    private List<String> ids(Typed typed) throws Exception {
        Matcher links = Pattern.compile("href=\"" + typed.thing().address() + "/([0-9a-f-]{36})\"")
                .matcher(workshop.get("/stores").body());
        List<String> ids = new ArrayList<>();
        while (links.find()) {
            ids.add(links.group(1));
        }
        return ids;
    }
}
