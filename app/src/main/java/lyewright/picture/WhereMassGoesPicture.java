package lyewright.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import lyewright.chemistry.BatchComposition;
import lyewright.chemistry.Composition;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.MassUnit;
import lyewright.picture.Mark.Anchor;
import lyewright.words.Figures;

/** The batch as it is poured beside what it is once cured, drawn to one scale, with what dries off. */
public final class WhereMassGoesPicture {

    private static final int WIDTH = 360;
    private static final double COLUMN = 34;
    private static final double POURED = 126;
    private static final double CURED = 196;
    private static final double TOP = 26;
    private static final double LEAST_HIGH = 250;

    private final List<MassPart> poured;
    private final List<MassPart> cured;
    private final double pouredGrams;
    private final double curedGrams;
    private final Masses masses;

    private WhereMassGoesPicture(MakingSheet sheet, BatchComposition composition, Masses masses) {
        this.masses = masses;
        Composition bar = composition.at(Composition.Moment.CURED);
        this.poured = Weighed.of(sheet);
        this.cured = new ArrayList<>(Becomes.of(bar));
        this.pouredGrams = sheet.totals().batch();
        this.curedGrams = bar.totalGrams();
        if (bar.water().lostGrams() > 0) {
            cured.add(new MassPart("Dries off", MassStyle.DRIES, bar.water().lostGrams()));
        }
    }

    /**
     * Of a sheet.
     *
     * @param sheet whose whole batch, toppings included
     * @return its picture
     */
    public static Picture of(MakingSheet sheet) {
        return of(sheet, sheet.composition());
    }

    /**
     * Of a sheet whose composition is at hand, which takes a moment to work out.
     *
     * @param sheet whose whole batch, toppings included
     * @param composition of that sheet
     * @return its picture
     */
    public static Picture of(MakingSheet sheet, BatchComposition composition) {
        return of(sheet, composition, MassUnit.GRAM);
    }

    /**
     * The same in another unit.
     *
     * @param sheet whose whole batch, toppings included
     * @param composition of that sheet
     * @param unit grams or ounces
     * @return its picture
     */
    public static Picture of(MakingSheet sheet, BatchComposition composition, MassUnit unit) {
        return new WhereMassGoesPicture(sheet, composition, new Masses(unit)).picture();
    }

    private Picture picture() {
        Canvas canvas = new Canvas();
        double high = Math.max(LEAST_HIGH, MassColumn.LINE * Math.max(poured.size(), cured.size()));
        double foot = TOP + high;
        double scale = high / Math.max(pouredGrams, Math.max(sum(poured), sum(cured)));
        MassColumn left = new MassColumn(canvas, poured, POURED, COLUMN, foot, scale, masses);
        MassColumn right = new MassColumn(canvas, cured, CURED, COLUMN, foot, scale, masses);
        flows(canvas, left, right);
        left.draw();
        right.draw();
        left.label(true, TOP, foot);
        right.label(false, TOP, foot);
        canvas.text("t t-strong", POURED + COLUMN, 14, Anchor.END, "Poured " + masses.say(pouredGrams));
        canvas.text("t t-strong", CURED, 14, Anchor.START, "Cured " + masses.say(curedGrams));
        return new Picture(
                canvas.drawing("pic-mass", "Where the mass goes", described(), WIDTH, foot + 4),
                "",
                List.of("Drawn to one scale. The pale bands join what mostly turns into what."),
                table());
    }

    private static double sum(List<MassPart> parts) {
        return parts.stream().mapToDouble(MassPart::grams).sum();
    }

    private void flows(Canvas canvas, MassColumn left, MassColumn right) {
        int leftReacts = left.count(MassStyle::reacts);
        int rightReacts = right.count(MassStyle::reacts);
        int leftDry = poured.size() - left.count(MassStyle::water);
        int rightDry = cured.size() - right.count(MassStyle::water);
        flow(canvas, left.top(0), left.top(leftReacts), right.top(0), right.top(rightReacts));
        flow(canvas, left.top(leftReacts), left.top(leftDry), right.top(rightReacts), right.top(rightDry));
        flow(canvas, left.top(leftDry), left.top(poured.size()), right.top(rightDry), right.top(cured.size()));
    }

    private void flow(Canvas canvas, double leftFoot, double leftTop, double rightFoot, double rightTop) {
        double gap = 1.5;
        if (leftFoot - leftTop > gap && rightFoot - rightTop > gap) {
            double from = POURED + COLUMN + 2;
            double to = CURED - 2;
            canvas.path("flow", Canvas.outline(from, leftFoot, to, rightFoot, to, rightTop, from, leftTop));
            canvas.path("grid", Canvas.line(from, leftTop, to, rightTop));
        }
    }

    private String described() {
        return "Poured " + masses.say(pouredGrams) + ": " + told(poured) + ". Cured " + masses.say(curedGrams) + ": "
                + told(cured) + ".";
    }

    private String told(List<MassPart> parts) {
        return parts.stream()
                .map(part -> part.words() + " " + masses.say(part.grams()))
                .collect(Collectors.joining(", "));
    }

    private FigureTable table() {
        List<List<String>> rows = new ArrayList<>();
        poured.forEach(part -> rows.add(row("Poured: ", part, pouredGrams)));
        rows.add(List.of("All that is poured", masses.say(pouredGrams), "100 %"));
        cured.forEach(part -> rows.add(
                part.style() == MassStyle.DRIES
                        ? List.of(part.words(), masses.say(part.grams()), "")
                        : row("Cured: ", part, curedGrams)));
        rows.add(List.of("All that is cured", masses.say(curedGrams), "100 %"));
        return new FigureTable(
                "Where the mass goes",
                List.of(FigureTable.words("What"), FigureTable.figures("Mass"), FigureTable.figures("Share")),
                rows);
    }

    private List<String> row(String when, MassPart part, double all) {
        return List.of(
                when + part.words().toLowerCase(Locale.ROOT),
                masses.say(part.grams()),
                Figures.percent(100 * part.grams() / all, 1));
    }
}
