package lyewright.words;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import lyewright.chemistry.BatchLine;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.ResolvedFormula.AdditionPart;
import lyewright.makingsheet.Balance;
import lyewright.makingsheet.LyeSheet;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.Weighing;
import lyewright.material.Alkali;

/** Why a sheet asks for what it asks: alkali, lye, water, salt, density, each in a line. */
public final class ChemistryWords {

    private final MakingSheet sheet;
    private final LyeSheet lye;
    private final UnitsShown units;
    private final List<Labelled> lines = new ArrayList<>();

    private ChemistryWords(MakingSheet sheet, UnitsShown units) {
        this.sheet = sheet;
        this.lye = sheet.lye();
        this.units = units;
    }

    /** The superfat, asked and with these weights. */
    public static Labelled superfat(MakingSheet sheet) {
        String asked = sheet.askedSuperfatPercent()
                .map(a -> Figures.upTo(a, 2) + " % asked, ")
                .orElse("follows from the alkali given: ");
        return new Labelled(
                "Superfat", asked + Figures.fixed(sheet.sheetSuperfatPercent(), 2) + " % with these weights");
    }

    /** All but the superfat. */
    public static List<Labelled> of(MakingSheet sheet) {
        return of(sheet, UnitsShown.METRIC);
    }

    /** The same in the units that are wanted. */
    public static List<Labelled> of(MakingSheet sheet, UnitsShown units) {
        return new ChemistryWords(sheet, units).all();
    }

    private List<Labelled> all() {
        alkali();
        lye();
        water();
        salt();
        pair("Batter", Figures.fixed(sheet.batterDensity(), 3) + " g/ml");
        return List.copyOf(lines);
    }

    private void pair(String label, String text) {
        lines.add(new Labelled(label, text));
    }

    private void alkali() {
        ResolvedFormula formula = sheet.formula();
        if (formula.alkali().stock().isPresent()) {
            var stock = formula.alkali().stock().get();
            pair(
                    "Alkali",
                    units.about(under("stock"), lye.naohGrams() + lye.kohGrams()) + " of " + stock.name() + ", "
                            + Figures.upTo(stock.strength().middle(), 2) + " % "
                            + (stock.alkali() == Alkali.SODIUM ? "NaOH" : "KOH") + ": "
                            + units.tenths(lye.pureGrams()) + " pure");
        } else {
            product(Alkali.SODIUM, lye.naohGrams(), lye.naohPureGrams());
            product(Alkali.POTASSIUM, lye.kohGrams(), lye.kohPureGrams());
        }
        if (lye.naohPureGrams() > 0 && lye.kohPureGrams() > 0) {
            pair(
                    "Potassium's share",
                    Figures.fixed(lye.potassiumMolesPercent(), 1) + " % by moles, "
                            + Figures.fixed(lye.potassiumPurePercent(), 1) + " % by pure mass, "
                            + Figures.fixed(lye.potassiumWeighedPercent(), 1) + " % as weighed");
        }
    }

    private void product(Alkali alkali, double product, double pure) {
        if (product <= 0) {
            return;
        }
        double purity = 100 * sheet.formula().purities().fraction(alkali);
        String assumed = sheet.formula().purities().assumed(alkali) ? " pure (assumed), so " : " pure (as given), so ";
        pair(
                alkali == Alkali.SODIUM ? "Sodium hydroxide" : "Potassium hydroxide",
                units.tenths(under(alkali == Alkali.SODIUM ? "naoh" : "koh"), product) + " as weighed; "
                        + Figures.upTo(purity, 2) + " %" + assumed + units.tenths(pure) + " of it alkali");
    }

    private void lye() {
        // of stock lye only the pure strength says anything: its own water is water by the rule
        String asWeighed = sheet.formula().alkali().stock().isPresent()
                ? ""
                : ", " + Figures.percent(lye.weighedStrengthPercent(), 1) + " as weighed";
        pair(
                "Lye",
                Figures.percent(lye.pureStrengthPercent(), 1) + " pure" + asWeighed
                        + " (alkali ÷ alkali and all water by the rule)");
        pair(
                "In its jug",
                Figures.percent(lye.concentrationPercent(), 1) + ": " + units.tenths(lye.pureGrams())
                        + " of alkali in " + units.tenths(lye.waterInJugGrams()) + " of water"
                        + dissolvesIn());
        pair(
                "Water to spare",
                units.warmth(
                        lye.waterLeftGrams() >= 0
                                ? units.tenths(lye.waterLeftGrams())
                                        + " more in the jug than just keeps the alkali dissolved at 20 °C"
                                : "none: " + units.tenths(-lye.waterLeftGrams())
                                        + " too little to keep the alkali dissolved at 20 °C"));
    }

    /** The balance that an alkali is weighed on. */
    private Balance under(String key) {
        return sheet.vessels().stream()
                .flatMap(vessel -> vessel.weighings().stream())
                .filter(weighing -> weighing.line().kind() == BatchLine.Kind.ALKALI)
                .filter(weighing -> key.equals("stock") || weighing.line().key().equals(key))
                .map(Weighing::balance)
                .findFirst()
                .orElseGet(() -> sheet.equipment().balances().get(0));
    }

    private String dissolvesIn() {
        return lye.dissolvesIn().isEmpty() || lye.dissolvesIn().equals(List.of("water"))
                ? ""
                : " (" + lye.dissolvesIn().stream().map(this::called).collect(Collectors.joining(", ")) + ")";
    }

    private String called(String key) {
        return sheet.formula().additions().stream()
                .filter(addition -> addition.written().of().equals(key))
                .map(AdditionPart::nameInSentence)
                .findFirst()
                .orElse(key);
    }

    private void water() {
        MakingSheet.Totals totals = sheet.totals();
        String brought = totals.waterBrought() >= 0.05
                ? "; beside it " + units.tenths(totals.waterBrought()) + " come with "
                        + (lye.kohGrams() > 0 ? "potash and additions" : "additions")
                : "";
        pair(
                "Water by the rule",
                units.tenths(totals.water()) + ", " + Figures.percent(100 * totals.water() / totals.oils(), 1)
                        + " of the oils" + brought);
    }

    private void salt() {
        if (lye.saltPerWaterPercent() < 0.5) {
            return;
        }
        String held = lye.saltUndissolvedPercent() > 0
                ? "so strong a lye keeps about " + Figures.fixed(lye.saltHeldPercent(), 1) + " dissolved, "
                        + Figures.fixed(lye.saltUndissolvedPercent(), 0) + " % stays as grains"
                : "all of it dissolves";
        pair(
                "Salt",
                Figures.fixed(lye.saltPerWaterPercent(), 1)
                        + (units.ounces() ? " parts to 100 of water, by weight; " : " g to 100 g of water; ")
                        + held);
    }
}
