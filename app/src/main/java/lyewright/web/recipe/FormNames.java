package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lyewright.formula.Disperse;
import lyewright.formula.MaterialNames;
import lyewright.formula.MaterialNames.Place;
import lyewright.formula.OwnMaterial;
import lyewright.measure.Outcome;

/** What names mean in one form: its own materials go before the workshop's, and those before the tables'. */
final class FormNames {

    private static final Set<String> LIQUIDS = Set.of(Disperse.WATER, Disperse.OIL, Disperse.GLYCERIN);

    private final MaterialNames workshop;
    private final MaterialNames all;
    private final Set<String> lyes = new HashSet<>();
    /** What stays as the tables have it. */
    private final Set<String> asTables;

    /** Each key that is named, and the field it is named in first. */
    private final Map<String, String> used = new LinkedHashMap<>();

    FormNames(FormulaForm form, MaterialNames workshop) {
        List<OwnMaterial> own = new ArrayList<>();
        for (MaterialRow row : form.materials()) {
            if (!row.key().isBlank()) {
                String kind = row.said(MaterialRow.KIND).strip();
                own.add(OwnMaterial.of(row.key().strip(), kind));
                if (kind.equals(OwnMaterial.LYE)) {
                    lyes.add(row.key().strip());
                }
            }
        }
        this.workshop = workshop;
        this.asTables = Set.copyOf(new HashSet<>(form.asTables()));
        this.all = workshop.with(own);
    }

    Outcome<String> key(String typed, Place place, String field) {
        Outcome<String> key = all.key(typed, place);
        if (key instanceof Outcome.Ok<String> ok) {
            used.putIfAbsent(ok.value(), field);
        }
        return key;
    }

    /** Whether a name that was typed may stand for an addition that is named now. */
    boolean mayBeOne(String typed, String now) {
        List<MaterialNames.Named> meant = all.meant(typed);
        return meant.isEmpty()
                || !(all.key(now, Place.ADDITIONS) instanceof Outcome.Ok<String> key)
                || meant.stream().anyMatch(named -> named.key().equals(key.value()));
    }

    boolean isLye(String key) {
        return lyes.contains(key)
                || workshop.own(key)
                        .filter(own -> own.kind().equals(OwnMaterial.LYE))
                        .isPresent();
    }

    /** Notes which stock lye the alkali is said to be, if it is one. */
    void useLye(Object alkali) {
        if (alkali instanceof String key) {
            used.putIfAbsent(key, "alkali");
        }
        YamlTexts.map(alkali).keySet().forEach(key -> used.putIfAbsent(key, "alkali"));
    }

    /** What something is wetted out in. */
    String liquid(String typed) {
        String small = typed.toLowerCase(Locale.ROOT);
        if (LIQUIDS.contains(small)) {
            return small;
        }
        return all.key(typed, Place.OILS) instanceof Outcome.Ok<String> key ? key.value() : typed;
    }

    /** A material of the workshop that is named, that the formula does not have yet and that is not to stay the tables'. */
    Optional<String> toCopy(Set<String> had) {
        return used.keySet().stream()
                .filter(key -> !had.contains(key)
                        && !asTables.contains(key)
                        && workshop.own(key).isPresent())
                .findFirst();
    }

    String whereUsed(String key) {
        return used.getOrDefault(key, "");
    }

    /** A material of the workshop as the row of a form. */
    MaterialRow row(String key) {
        return workshop.own(key).map(FormOfFile::material).orElse(MaterialRow.EMPTY);
    }
}
