package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Rows that come, go and move at the press of a button, which says what it does by its name: {@code oils.add}, {@code oils.2.up}. */
final class FormRows {

    private static final Pattern PRESSED =
            Pattern.compile("(oils|additions|portions|materials)\\.(?:add|([0-9]{1,3})\\.(remove|up|down))");

    private FormRows() {}

    /**
     * A form after a button was pressed.
     *
     * @param form the form
     * @param focus the field to go on in
     */
    record Moved(FormulaForm form, String focus) {}

    /** What a button makes of a form; empty where it is no button for rows. */
    static Optional<Moved> pressed(FormulaForm form, String button) {
        Matcher pressed = PRESSED.matcher(button);
        if (!pressed.matches()) {
            return Optional.empty();
        }
        String kind = pressed.group(1);
        String row = pressed.group(2);
        int place = row == null ? -1 : Integer.parseInt(row);
        String action = row == null ? "add" : pressed.group(3);
        return Optional.of(
                switch (kind) {
                    case "oils" -> {
                        Change<OilRow> change = change(form.oils(), OilRow.EMPTY, place, action);
                        yield moved(form.withOils(change.rows()), kind, "name", change.focus());
                    }
                    case "additions" -> {
                        Change<AdditionRow> change = change(form.additions(), AdditionRow.EMPTY, place, action);
                        yield moved(form.withAdditions(change.rows()), kind, "of", change.focus());
                    }
                    case "portions" -> {
                        Change<PortionRow> change = change(form.portions(), PortionRow.EMPTY, place, action);
                        yield moved(form.withPortions(change.rows()), kind, "name", change.focus());
                    }
                    default -> {
                        Change<MaterialRow> change = change(form.materials(), MaterialRow.EMPTY, place, action);
                        yield moved(form.withMaterials(change.rows()), kind, "key", change.focus());
                    }
                });
    }

    private static Moved moved(FormulaForm form, String kind, String first, int focus) {
        return new Moved(form, focus < 0 ? "" : kind + "." + focus + "." + first);
    }

    /** Rows after a change, and the row to go on in. */
    private record Change<T>(List<T> rows, int focus) {}

    private static <T> Change<T> change(List<T> rows, T empty, int place, String action) {
        List<T> changed = new ArrayList<>(rows);
        int focus = place;
        switch (action) {
            case "add" -> {
                if (changed.size() < FormulaForm.MOST_ROWS) {
                    changed.add(empty);
                }
                focus = changed.size() - 1;
            }
            case "remove" -> {
                if (place < changed.size()) {
                    changed.remove(place);
                }
                focus = Math.min(place, changed.size() - 1);
            }
            default -> focus = swap(changed, place, action.equals("up") ? place - 1 : place + 1);
        }
        return new Change<>(changed, focus);
    }

    private static <T> int swap(List<T> rows, int place, int with) {
        if (place >= rows.size() || with < 0 || with >= rows.size()) {
            return Math.min(place, rows.size() - 1);
        }
        rows.set(place, rows.set(with, rows.get(place)));
        return with;
    }
}
