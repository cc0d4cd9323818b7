package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.formula.Purities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FattyAcidsJsonTest {

    private static final double SIXTH_DECIMAL = 1e-6; // percent and whatever the field is in

    @TempDir
    Path folder;

    private JsonNode json(String oils, String rest) throws IOException {
        return new ObjectMapper().readTree(text(oils, rest));
    }

    private String text(String oils, String rest) {
        Path file = Recipes.write(
                folder,
                "some.yaml",
                "recipe: Some\noils: {" + oils + "}\nalkali: sodium\nsuperfat: 5 %\nwater: 33 % lye\n" + rest);
        FormulaSource source = FormulaSource.read(file.toString(), Path.of("")).orThrow();
        OilPhaseAcids acids = OilPhaseAcids.of(source.resolve(Purities.ASSUMED).orThrow());
        return Json.text(json -> {
            json.writeStartObject();
            FattyAcidsJson.write(acids, json);
            json.writeEndObject();
        });
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    @Test
    void fields_stand_in_the_order_that_was_promised() throws IOException {
        JsonNode json = json("coconut: 60 %, olive-virgin: 30 %, beeswax: rest", "");

        assertThat(names(json)).containsExactly("fattyAcids", "unknownPercent", "oilPhase", "keeping");
        assertThat(names(json.at("/fattyAcids/0")))
                .containsExactly("acid", "name", "lowPercent", "percent", "highPercent");
        assertThat(names(json.get("oilPhase")))
                .containsExactly("saponificationValueFromAcids", "saponificationValueCd3a94", "iodineValueFromAcids");
        assertThat(names(json.get("keeping")))
                .containsExactly("iodineValue", "oxidisability", "cox", "pi", "ape", "bape", "sentences");
    }

    /** Coconut alone: 254.4 and 247.2 mg KOH/g, 9.5 g iodine/100 g, as told in docs/sources.md and its tests. */
    @Test
    void figures_are_those_of_the_oils() throws IOException {
        JsonNode json = json("coconut: 100 %", "");

        double sum = 0;
        for (JsonNode acid : json.get("fattyAcids")) {
            sum += acid.get("percent").asDouble();
        }
        assertThat(sum).isCloseTo(100, within(12 * SIXTH_DECIMAL));
        assertThat(json.at("/fattyAcids/3/acid").asText()).isEqualTo("C12:0");
        assertThat(json.at("/fattyAcids/3/name").asText()).isEqualTo("lauric acid");
        assertThat(json.at("/fattyAcids/3/lowPercent").asDouble()).isEqualTo(45.1);
        assertThat(json.at("/fattyAcids/3/highPercent").asDouble()).isEqualTo(53.2);
        assertThat(json.at("/oilPhase/saponificationValueFromAcids").asDouble()).isCloseTo(254.4, within(0.05));
        assertThat(json.at("/oilPhase/saponificationValueCd3a94").asDouble()).isCloseTo(247.2, within(0.05));
        assertThat(json.at("/oilPhase/iodineValueFromAcids").asDouble()).isCloseTo(9.5, within(0.05));
        assertThat(json.at("/keeping/iodineValue")).isEqualTo(json.at("/oilPhase/iodineValueFromAcids"));
        assertThat(json.get("unknownPercent").asDouble()).isZero();
        assertThat(json.at("/keeping/sentences")).hasSizeBetween(3, 5);
    }

    @Test
    void what_is_not_known_is_null_and_not_nothing() throws IOException {
        JsonNode json = json("mine: 100 %", "materials: {mine: {kind: oil, saponification value: 190}}\n");

        assertThat(json.get("fattyAcids")).isEmpty();
        assertThat(json.get("unknownPercent").asDouble()).isEqualTo(100);
        assertThat(json.get("keeping").isNull()).isTrue();
        assertThat(json.at("/oilPhase/saponificationValueFromAcids").isNull()).isTrue();
        assertThat(json.at("/oilPhase/iodineValueFromAcids").isNull()).isTrue();
    }

    @Test
    void numbers_have_no_more_than_six_decimals_and_no_exponent() {
        String text = text("coconut: 33.3 %, olive-virgin: 33.3 %, castor: rest", "");

        assertThat(text).containsPattern("[0-9]\\.[0-9]{6}");
        assertThat(text).doesNotContainPattern("[0-9]\\.[0-9]{7}").doesNotContainPattern("[0-9][eE][-+0-9]");
    }
}
