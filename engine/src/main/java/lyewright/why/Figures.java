package lyewright.why;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** All figures of one sheet by path, in the order of its JSON, each with the account that is given of it when it is asked for. */
final class Figures {

    private final Map<String, Entry> entries = new LinkedHashMap<>();
    private final Map<String, String> names = new LinkedHashMap<>();

    /**
     * One figure.
     *
     * @param path where it is
     * @param title what it is
     * @param value its value, if there is one
     * @param unit its unit
     * @param account why it is so; of a figure that is not there only its sentence counts
     */
    record Entry(String path, String title, Optional<Double> value, String unit, Supplier<Account> account) {

        /** What it is called in its own formula: the last word of its path. */
        String name() {
            return path.substring(path.lastIndexOf('.') + 1);
        }

        Reason reason() {
            return value.isPresent()
                    ? Layout.of(this, account.get())
                    : Layout.absent(this, account.get().sentence());
        }
    }

    void add(String path, String title, String unit, double value, Supplier<Account> account) {
        entries.put(path, new Entry(path, title, Optional.of(value), unit, account));
    }

    void absent(String path, String title, String unit, String why) {
        entries.put(path, new Entry(path, title, Optional.empty(), unit, () -> new Account(why, Term.number(0))));
    }

    /** What a counted thing may be called instead, such as {@code portions.kelp} for {@code portions[1]}. */
    void called(String path, String name) {
        names.put(path, name);
    }

    /** Paths by what they may be called instead; where two would be called the same, the first. */
    Map<String, String> byName() {
        Map<String, String> paths = new LinkedHashMap<>();
        for (String path : entries.keySet()) {
            int end = path.lastIndexOf('.');
            String name = end < 0 ? null : names.get(path.substring(0, end));
            if (name != null) {
                paths.putIfAbsent(name + path.substring(end), path);
            }
        }
        return paths;
    }

    Map<String, Entry> entries() {
        return entries;
    }
}
