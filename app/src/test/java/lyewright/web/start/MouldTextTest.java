package lyewright.web.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import lyewright.fill.Fill;
import lyewright.fill.FillText;
import lyewright.fill.Mould;
import lyewright.fill.Shape;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A mould said in one line. */
class MouldTextTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "300 x 80 x 65 mm",
                "300x80x65mm",
                "30 × 8 × 6.5 cm",
                "30cm x 8cm x 65mm",
                " 300 X 80 X 65 MM ",
                "300 by 80 by 65 mm",
                "300*80*65 mm",
                "loaf 300 x 80 x 65 mm",
                "my loaf: 300 x 80 x 65 mm",
                "box 300\u00a0x\u00a080\u00a0x\u00a065\u00a0mm"
            })
    void three_sides_are_a_loaf(String typed) {
        AskedMould asked = MouldText.read(typed).orThrow();
        assertThat(asked.mould().shape()).contains(new Shape.Loaf(300, 80, 65));
        assertThat(asked.target()).isEqualTo(new Fill.FullMould());
        assertThat(asked.called().takes()).isEqualTo("Your loaf takes ");
    }

    @Test
    void a_slab_a_tube_and_cavities_are_told_apart() {
        assertThat(MouldText.read("slab 400 x 300 x 40 mm").orThrow().mould().shape())
                .contains(new Shape.Slab(400, 300, 40));
        assertThat(MouldText.read("300 x 76 mm").orThrow().mould().shape()).contains(new Shape.Tube(300, 76));
        assertThat(MouldText.read("tube 30 x 7.6 cm").orThrow().mould().shape()).contains(new Shape.Tube(300, 76));
        assertThat(MouldText.read("12 x 95 ml").orThrow().mould().shape()).contains(new Shape.Cavities(12, 95));
        assertThat(MouldText.read("12 x 95 ml").orThrow().called().takes()).isEqualTo("Your cavities take ");
        assertThat(MouldText.read("1.2 l").orThrow().mould().shape()).contains(new Shape.Cavities(1, 1200));
        assertThat(MouldText.read("1.2 l").orThrow().called().takes()).isEqualTo("Your mould takes ");
        assertThat(MouldText.read("1450 g water").orThrow().mould().waterFillGrams())
                .contains(1450.0);
    }

    /** What is typed here is read by the making page as the same. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "loaf 300 x 80 x 65 mm",
                "30 by 8 by 6.5 cm",
                "tube 30 x 7.6 cm",
                "12 x 95 ml",
                "1.2 l",
                "10 x 3 1/2 x 2¾ in",
                "slab 400 x 300 x 40 mm"
            })
    void a_mould_is_handed_on_as_the_making_page_reads_it(String typed) {
        AskedMould asked = MouldText.read(typed).orThrow();
        assertThat(asked.make()).containsEntry("mould", "typed").containsEntry("much", "full");
        Mould made = FillText.mould(asked.make().getOrDefault("inside", "")).orThrow();
        assertThat(made.shape().orElseThrow().millilitres())
                .isEqualTo(asked.mould().shape().orElseThrow().millilitres());
    }

    @Test
    void an_amount_is_handed_on_as_one() {
        assertThat(MouldText.read("1.5 kg").orThrow().make()).isEqualTo(Map.of("much", "total", "amount", "1.5 kg"));
        assertThat(MouldText.read("10 x 110 g").orThrow().make())
                .isEqualTo(Map.of("much", "bars", "amount", "10x110 g"));
    }

    @Test
    void a_mass_and_bars_ask_for_so_much() {
        assertThat(MouldText.read("1500 g").orThrow().target()).isEqualTo(new Fill.MouldMass(1500));
        assertThat(MouldText.read("1.5kg").orThrow().target()).isEqualTo(new Fill.MouldMass(1500));
        assertThat(MouldText.read("1500 g").orThrow().called().takes()).isEqualTo("1500 g is ");
        assertThat(MouldText.read("10 x 110 g").orThrow().target()).isEqualTo(new Fill.Bars(10, 110, false));
        assertThat(MouldText.read("10 x 110 g").orThrow().called().takes()).isEqualTo("10 such bars are ");
        assertThat(MouldText.read("Bars: 10 by 110 g").orThrow().target()).isEqualTo(new Fill.Bars(10, 110, false));
        assertThat(MouldText.read("my mould, 1500 g").orThrow().target()).isEqualTo(new Fill.MouldMass(1500));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a loaf",
                "loaf",
                "300 x 80 x 65",
                "300 x 80 x 65 x 20 mm",
                "0 x 80 x 65 mm",
                "0 g",
                "0.5 g",
                "99999 kg",
                "900 x 900 x 90000 cm",
                "12 x ml",
                "x",
                "1,5 kg",
                "-300 x 80 x 65 mm",
                "0 x 95 ml",
                "0 x 110 g",
                "0 l",
                "<script>alert(1)</script>",
                "§§§"
            })
    void what_is_no_size_is_refused_with_what_to_write(String typed) {
        Outcome<AskedMould> read = MouldText.read(typed);
        assertThat(read.problems()).as(typed).hasSize(1);
        assertThat(read.problems().get(0).remedy()).isNotBlank();
    }

    @Test
    void a_text_of_a_thousand_letters_is_not_repeated() {
        assertThat(MouldText.read("x".repeat(1000)).problems().get(0).sentence())
                .hasSizeLessThan(120);
    }
}
