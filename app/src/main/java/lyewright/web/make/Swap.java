package lyewright.web.make;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.formula.Formula;
import lyewright.formula.MaterialNames;
import lyewright.formula.OilSwap;
import lyewright.formula.OwnMaterial;
import lyewright.makingsheet.Comparison;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;

/**
 * Another oil in place of one of the recipe's.
 *
 * @param out name of the oil that goes
 * @param in name of the oil that comes
 * @param formula with it, which nobody has kept
 * @param comparison the recipe's sheet and that formula's, filled alike
 */
record Swap(String out, String in, Formula formula, Comparison comparison) {

    /** Whether one is asked for. */
    static boolean isAsked(MakeChoice choice) {
        return choice.typed(MakeChoice.IN).isPresent();
    }

    /**
     * Swaps.
     *
     * @param bench the choice, which says what goes and what comes
     * @param sheet the recipe's
     * @return the swap, or what is wrong with it, at the name of its field
     */
    static Outcome<Swap> of(Bench bench, MakingSheet sheet) {
        String out = bench.choice().text(MakeChoice.OUT);
        MaterialNames names = bench.names().with(bench.formula().materials());
        return key(names, bench.choice().text(MakeChoice.IN).strip())
                .then(in -> OilSwap.of(bench.formula(), out, in, own(names, in))
                        .then(formula -> Workbench.made(
                                        formula, bench.purities(), sheet.fill(), bench.equipment(), bench.choice())
                                .then(other -> Outcome.ok(new Swap(
                                        name(names, out), name(names, in), formula, Comparison.of(sheet, other)))))
                        .then(Outcome::ok));
    }

    private static Outcome<String> key(MaterialNames names, String typed) {
        Outcome<String> key = names.key(typed, MaterialNames.Place.OILS);
        return key instanceof Outcome.Ok
                ? key
                : new Outcome.Refused<>(key.problems().stream()
                        .map(problem -> new Problem(MakeChoice.IN, problem.what(), problem.remedy()))
                        .toList());
    }

    /** What the workshop says of an oil, and of the parts of a premix. */
    private static List<OwnMaterial> own(MaterialNames names, String key) {
        List<OwnMaterial> own = new ArrayList<>();
        Optional<OwnMaterial> material = names.own(key);
        material.ifPresent(of -> {
            own.add(of);
            of.oils().forEach(part -> names.own(part.key()).ifPresent(own::add));
        });
        return own;
    }

    static String name(MaterialNames names, String key) {
        return names.own(key).isPresent() ? key : names.name(key).orElse(key);
    }
}
