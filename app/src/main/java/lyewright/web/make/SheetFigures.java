package lyewright.web.make;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import lyewright.chemistry.BatchLine;
import lyewright.formula.Stage;
import lyewright.makingsheet.FadingPour;
import lyewright.makingsheet.LyeSheet;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.PortionSheet;
import lyewright.makingsheet.SuperfatBand;
import lyewright.makingsheet.Vessel;
import lyewright.makingsheet.Weighing;
import lyewright.words.UnitsShown;

/** Which figures of a sheet its sentences may speak of, by the label that stands before them. Paths are those of its JSON. */
public final class SheetFigures {

    private final MakingSheet sheet;

    /** Of a sheet. */
    public SheetFigures(MakingSheet sheet) {
        this.sheet = sheet;
    }

    List<Known> head(String label) {
        return switch (label) {
            case "Into the mould" -> mould();
            case "Weighed in all" ->
                List.of(Known.grams("totals.batchGrams", sheet.totals().batch()), heldBack());
            case "Oils" -> List.of(oils());
            case "Superfat" -> superfat();
            case "How sure" -> band();
            case "Bars" -> bars();
            default -> List.of();
        };
    }

    private List<Known> mould() {
        List<Known> known = new ArrayList<>();
        known.add(Known.grams("totals.mouldGrams", sheet.totals().mould()));
        sheet.totals().target().ifPresent(grams -> known.add(Known.grams("totals.targetGrams", grams)));
        return known;
    }

    /** What stays in jugs and tools. */
    public Known heldBack() {
        return Known.grams(
                "sums.heldBackGrams", sheet.totals().batch() - sheet.totals().mould());
    }

    private Known oils() {
        return Known.grams("totals.oilsGrams", sheet.totals().oils());
    }

    private List<Known> superfat() {
        List<Known> known = new ArrayList<>();
        known.add(Known.percent("superfat.sheetPercent", sheet.sheetSuperfatPercent()));
        sheet.askedSuperfatPercent().ifPresent(asked -> known.add(0, Known.percent("superfat.askedPercent", asked)));
        return known;
    }

    /** A portion that is worse rules the sentence. */
    private List<Known> band() {
        List<Known> known = new ArrayList<>();
        known.add(Known.percent("superfat.sheetPercent", sheet.sheetSuperfatPercent()));
        band(known, "superfat.", sheet.band());
        for (int p = 0; p < sheet.portions().size(); p++) {
            PortionSheet portion = sheet.portions().get(p);
            known.add(Known.percent(portion(p) + "superfatPercent", portion.superfatPercent()));
            known.add(Known.percent(portion(p) + "low95Percent", portion.band().lowPercent()));
            known.add(Known.percent(portion(p) + "high95Percent", portion.band().highPercent()));
        }
        return known;
    }

    private static void band(List<Known> known, String path, SuperfatBand band) {
        known.add(Known.percent(path + "low95Percent", band.lowPercent()));
        known.add(Known.percent(path + "high95Percent", band.highPercent()));
        known.add(Known.percent(path + "worstPercent", band.worstPercent()));
        known.add(Known.percent(path + "freeAlkaliProbability", 100 * band.freeAlkaliProbability()));
    }

    /** Of its bars; none where there are none. */
    public List<Known> bars() {
        return sheet.bars()
                .map(bars -> List.of(
                        new Known("bars.count", bars.count(), ""),
                        Known.grams("bars.cutGrams", bars.cutGrams()),
                        Known.grams("bars.curedGrams", bars.curedGrams()),
                        Known.grams("bars.offcutsGrams", bars.offcutsGrams())))
                .orElse(List.of());
    }

    List<Known> chemistry(String label) {
        LyeSheet lye = sheet.lye();
        Map<String, List<Known>> byLabel = Map.of(
                "Sodium hydroxide",
                List.of(naoh(), Known.grams("alkali.naohPureGrams", lye.naohPureGrams())),
                "Potassium hydroxide",
                List.of(koh(), Known.grams("alkali.kohPureGrams", lye.kohPureGrams())),
                "Alkali",
                List.of(
                        Known.grams("sums.alkaliGrams", lye.naohGrams() + lye.kohGrams()),
                        Known.grams("sums.pureAlkaliGrams", lye.pureGrams()),
                        Known.grams("alkali.naohPureGrams", lye.naohPureGrams()),
                        Known.grams("alkali.kohPureGrams", lye.kohPureGrams())),
                "Potassium's share",
                List.of(
                        Known.percent("alkali.potassiumMolesPercent", lye.potassiumMolesPercent()),
                        Known.percent("alkali.potassiumPurePercent", lye.potassiumPurePercent()),
                        Known.percent("alkali.potassiumWeighedPercent", lye.potassiumWeighedPercent())),
                "Lye",
                List.of(
                        Known.percent("lye.pureStrengthPercent", lye.pureStrengthPercent()),
                        Known.percent("lye.weighedStrengthPercent", lye.weighedStrengthPercent())),
                "In its jug",
                List.of(
                        Known.percent("alkali.jugConcentrationPercent", lye.concentrationPercent()),
                        Known.grams("sums.pureAlkaliGrams", lye.pureGrams()),
                        Known.grams("alkali.naohPureGrams", lye.naohPureGrams()),
                        Known.grams("alkali.kohPureGrams", lye.kohPureGrams()),
                        Known.grams("alkali.waterInJugGrams", lye.waterInJugGrams())),
                "Water to spare",
                List.of(Known.grams("lye.waterLeftGrams", lye.waterLeftGrams())),
                "Water by the rule",
                List.of(
                        Known.grams("totals.waterGrams", sheet.totals().water()),
                        Known.percent(
                                "sums.waterPercentOfOils",
                                100 * sheet.totals().water() / sheet.totals().oils()),
                        Known.grams("totals.waterBroughtGrams", sheet.totals().waterBrought())),
                "Salt",
                List.of(
                        Known.grams("lye.saltPerWaterPercent", lye.saltPerWaterPercent()),
                        new Known("lye.saltHeldPercent", lye.saltHeldPercent(), "dissolved"),
                        Known.percent("lye.saltUndissolvedPercent", lye.saltUndissolvedPercent())),
                "Batter",
                List.of(new Known("batterDensityGramsPerMl", sheet.batterDensity(), "g/ml")));
        return label.equals("Superfat") ? superfat() : byLabel.getOrDefault(label, List.of());
    }

    private Known naoh() {
        return Known.grams("alkali.naohGrams", sheet.lye().naohGrams());
    }

    private Known koh() {
        return Known.grams("alkali.kohGrams", sheet.lye().kohGrams());
    }

    List<Known> hangsOn() {
        List<Known> known = new ArrayList<>();
        List<SuperfatBand.Contribution> all = sheet.band().contributions();
        for (int i = 0; i < all.size(); i++) {
            known.add(Known.percent(
                    "superfat.contributions[" + i + "].percentOfVariance",
                    all.get(i).percentOfVariance()));
        }
        return known;
    }

    List<Known> certificate() {
        return sheet.band()
                .certificateGain()
                .map(gain -> List.of(
                        Known.percent("superfat.certificate.low95Percent", gain.lowPercent()),
                        Known.percent("superfat.certificate.high95Percent", gain.highPercent())))
                .orElse(List.of());
    }

    List<Known> howFarOff() {
        List<Known> known = new ArrayList<>();
        band(known, "superfat.", sheet.band());
        return known;
    }

    // Steps

    /** What a step's sentences may speak of. */
    List<Known> step() {
        List<Known> known = new ArrayList<>();
        known.add(oils());
        known.add(Known.grams("sums.oilPotGrams", grams(line -> line.stage().kind() == Stage.Kind.OILS)));
        known.add(Known.grams("totals.mouldGrams", sheet.totals().mould()));
        known.addAll(bars());
        known.addAll(weighings(""));
        known.add(heldBack());
        known.add(Known.grams("sums.lyeJugGrams", inLyeJug(line -> true)));
        known.add(Known.grams("sums.lyeJugLiquidsGrams", inLyeJug(line -> line.kind() != BatchLine.Kind.ALKALI)));
        wetted(known);
        return known;
    }

    private double inLyeJug(Predicate<BatchLine> which) {
        return grams(line -> line.inLyeJug() && which.test(line));
    }

    private double grams(Predicate<BatchLine> which) {
        return sheet.vessels().stream()
                .flatMap(vessel -> vessel.weighings().stream())
                .filter(weighing -> which.test(weighing.line()))
                .mapToDouble(weighing -> weighing.weigh().grams())
                .sum();
    }

    /** Additions with what they are wetted out with. */
    private void wetted(List<Known> known) {
        for (int a = 0; a < sheet.formula().additions().size(); a++) {
            if (sheet.formula().additions().get(a).liquid().isPresent()) {
                int place = a;
                known.add(Known.grams(
                        "sums.additions[" + a + "].withLiquidGrams",
                        grams(line -> line.place() == place
                                && (line.kind() == BatchLine.Kind.ADDITION
                                        || line.kind() == BatchLine.Kind.DISPERSING_LIQUID))));
            }
        }
    }

    /** What a list of weighings may speak of: the thing itself, and that with its liquid. */
    List<Known> listed(String name) {
        List<Known> known = weighings(name);
        wetted(known);
        return known;
    }

    /** What is weighed of a thing; of everything where its name is empty. */
    List<Known> weighings(String name) {
        List<Known> known = new ArrayList<>();
        for (int v = 0; v < sheet.vessels().size(); v++) {
            Vessel vessel = sheet.vessels().get(v);
            for (int i = 0; i < vessel.weighings().size(); i++) {
                Weighing weighing = vessel.weighings().get(i);
                if (name.isEmpty() || name.startsWith(weighing.name())) {
                    known.add(Known.grams(
                            "vessels[" + v + "].items[" + i + "].weighGrams",
                            weighing.weigh().grams()));
                }
            }
        }
        return known;
    }

    private static String portion(int place) {
        return "portions[" + place + "].";
    }

    List<Known> portionHeading(int place) {
        PortionSheet portion = sheet.portions().get(place);
        return List.of(
                Known.percent(portion(place) + "sharePercent", portion.sharePercent()),
                Known.grams(portion(place) + "totalGrams", portion.totalGrams()),
                Known.percent(portion(place) + "waterPercentOfOils", portion.waterPercentOfOils()),
                Known.percent(portion(place) + "superfatPercent", portion.superfatPercent()));
    }

    /** The row of the base batter first, then those of the additions: what is added, the reading, and what that is of the oils. */
    List<Known> portionRow(int place, int row, UnitsShown units) {
        PortionSheet portion = sheet.portions().get(place);
        if (row == 0) {
            return List.of(
                    Known.grams(portion(place) + "baseBatterGrams", portion.baseBatterGrams()),
                    Known.grams(
                            "sums." + portion(place) + "batterReadingGrams",
                            portion.emptyGrams() + portion.baseBatterGrams()));
        }
        PortionSheet.PortionAddition addition = portion.additions().get(row - 1);
        String path = portion(place) + "additions[" + (row - 1) + "].";
        return List.of(
                addition.liquidGrams() > 0
                        ? Known.grams("sums." + path + "grams", addition.grams() + addition.liquidGrams())
                        : Known.grams(path + "grams", addition.grams()),
                Known.grams(path + "readingGrams", addition.readingGrams()),
                new Known(path + "gramsPerKgOils", forOils(addition.gramsPerKilogramOils(), units), ""),
                new Known(path + "gramsPerKgPortionOils", forOils(addition.gramsPerKilogramPortionOils(), units), ""));
    }

    private static double forOils(double gramsPerKilogram, UnitsShown units) {
        return units.ounces() ? UnitsShown.ouncesForAPound(gramsPerKilogram) : gramsPerKilogram;
    }

    /** Behind the layer's number. */
    List<Known> fadeRow(int row) {
        FadingPour.Layer layer = sheet.fade().get(row);
        String path = "fade[" + row + "].";
        return List.of(
                Known.grams(path + "jugBeforeGrams", layer.jugBeforeGrams()),
                Known.grams(path + "pourGrams", layer.pourGrams()),
                Known.percent(path + "colourPercent", layer.colourPercent()),
                Known.grams(path + "addPlainGrams", layer.addPlainGrams()));
    }
}
