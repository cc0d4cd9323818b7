package lyewright.why;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import lyewright.chemistry.Composition;
import lyewright.chemistry.Composition.Kind;
import lyewright.chemistry.Composition.Substance;

/** What one moment has of each kind of substance, added up: all soap, all glycerol. Wax that is left is no oil that is left. */
final class Kinds {

    private final Scope scope;
    private final Composition moment;
    private final String path;

    private Kinds(Scope scope, Composition moment, String path) {
        this.scope = scope;
        this.moment = moment;
        this.path = path;
    }

    static void addTo(Figures figures, Scope scope, Composition moment, String path) {
        new Kinds(scope, moment, path).addTo(figures);
    }

    /** The figure of a kind, such as {@code composition[2].kinds.soap.percent}; it is there where anything of it is. */
    static String path(String moment, String word, String field) {
        return moment + ".kinds." + word + "." + field;
    }

    private void addTo(Figures figures) {
        for (Kind kind : Kind.values()) {
            add(figures, kind.word(), name(kind), s -> s.kind() == kind && !s.waxLeft());
        }
        add(figures, "waxLeft", "Wax that does not react", Substance::waxLeft);
    }

    private static String name(Kind kind) {
        return switch (kind) {
            case SOAP -> "All soap";
            case GLYCEROL -> "All glycerol";
            case OIL_LEFT -> "All oil left over";
            case ACID_LEFT -> "All acid left over";
            case ACID_SALT -> "All salts of acids and carbonates";
            case UNSAPONIFIABLE -> "All unsaponifiable matter";
            case SALT -> "All salt";
            case WATER -> "All water";
            case FREE_ALKALI -> "All free alkali";
            case INERT -> "All clay, colour and other solids";
            case OTHER -> "Fragrance and the rest";
        };
    }

    private void add(Figures figures, String word, String name, Predicate<Substance> which) {
        if (moment.substances().stream().noneMatch(which)) {
            return;
        }
        String title = name + " in " + Moments.when(scope, moment);
        figures.called(
                path + ".kinds." + word,
                scope.name() + "composition." + moment.moment().word() + "." + word);
        figures.add(
                path(path, word, "grams"),
                title,
                "g",
                sum(which, Substance::grams),
                () -> new Account("All of its kind, added up.", parts(which, "grams", "g", Substance::grams)));
        figures.add(
                path(path, word, "percent"),
                title + ", share of everything",
                "%",
                sum(which, Substance::percent),
                () -> new Account(
                        "The shares of all of its kind, added up.", parts(which, "percent", "%", Substance::percent)));
    }

    private double sum(Predicate<Substance> which, ToDoubleFunction<Substance> figure) {
        return moment.substances().stream().filter(which).mapToDouble(figure).sum();
    }

    private Term parts(Predicate<Substance> which, String field, String unit, ToDoubleFunction<Substance> figure) {
        List<Term> parts = new ArrayList<>();
        for (int s = 0; s < moment.substances().size(); s++) {
            Substance substance = moment.substances().get(s);
            if (which.test(substance)) {
                parts.add(Ledger.figure(
                        Substances.wordFor(substance, moment.substances()),
                        path + ".substances[" + s + "]." + field,
                        figure.applyAsDouble(substance),
                        unit,
                        substance.name()));
            }
        }
        return Term.sum(parts);
    }
}
