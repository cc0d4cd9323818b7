package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Path;
import lyewright.chemistry.BatchComposition;
import org.junit.jupiter.api.Test;

class CompositionJsonTest {

    private static JsonNode json(BatchComposition composition) throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.writeStartObject();
            CompositionJson.writeMoments(json, composition.moments());
            CompositionJson.writeWorstBar(json, composition.worstBar());
            json.writeEndObject();
        }
        return new ObjectMapper().readTree(text.toString());
    }

    @Test
    void three_moments_with_their_fields_in_order() throws IOException {
        JsonNode moments = json(Compositions.of(Recipes.SALT_BAR)).get("composition");

        assertThat(moments.findValuesAsText("moment")).containsExactly("pour", "cut", "cured");
        for (JsonNode moment : moments) {
            assertThat(moment.fieldNames())
                    .toIterable()
                    .containsExactly(
                            "moment",
                            "totalGrams",
                            "settled",
                            "reactedLowPercent",
                            "reactedHighPercent",
                            "substances",
                            "totalFattyMatterPercent",
                            "chloridePercent",
                            "water");
            assertThat(moment.get("water").fieldNames())
                    .toIterable()
                    .containsExactly("addedGrams", "broughtGrams", "formedGrams", "lostGrams");
            for (JsonNode substance : moment.get("substances")) {
                assertThat(substance.fieldNames())
                        .toIterable()
                        .containsExactly("kind", "name", "inci", "of", "grams", "percent");
            }
        }
    }

    @Test
    void when_cut_nothing_is_told_that_is_not_known() throws IOException {
        JsonNode cut = json(Compositions.of(Recipes.PLAIN)).get("composition").get(1);

        assertThat(cut.get("settled").booleanValue()).isFalse();
        assertThat(cut.get("substances")).isEmpty();
        assertThat(cut.get("totalFattyMatterPercent").isNull()).isTrue();
        assertThat(cut.get("chloridePercent").isNull()).isTrue();
        assertThat(cut.get("reactedLowPercent").intValue()).isEqualTo(60);
    }

    @Test
    void grams_come_to_the_total_and_no_number_has_more_than_six_decimals() throws IOException {
        for (Path example : Recipes.examples()) {
            for (JsonNode moment : json(Compositions.of(example)).get("composition")) {
                double sum = 0;
                for (JsonNode substance : moment.get("substances")) {
                    sum += substance.get("grams").doubleValue();
                    assertThat(substance.get("percent").decimalValue().scale()).isLessThanOrEqualTo(6);
                }
                if (moment.get("settled").booleanValue()) {
                    assertThat(sum)
                            .as(example.toString())
                            .isCloseTo(moment.get("totalGrams").doubleValue(), within(0.001));
                }
            }
        }
    }

    @Test
    void an_inci_name_that_is_not_known_is_null() throws IOException {
        JsonNode cured =
                json(Compositions.of(Recipes.SALT_BAR)).get("composition").get(2);

        for (JsonNode substance : cured.get("substances")) {
            String kind = substance.get("kind").textValue();
            if (kind.equals("unsaponifiable") || kind.equals("oilLeft")) {
                assertThat(substance.get("inci").isNull()).as(kind).isEqualTo(kind.equals("unsaponifiable"));
            }
            assertThat(substance.get("inci").asText()).as(kind).isNotEmpty();
        }
        assertThat(cured.get("substances").findValuesAsText("inci")).contains("Sodium Cocoate", "Maris Sal", "null");
    }

    @Test
    void the_worst_bar_names_its_portion() throws IOException {
        JsonNode worst = json(Compositions.of(Recipes.SALT_BAR)).get("worstBar");

        assertThat(worst).isNotEmpty();
        for (JsonNode bar : worst) {
            assertThat(bar.fieldNames()).toIterable().containsExactly("kind", "name", "of", "portion", "percent");
            if (bar.get("of").textValue().equals("green-clay")) {
                assertThat(bar.get("portion").textValue()).isEqualTo("kelp");
                assertThat(bar.get("percent").doubleValue()).isCloseTo(0.61, within(0.005));
            }
        }
        assertThat(worst.findValuesAsText("of")).contains("green-clay");
        assertThat(json(Compositions.of(Recipes.PLAIN)).get("worstBar")).isEmpty();
    }
}
