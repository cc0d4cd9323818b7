package lyewright.why;

import java.util.List;
import lyewright.formula.Process;
import lyewright.makingsheet.FadingPour;
import lyewright.makingsheet.PortionSheet;
import lyewright.why.Term.Given;

/** The layers of a fading pour. */
final class Fade {

    private final Ledger ledger;
    private final List<FadingPour.Layer> layers;
    private final Process.Pour pour;

    private Fade(Ledger ledger, Process.Pour pour) {
        this.ledger = ledger;
        this.layers = ledger.sheet().fade();
        this.pour = pour;
    }

    static void addTo(Figures figures, Ledger ledger) {
        ledger.formula().formula().process().pour().ifPresent(pour -> new Fade(ledger, pour).addTo(figures));
    }

    private void addTo(Figures figures) {
        for (int i = 0; i < layers.size(); i++) {
            add(figures, i, layers.get(i));
        }
    }

    private void add(Figures figures, int i, FadingPour.Layer layer) {
        String path = "fade[" + i + "].";
        String of = " layer " + layer.layer();
        figures.add(path + "layer", "Which layer", "", layer.layer(), () -> counted(i));
        figures.add(path + "pourGrams", "To pour as" + of, "g", layer.pourGrams(), this::poured);
        figures.add(path + "colourPercent", "Colour of" + of, "%", layer.colourPercent(), () -> colour(i));
        figures.add(
                path + "addPlainGrams",
                "Plain batter to stir in after" + of,
                "g",
                layer.addPlainGrams(),
                () -> added(i));
        figures.add(
                path + "jugBeforeGrams", "In the coloured jug before" + of, "g", layer.jugBeforeGrams(), () -> jug(i));
    }

    private Account counted(int i) {
        return new Account(
                "Layers are counted from 1.",
                i == 0
                        ? Term.number(1)
                        : figure(
                                        i - 1,
                                        "layer",
                                        "layer before",
                                        layers.get(i - 1).layer(),
                                        "",
                                        "the layer before")
                                .plus(Term.number(1)));
    }

    private static Given figure(int i, String field, String name, double value, String unit, String meaning) {
        return Ledger.figure(name, "fade[" + i + "]." + field, value, unit, meaning);
    }

    /** What of a portion reaches the mould. */
    private Term batter(String name, String portion) {
        int place = Shares.place(ledger.formula(), portion);
        PortionSheet sheet = ledger.sheet().portions().get(place);
        Term all = Ledger.figure(
                name,
                "portions[" + place + "].totalGrams",
                sheet.totalGrams(),
                "g",
                "everything of portion " + portion);
        return ledger.sheet().fill().holdBack() == 0
                ? all
                : all.times(Term.number(1).minus(Totals.heldBack(ledger)));
    }

    private Term coloured() {
        return batter("coloured", pour.coloured());
    }

    private Term plain() {
        return batter("plain", pour.plain());
    }

    private Given count() {
        return new Given("layers", pour.layers().doubleValue(), "", "how many layers", Sources.FORMULA);
    }

    private Account poured() {
        return new Account(
                "Both portions, shared out over the layers.",
                coloured().plus(plain()).over(count()));
    }

    private Account added(int i) {
        return i == layers.size() - 1
                ? new Account("Nothing is stirred in after the last layer.", Term.number(0))
                : new Account(
                        "All plain batter, shared out over the pauses between layers.",
                        plain().over(count().minus(Term.number(1))));
    }

    private Account jug(int i) {
        if (i == 0) {
            return new Account("At first all of the coloured portion.", coloured());
        }
        FadingPour.Layer before = layers.get(i - 1);
        return new Account(
                "What was in it before, less the layer poured, with the plain batter stirred in.",
                left(i - 1)
                        .plus(figure(
                                i - 1,
                                "addPlainGrams",
                                "stirred in",
                                before.addPlainGrams(),
                                "g",
                                "plain batter stirred in")));
    }

    /** What is left in the jug after a layer. */
    private Term left(int i) {
        FadingPour.Layer layer = layers.get(i);
        return figure(i, "jugBeforeGrams", "jug before", layer.jugBeforeGrams(), "g", "in the jug before that layer")
                .minus(figure(i, "pourGrams", "poured", layer.pourGrams(), "g", "that layer"));
    }

    private Account colour(int i) {
        if (i == 0) {
            return new Account("The first layer is all coloured batter.", Term.number(100));
        }
        FadingPour.Layer before = layers.get(i - 1);
        FadingPour.Layer here = layers.get(i);
        return new Account(
                "The colour of the layer before, thinned by the plain batter that was stirred in.",
                figure(i - 1, "colourPercent", "colour before", before.colourPercent(), "%", "the layer before")
                        .times(left(i - 1))
                        .over(figure(
                                i,
                                "jugBeforeGrams",
                                "jug",
                                here.jugBeforeGrams(),
                                "g",
                                "in the jug before this layer")));
    }
}
