package lyewright.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.fill.CutPlan;
import lyewright.fill.Filled;
import lyewright.fill.Shape;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.LengthUnit;
import lyewright.measure.Problem;
import lyewright.words.Figures;
import lyewright.words.Sentences;

/** The inside of a mould with its measures, how full it gets, and how it is cut; what is cut off is hatched. */
public final class MouldPicture {

    static final int WIDTH = 360;

    /** Fuller or emptier than this share of the mould is spoken of. */
    private static final double SPOKEN_OF = 0.005;

    /** Millimetres that a cut leaves from which they are spoken of. */
    private static final double LEFT_OVER = 0.05;

    private final Shape shape;
    private final MouldFacts facts;

    private MouldPicture(Shape shape, MouldFacts facts) {
        this.shape = shape;
        this.facts = facts;
    }

    /**
     * Of a mould by itself.
     *
     * @param shape its inside
     * @param cut how it is cut, if it is; a cut that gives no bar is said and not drawn
     * @param unit of its measures on the picture
     * @return its picture, filled to the brim
     */
    public static Picture of(Shape shape, Optional<CutPlan> cut, LengthUnit unit) {
        return new MouldPicture(shape, MouldFacts.of(shape, cut, Optional.empty(), unit)).picture();
    }

    /**
     * Of a sheet's mould, as full as the sheet fills it.
     *
     * @param sheet whose mould
     * @param unit of its measures on the picture
     * @return its picture; empty where the mould's measures are not known
     */
    public static Optional<Picture> of(MakingSheet sheet, LengthUnit unit) {
        Optional<Double> level = sheet.filled().mouldSays().stream()
                .filter(says -> says.figure().equals("measures"))
                .map(Filled.MouldSays::grams)
                .findFirst()
                .map(full -> sheet.totals().mould() / full);
        return sheet.fill()
                .mould()
                .shape()
                .map(shape -> new MouldPicture(
                                shape, MouldFacts.of(shape, sheet.fill().cut(), level, unit))
                        .picture());
    }

    private Picture picture() {
        Canvas canvas = new Canvas();
        double foot;
        if (shape instanceof Shape.Loaf loaf) {
            foot = BlockView.draw(canvas, facts, loaf.length(), loaf.width(), loaf.height(), false);
        } else if (shape instanceof Shape.Slab slab) {
            foot = BlockView.draw(canvas, facts, slab.length(), slab.width(), slab.height(), true);
        } else if (shape instanceof Shape.Tube tube) {
            foot = TubeView.draw(canvas, facts, tube);
        } else {
            foot = CavityView.draw(canvas, ((Shape.Cavities) shape).count(), facts.drawnLevel());
        }
        String sentence = String.join(" ", sentences());
        return new Picture(
                canvas.drawing(
                        "pic-mould", title(), measures() + (sentence.isEmpty() ? "" : " " + sentence), WIDTH, foot),
                sentence,
                notes(),
                table());
    }

    private String title() {
        return shape instanceof Shape.Loaf
                ? "A loaf mould"
                : shape instanceof Shape.Slab
                        ? "A slab mould"
                        : shape instanceof Shape.Tube ? "A tube mould" : "A mould with cavities";
    }

    private String measures() {
        if (shape instanceof Shape.Loaf loaf) {
            return sides(loaf.length(), loaf.width(), loaf.height());
        }
        if (shape instanceof Shape.Slab slab) {
            return sides(slab.length(), slab.width(), slab.height());
        }
        if (shape instanceof Shape.Tube tube) {
            return facts.say(tube.length()) + " long, " + facts.say(tube.diameter()) + " across.";
        }
        Shape.Cavities cavities = (Shape.Cavities) shape;
        return cavities.count() + (cavities.count() == 1 ? " cavity of " : " cavities of ")
                + Figures.upTo(cavities.each(), 1) + " ml.";
    }

    private String sides(double length, double width, double height) {
        return facts.say(length) + " long, " + facts.say(width) + " wide, " + facts.say(height) + " high.";
    }

    private List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        facts.cut().ifPresent(cut -> sentences.add(bars(cut)));
        facts.trouble().map(Problem::what).ifPresent(what -> sentences.add(Sentences.whole(what)));
        if (shape instanceof Shape.Cavities) {
            sentences.add(measures());
        }
        facts.level().filter(level -> Math.abs(level - 1) > SPOKEN_OF).ifPresent(level -> sentences.add(filled(level)));
        return sentences;
    }

    private String bars(CutPlan.Cut cut) {
        CutPlan plan = facts.plan().orElseThrow();
        String size = facts.say(plan.thickness())
                + plan.across().map(across -> " by " + facts.say(across)).orElse(" thick");
        String grid = facts.across().isPresent() && facts.across().get().count() > 1
                ? " in " + facts.across().get().count() + " rows of "
                        + facts.along().map(Pieces::count).orElse(0)
                : "";
        return (cut.bars() == 1 ? "1 bar" : cut.bars() + " bars") + grid + ", " + size + ".";
    }

    private static String filled(double level) {
        String percent = Figures.upTo(100 * level, level < 0.1 ? 1 : 0) + " %";
        return level > 1
                ? "It runs over: the batch is " + percent + " of what the mould holds."
                : "Filled to " + percent + ".";
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        List<String> lost = lost();
        if (!lost.isEmpty()) {
            notes.add("Hatched: " + String.join(", ", lost) + ".");
        }
        facts.along()
                .filter(p -> p.count() > 1 && p.blade() > 0)
                .ifPresent(p -> notes.add("Each cut takes " + facts.say(p.blade()) + "."));
        if (shape instanceof Shape.Cavities cavities) {
            notes.add("The picture counts cavities; their shape is not known."
                    + (cavities.count() > CavityView.MOST ? " It shows the first " + CavityView.MOST + "." : ""));
        }
        return notes;
    }

    private List<String> lost() {
        List<String> lost = new ArrayList<>();
        facts.along().ifPresent(pieces -> {
            if (pieces.first() > 0) {
                lost.add(facts.say(pieces.first()) + " cut off each end");
            }
            if (pieces.leftOver() >= LEFT_OVER) {
                lost.add(facts.say(pieces.leftOver()) + " left of the length");
            }
        });
        facts.across()
                .filter(p -> p.leftOver() >= LEFT_OVER)
                .ifPresent(p -> lost.add(facts.say(p.leftOver()) + " left of the width"));
        if (facts.trim() > 0 && !(shape instanceof Shape.Tube)) {
            lost.add(facts.say(facts.trim()) + " off the top");
        }
        return lost;
    }

    private FigureTable table() {
        List<List<String>> rows = new ArrayList<>();
        if (shape instanceof Shape.Loaf loaf) {
            block(rows, loaf.length(), loaf.width(), loaf.height());
        } else if (shape instanceof Shape.Slab slab) {
            block(rows, slab.length(), slab.width(), slab.height());
        } else if (shape instanceof Shape.Tube tube) {
            rows.add(List.of("Length", facts.say(tube.length())));
            rows.add(List.of("Diameter", facts.say(tube.diameter())));
        } else {
            Shape.Cavities cavities = (Shape.Cavities) shape;
            rows.add(List.of("Cavities", Integer.toString(cavities.count())));
            rows.add(List.of("One holds", Figures.upTo(cavities.each(), 1) + " ml"));
        }
        rows.add(List.of("Holds", Figures.upTo(shape.millilitres(), shape.millilitres() < 100 ? 1 : 0) + " ml"));
        facts.level().ifPresent(level -> rows.add(List.of("Filled", Figures.percent(100 * level, 1))));
        facts.cut().ifPresent(cut -> cut(rows, cut));
        return new FigureTable(
                "The mould, inside", List.of(FigureTable.words("What"), FigureTable.figures("Measure")), rows);
    }

    private void block(List<List<String>> rows, double length, double width, double height) {
        rows.add(List.of("Length", facts.say(length)));
        rows.add(List.of("Width", facts.say(width)));
        rows.add(List.of("Height", facts.say(height)));
    }

    private void cut(List<List<String>> rows, CutPlan.Cut cut) {
        CutPlan plan = facts.plan().orElseThrow();
        rows.add(List.of("Bars", Integer.toString(cut.bars())));
        rows.add(List.of("One bar, along the length", facts.say(plan.thickness())));
        plan.across().ifPresent(across -> rows.add(List.of("One bar, across", facts.say(across))));
        rows.add(List.of("Each cut takes", facts.say(plan.blade())));
        rows.add(List.of("Cut off each end", facts.say(plan.ends())));
        rows.add(List.of("Off the top", facts.say(plan.trim())));
        facts.along().ifPresent(p -> rows.add(List.of("Left of the length", facts.say(p.leftOver()))));
        facts.across().ifPresent(p -> rows.add(List.of("Left of the width", facts.say(p.leftOver()))));
        rows.add(List.of("One bar, of all soap", Figures.percent(100 * cut.barShare(), 2)));
    }
}
