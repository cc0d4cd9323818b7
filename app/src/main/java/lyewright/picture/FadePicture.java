package lyewright.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.formula.Process;
import lyewright.makingsheet.FadingPour.Layer;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.MassUnit;
import lyewright.picture.Mark.Anchor;
import lyewright.words.Figures;

/** A fading pour as it lies in the mould: first layer undermost, each as dark as it has of the coloured batter. */
public final class FadePicture {

    private static final int WIDTH = 360;
    private static final double TALLEST = 34;
    private static final double ALL = 260;
    private static final double LINE = 18;
    private static final double LEFT = 34;
    private static final double WIDE = 150;
    private static final double TOP = 22;
    private static final double HUNDRED = 100;

    private final Masses masses;

    private FadePicture(Masses masses) {
        this.masses = masses;
    }

    /**
     * Of a sheet.
     *
     * @param sheet whose fading pour
     * @return its picture; empty where nothing is poured so, or the jug would run dry
     */
    public static Optional<Picture> of(MakingSheet sheet) {
        return of(sheet, MassUnit.GRAM);
    }

    /**
     * The same in another unit.
     *
     * @param sheet whose fading pour
     * @param unit grams or ounces
     * @return its picture; empty where nothing is poured so, or the jug would run dry
     */
    public static Optional<Picture> of(MakingSheet sheet, MassUnit unit) {
        Optional<Process.Pour> pour = sheet.formula().formula().process().pour();
        return sheet.fade().isEmpty() || pour.isEmpty()
                ? Optional.empty()
                : Optional.of(new FadePicture(new Masses(unit)).picture(sheet.fade(), pour.get()));
    }

    private Picture picture(List<Layer> layers, Process.Pour pour) {
        Canvas canvas = new Canvas();
        double high = Math.min(TALLEST, ALL / layers.size());
        int step = Math.max(1, (int) Math.ceil(LINE / high));
        double foot = TOP + high * layers.size();
        canvas.text(
                "t t-muted",
                LEFT + WIDE + 12,
                13,
                Anchor.START,
                "of " + TextWidth.fit(pour.coloured(), Canvas.TEXT, 70));
        canvas.text("t t-muted", WIDTH - 1.0, 13, Anchor.END, "pour");
        for (int i = 0; i < layers.size(); i++) {
            Layer layer = layers.get(i);
            double y = foot - high * (i + 1);
            canvas.box("f-none", LEFT, y, WIDE, high);
            canvas.tone("f-full", LEFT, y, WIDE, high, Math.max(0, Math.min(1, layer.colourPercent() / HUNDRED)));
            if (i % step == 0 || (i == layers.size() - 1 && high * (i % step) >= LINE)) {
                label(canvas, layer, y + high / 2 + 4.5);
            }
        }
        for (int i = 1; i < layers.size() && high > 3; i++) {
            canvas.line("f-clear o", LEFT, foot - high * i, LEFT + WIDE, foot - high * i);
        }
        canvas.box("f-clear mould", LEFT, TOP, WIDE, foot - TOP);
        return new Picture(
                canvas.drawing(
                        "pic-fade",
                        "The pour: " + pour.plain() + " fading into " + pour.coloured(),
                        described(layers, pour),
                        WIDTH,
                        foot + Math.max(3, (LINE - high) / 2)),
                "",
                List.of("First layer undermost. How dark a layer is drawn is its share of " + pour.coloured()
                        + ", not its colour."),
                table(layers, pour));
    }

    private void label(Canvas canvas, Layer layer, double y) {
        canvas.text("t t-muted", LEFT - 8, y, Anchor.END, Integer.toString(layer.layer()));
        canvas.text("t t-strong", LEFT + WIDE + 12, y, Anchor.START, Figures.percent(layer.colourPercent(), 0));
        canvas.text("t", WIDTH - 1.0, y, Anchor.END, masses.say(layer.pourGrams()));
    }

    private String described(List<Layer> layers, Process.Pour pour) {
        return layers.size() + " layers of " + masses.say(layers.get(0).pourGrams()) + ", from "
                + Figures.percent(layers.get(0).colourPercent(), 0) + " of " + pour.coloured() + " in the first to "
                + Figures.percent(layers.get(layers.size() - 1).colourPercent(), 0) + " in the last.";
    }

    private FigureTable table(List<Layer> layers, Process.Pour pour) {
        List<List<String>> rows = new ArrayList<>();
        for (Layer layer : layers) {
            rows.add(List.of(
                    Integer.toString(layer.layer()),
                    masses.say(layer.pourGrams()),
                    Figures.percent(layer.colourPercent(), 1),
                    layer.addPlainGrams() > 0 ? masses.say(layer.addPlainGrams()) : "none"));
        }
        return new FigureTable(
                "Layers of the pour",
                List.of(
                        FigureTable.words("Layer"),
                        FigureTable.figures("Pour"),
                        FigureTable.figures("Of " + pour.coloured()),
                        FigureTable.figures("Then stir in " + pour.plain())),
                rows);
    }
}
