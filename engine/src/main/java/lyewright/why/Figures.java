package lyewright.why;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** All figures of one sheet by path, in the order of its JSON, each with the account that is given of it when it is asked for. */
final class Figures {

    private final Map<String, Entry> entries = new LinkedHashMap<>();

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

    Map<String, Entry> entries() {
        return entries;
    }
}
