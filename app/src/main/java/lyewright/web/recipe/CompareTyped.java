package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.Formula;
import lyewright.makingsheet.MakingSheet;
import lyewright.web.Piece;
import lyewright.words.Figures;

/** What was typed on each side, line by line, with what that weighs there and the change in plain words. */
final class CompareTyped {

    private static final String NOTHING = "–";

    private final Side a;
    private final Side b;
    private final TypedChange change;
    private final List<ComparePage.Typed> rows = new ArrayList<>();
    private final List<String> same = new ArrayList<>();

    private CompareTyped(Side a, Side b) {
        this.a = a;
        this.b = b;
        this.change = new TypedChange(a.address.units());
    }

    /**
     * One side.
     *
     * @param formula as typed
     * @param sheet the one that its own page shows
     * @param address where its figures say why
     */
    record Side(Formula formula, MakingSheet sheet, Ingredients.Address address) {

        private Ingredients ingredients() {
            return Ingredients.of(formula, Optional.of(sheet), address);
        }
    }

    /** One line of one side, with its place among its kind. */
    private record Line(Ingredient shown, int place) {}

    static ComparePage.AsTyped of(Side a, Side b) {
        CompareTyped typed = new CompareTyped(a, b);
        typed.all();
        return new ComparePage.AsTyped(typed.rows, typed.same);
    }

    private void all() {
        Ingredients inA = a.ingredients();
        Ingredients inB = b.ingredients();
        lines(
                inA.oils(),
                inB.oils(),
                (x, y) -> change.oil(
                        a.formula.oils().get(x).amount(),
                        a.sheet.formula().oils().get(x).fraction(),
                        b.formula.oils().get(y).amount(),
                        b.sheet.formula().oils().get(y).fraction()));
        fixed("Water", inA.lye().get(0), inB.lye().get(0), water());
        fixed("Alkali", inA.lye().get(1), inB.lye().get(1), alkali());
        lines(
                inA.additions(),
                inB.additions(),
                (x, y) -> change.addition(
                        a.formula.additions().get(x), b.formula.additions().get(y)));
        lines(named(inA.portions()), named(inB.portions()), (x, y) -> "");
        words("How it is made", inA.process(), inB.process());
        words("For", WrittenWords.use(a.formula.use()), WrittenWords.use(b.formula.use()));
        words("Water of the cured bar", cured(a.formula), cured(b.formula));
    }

    private static List<Ingredient> named(List<Ingredient> portions) {
        return portions.stream()
                .map(portion ->
                        new Ingredient("Portion " + portion.name(), portion.how(), portion.written(), portion.masses()))
                .toList();
    }

    private static String cured(Formula formula) {
        return formula.curedWater().orElse(Formula.USUAL_CURED_WATER).toString();
    }

    private String water() {
        return change.mass(a.sheet.totals().water(), b.sheet.totals().water());
    }

    private String alkali() {
        String superfat = superfat();
        String mass = change.mass(alkali(a), alkali(b));
        return superfat.isEmpty() || mass.isEmpty() ? superfat + mass : superfat + "; " + mass;
    }

    private String superfat() {
        return a.formula.superfat().isPresent() && b.formula.superfat().isPresent()
                ? change.points(
                        a.formula.superfat().get().percent(),
                        b.formula.superfat().get().percent(),
                        "superfat")
                : "";
    }

    private static double alkali(Side side) {
        return side.sheet.lye().naohGrams() + side.sheet.lye().kohGrams();
    }

    /** How a line that both have changes; empty where that is plain from what is typed. */
    private interface Change {
        String words(int a, int b);
    }

    private void lines(List<Ingredient> inA, List<Ingredient> inB, Change words) {
        Map<String, Line> ofA = byName(inA);
        Map<String, Line> ofB = byName(inB);
        Map<String, String> all = new LinkedHashMap<>();
        ofA.forEach((key, line) -> all.put(key, line.shown.name()));
        ofB.forEach((key, line) -> all.putIfAbsent(key, line.shown.name()));
        all.forEach((key, name) -> line(name, ofA.get(key), ofB.get(key), words));
    }

    /** What is there twice is told apart by which it is. */
    private static Map<String, Line> byName(List<Ingredient> lines) {
        Map<String, Line> byName = new LinkedHashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            int nth = 1;
            while (byName.containsKey(lines.get(i).name() + " " + nth)) {
                nth++;
            }
            byName.put(lines.get(i).name() + " " + nth, new Line(lines.get(i), i));
        }
        return byName;
    }

    private void line(
            String name,
            @org.jspecify.annotations.Nullable Line inA,
            @org.jspecify.annotations.Nullable Line inB,
            Change words) {
        if (inA == null || inB == null) {
            rows.add(new ComparePage.Typed(name, cell(inA), cell(inB), inA == null ? "only in B" : "only in A"));
        } else if (alike(inA.shown, inB.shown)) {
            same.add(name + " " + inA.shown.written());
        } else {
            boolean otherwise = !inA.shown.how().equals(inB.shown.how());
            String change = words.words(inA.place, inB.place);
            rows.add(new ComparePage.Typed(
                    name, cell(inA), cell(inB), otherwise && change.isEmpty() ? "goes in otherwise" : change));
        }
    }

    private void fixed(String name, Ingredient inA, Ingredient inB, String change) {
        if (alike(inA, inB) && inA.name().equals(inB.name())) {
            same.add(name + " " + inA.written());
            return;
        }
        rows.add(new ComparePage.Typed(name, cell(inA), cell(inB), change));
    }

    /** Written alike and weighed alike. */
    private static boolean alike(Ingredient a, Ingredient b) {
        return a.written().equals(b.written())
                && a.how().equals(b.how())
                && a.masses().stream()
                        .map(Ingredient.Part::mass)
                        .toList()
                        .equals(b.masses().stream().map(Ingredient.Part::mass).toList());
    }

    private void words(String name, String inA, String inB) {
        if (inA.equals(inB)) {
            return;
        }
        rows.add(new ComparePage.Typed(
                name, new ComparePage.Cell(inA, "", List.of()), new ComparePage.Cell(inB, "", List.of()), ""));
    }

    private static ComparePage.Cell cell(@org.jspecify.annotations.Nullable Line line) {
        return line == null ? new ComparePage.Cell(NOTHING, "", List.of()) : cell(line.shown);
    }

    private static ComparePage.Cell cell(Ingredient line) {
        List<ComparePage.Weighed> masses = new ArrayList<>();
        for (Ingredient.Part part : line.masses()) {
            masses.add(new ComparePage.Weighed(part.where(), new Piece(part.mass(), part.why())));
        }
        return line.plain()
                ? new ComparePage.Cell("", line.how(), masses)
                : new ComparePage.Cell(Figures.degrees(line.written()), line.how(), masses);
    }
}
