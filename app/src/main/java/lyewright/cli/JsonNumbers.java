package lyewright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** Numbers of a JSON answer: to a millionth, finer than any balance, and the same text on every machine. */
final class JsonNumbers {

    private static final int DECIMALS = 6;

    private JsonNumbers() {}

    static void write(JsonGenerator json, String field, Optional<Double> value) throws IOException {
        if (value.isPresent()) {
            write(json, field, value.get());
        } else {
            json.writeNullField(field);
        }
    }

    static void write(JsonGenerator json, String field, double value) throws IOException {
        json.writeNumberField(field, decimal(value));
    }

    /** Without zeros at its end. */
    static BigDecimal decimal(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
        BigDecimal stripped = rounded.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
