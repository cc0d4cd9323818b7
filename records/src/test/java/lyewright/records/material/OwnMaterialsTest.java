package lyewright.records.material;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lyewright.formula.OwnMaterial;
import lyewright.measure.Problem;
import lyewright.records.Formulas;
import lyewright.records.OnBoth;
import lyewright.records.Workbench;
import org.junit.jupiter.api.Test;

@OnBoth
class OwnMaterialsTest extends Workbench {

    private static final List<OwnMaterial> EVERY_KIND = Formulas.read("""
                    recipe: every kind
                    oils: {olive-virgin: 100 %}
                    alkali: sodium
                    superfat: 5 %
                    water: 33 % lye
                    materials:
                      house-olive:
                        kind: oil
                        saponification value: 189.5 ± 1.0 mg KOH/g
                        acid value: 0.4 to 0.8 mg KOH/g
                        iodine value: 81 g/100 g
                        density: 0.912 g/ml
                        inci: "Olea Europaea (Olive) Fruit Oil"
                        cas: 8001-25-0
                        supplier: "Northquay Oils: \\"press\\" #2"
                        source: certificate L-204
                      olive-virgin:
                        saponification value: 190 mg KOH/g
                      goat milk, ours:
                        kind: milk
                        water: 87 %
                        fat: 4.1 ± 0.3 %
                        fat saponification value: 235 mg KOH/g
                        sugar: 4.5 %
                      cider vinegar:
                        kind: acid
                        acid: 5 % acetic acid
                      half lye:
                        kind: lye
                        strength: 50 % sodium
                      winter mix:
                        kind: oils
                        oils: {olive-virgin: 60 %, coconut: 40 %}
                      bees:
                        kind: wax
                        saponification value: 87 to 104 mg KOH/g
                    """).materials();

    private OwnMaterials materials() {
        return records.materials();
    }

    private static OwnMaterial material(String key) {
        return EVERY_KIND.stream()
                .filter(own -> own.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void the_revision_changes_with_every_change_and_only_then() {
        String none = materials().revision();
        KeptMaterial bees = materials().add(material("bees")).orThrow();
        String one = materials().revision();
        assertThat(one).isNotEqualTo(none);
        assertThat(materials().revision()).isEqualTo(one);
        materials().remove(bees.id()).orThrow();
        assertThat(materials().revision()).isEqualTo(none);
        materials().putBack(bees.id()).orThrow();
        assertThat(materials().revision()).isEqualTo(one);
    }

    @Test
    void every_kind_of_material_comes_back_to_the_last_digit() {
        EVERY_KIND.forEach(own -> materials().add(own).orThrow());
        restart();

        assertThat(materials().list())
                .extracting(KeptMaterial::material)
                .containsExactlyInAnyOrderElementsOf(EVERY_KIND);
        assertThat(materials().list()).extracting(KeptMaterial::key).startsWith("bees", "cider vinegar");
        assertThat(materials().findKey("half lye").orElseThrow().kind()).isEqualTo("lye");
    }

    @Test
    void a_key_belongs_to_one_material() {
        String id = materials().add(material("house-olive")).orThrow().id();

        assertThat(materials().add(material("house-olive")).problems())
                .extracting(Problem::path)
                .containsExactly("key");
        String other = materials().add(material("bees")).orThrow().id();
        assertThat(materials().change(other, material("house-olive")).problems())
                .extracting(Problem::path)
                .containsExactly("key");
        assertThat(materials().change(id, material("house-olive")).problems()).isEmpty();
    }

    @Test
    void a_removed_material_frees_its_key_and_can_be_put_back_while_nobody_has_it() {
        String id = materials().add(material("house-olive")).orThrow().id();
        materials().remove(id).orThrow();

        assertThat(materials().list()).isEmpty();
        assertThat(materials().findKey("house-olive")).isEmpty();
        String again = materials().add(material("house-olive")).orThrow().id();
        assertThat(materials().putBack(id).problems()).extracting(Problem::path).containsExactly("key");
        materials().remove(again).orThrow();
        assertThat(materials().putBack(id).orThrow().material()).isEqualTo(material("house-olive"));
        assertThat(materials().putBack("no such id").problems()).isNotEmpty();
    }

    @Test
    void a_material_is_changed_as_a_whole() {
        String id = materials().add(material("house-olive")).orThrow().id();

        materials().change(id, material("bees")).orThrow();

        assertThat(materials().find(id).orElseThrow().material()).isEqualTo(material("bees"));
        assertThat(materials().change("no such id", material("half lye")).problems())
                .isNotEmpty();
    }

    @Test
    void what_a_formula_file_would_refuse_is_refused_with_the_path_within_the_material() {
        OwnMaterial premix = material("winter mix");
        OwnMaterial short_ = new OwnMaterial(
                premix.key(),
                premix.kind(),
                premix.saponificationValue(),
                premix.acidValue(),
                premix.iodineValue(),
                premix.density(),
                premix.water(),
                premix.fat(),
                premix.fatSaponificationValue(),
                premix.sugar(),
                premix.salt(),
                premix.acid(),
                premix.strength(),
                List.of(premix.oils().get(0)),
                premix.inci(),
                premix.cas(),
                premix.supplier(),
                premix.source());

        assertThat(materials().add(short_).problems()).extracting(Problem::path).containsExactly("oils");
        assertThat(materials().list()).isEmpty();
    }

    @Test
    void lye_is_not_called_what_an_oil_is_called() {
        OwnMaterial lye = material("half lye");
        OwnMaterial wrong = OwnMaterial.made("coconut", OwnMaterial.LYE, lye.strength(), List.of(), "");
        assertThat(materials().add(wrong).problems()).extracting(Problem::path).containsExactly("key");
        String id = materials().add(lye).orThrow().id();
        assertThat(materials().change(id, wrong).problems()).isNotEmpty();
        assertThat(materials().list()).extracting(KeptMaterial::key).containsExactly("half lye");
    }
}
