package lyewright.records.stock;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Codes for many lots at once, each after the last one of its year: asking the table for each would take longer with every lot. */
final class LotCodes {

    private static final Pattern CODE = Pattern.compile("([0-9]{2}-)([0-9]{1,9})");

    private final Map<String, Long> last = new HashMap<>();

    /** Notes a code that some lot has. */
    void taken(String code) {
        Matcher parts = CODE.matcher(code);
        if (parts.matches()) {
            last.merge(parts.group(1), Long.parseLong(parts.group(2)), Math::max);
        }
    }

    /** The last one of each year. */
    List<String> last() {
        return last.entrySet().stream()
                .map(year -> year.getKey() + "%04d".formatted(year.getValue()))
                .sorted()
                .toList();
    }

    /** The next one of a year. */
    String next(LocalDate received) {
        String year = "%02d-".formatted(received.getYear() % 100);
        return year + "%04d".formatted(last.merge(year, 1L, Long::sum));
    }
}
