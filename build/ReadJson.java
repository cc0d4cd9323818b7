import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;

/** Fails unless standard input is one JSON object and nothing else. For ./check, which has no other reader at hand. */
public final class ReadJson {

    public static void main(String[] args) throws Exception {
        var reader = new ObjectMapper().reader().with(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);
        if (!reader.readTree(System.in.readAllBytes()).isObject()) {
            throw new IllegalArgumentException("not a JSON object");
        }
    }
}
