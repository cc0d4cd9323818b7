package lyewright.records.equipment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.measure.Length;
import lyewright.measure.Problem;
import lyewright.records.equipment.MouldMeasures.Cavities;
import lyewright.records.equipment.MouldMeasures.Cut;
import lyewright.records.equipment.MouldMeasures.Inside;
import lyewright.records.equipment.MouldMeasures.Loaf;
import lyewright.records.equipment.MouldMeasures.Slab;
import lyewright.records.equipment.MouldMeasures.Tube;
import lyewright.records.store.Typed;

/** What must hold of a mould's measures; paths are the names of the fields. */
final class MouldRules {

    private static final int MOST_CAVITIES = 10_000;

    private final List<Problem> problems = new ArrayList<>();

    private MouldRules() {}

    static List<Problem> check(String name, MouldMeasures measures) {
        MouldRules rules = new MouldRules();
        rules.note(Typed.name("name", "the mould's name", name));
        if (measures.inside().isEmpty()
                && measures.waterFill().isEmpty()
                && measures.usual().isEmpty()) {
            rules.add(
                    "inside", "nothing says how much the mould holds", "give its inside, its water or its usual mass");
        }
        measures.inside().ifPresent(rules::inside);
        measures.waterFill().ifPresent(mass -> rules.note(Measures.check("waterFill", mass)));
        measures.usual().ifPresent(usual -> rules.note(Measures.check("usual", usual.mass())));
        measures.cut().ifPresent(cut -> rules.cut(cut, measures.inside()));
        return rules.problems;
    }

    private void inside(Inside inside) {
        if (inside instanceof Loaf loaf) {
            sides(loaf.length(), loaf.width(), loaf.height());
        } else if (inside instanceof Slab slab) {
            sides(slab.length(), slab.width(), slab.height());
        } else if (inside instanceof Tube tube) {
            note(Measures.check("length", tube.length()));
            note(Measures.check("diameter", tube.diameter()));
        } else if (inside instanceof Cavities cavities) {
            if (cavities.count() < 1 || cavities.count() > MOST_CAVITIES) {
                add("count", cavities.count() + " cavities are not possible", "write 1 to " + MOST_CAVITIES);
            }
            note(Measures.check("each", cavities.each()));
        }
    }

    private void sides(Length length, Length width, Length height) {
        note(Measures.check("length", length));
        note(Measures.check("width", width));
        note(Measures.check("height", height));
    }

    private void cut(Cut cut, Optional<Inside> inside) {
        if (inside.isEmpty() || inside.get() instanceof Cavities) {
            add("thickness", "only a loaf, a slab or a tube is cut", "leave the cut out");
            return;
        }
        note(Measures.check("thickness", cut.thickness()));
        cut.across().ifPresent(across -> {
            note(Measures.check("across", across));
            if (!(inside.get() instanceof Slab)) {
                add("across", "only a slab is cut across too", "leave it out");
            }
        });
        cut.blade().ifPresent(blade -> note(Measures.atMost("blade", blade)));
        cut.ends().ifPresent(ends -> note(Measures.atMost("ends", ends)));
        cut.trim().ifPresent(trim -> note(Measures.atMost("trim", trim)));
    }

    private void note(Optional<Problem> problem) {
        problem.ifPresent(problems::add);
    }

    private void add(String path, String what, String remedy) {
        problems.add(new Problem(path, what, remedy));
    }
}
