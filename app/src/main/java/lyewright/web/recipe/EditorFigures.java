package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.chemistry.BatchLine;
import lyewright.formula.ResolvedFormula.DispersingLiquid;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.SuperfatBand;
import lyewright.makingsheet.Weighing;
import lyewright.material.Names;
import lyewright.picture.FattyAcidsPicture;
import lyewright.picture.Picture;
import lyewright.picture.SuperfatPicture;
import lyewright.web.Piece;
import lyewright.words.Figures;
import lyewright.words.SheetCautions;
import lyewright.words.SheetView;
import lyewright.words.UnitsShown;

/**
 * What a formula comes to, as the editor shows it while somebody types.
 *
 * @param basis which masses these are
 * @param superfat of the sheet, percent
 * @param range 19 times in 20
 * @param verdict as to alkali, one word
 * @param alkali what is weighed of it
 * @param water what is added, and the lye's strength
 * @param masses the same and more, each with its label
 * @param band the superfat as a picture
 * @param acids the fatty acids as a picture
 * @param stopped whether it is not to be made as it stands
 * @param cautions what to take care of, the gravest first
 * @param notes what is only good to know
 * @param says what each row comes to, by the row
 */
public record EditorFigures(
        String basis,
        Piece superfat,
        List<Piece> range,
        String verdict,
        List<Piece> alkali,
        Piece water,
        List<Mass> masses,
        Picture band,
        Picture acids,
        boolean stopped,
        List<Caution> cautions,
        List<Caution> notes,
        Map<String, List<Piece>> says) {

    /**
     * A figure with its label.
     *
     * @param label what it is
     * @param text the figure, with the path of its why
     */
    public record Mass(String label, List<Piece> text) {

        /** Copies its list. */
        public Mass {
            text = List.copyOf(text);
        }
    }

    /** The figures of a sheet. */
    static EditorFigures of(MakingSheet sheet, Map<String, String> places, UnitsShown units) {
        return new Reckoned(sheet, units).figures(places);
    }

    private static final String SUPERFAT = "superfat.sheetPercent";

    /** Puts the words together, once for each sheet. */
    private static final class Reckoned {

        private final MakingSheet sheet;
        private final SheetView view;
        private final UnitsShown units;

        Reckoned(MakingSheet sheet, UnitsShown units) {
            this.sheet = sheet;
            this.view = new SheetView(sheet);
            this.units = units;
        }

        EditorFigures figures(Map<String, String> places) {
            SuperfatBand band = sheet.band();
            return new EditorFigures(
                    sheet.formula().formula().inMasses() ? "As written" : "For " + units.kilogram() + " of oils",
                    new Piece(Figures.percent(sheet.sheetSuperfatPercent(), 1), SUPERFAT),
                    List.of(
                            new Piece(Figures.fixed(band.lowPercent(), 1), "superfat.low95Percent"),
                            Piece.plain(" and "),
                            new Piece(Figures.percent(band.highPercent(), 1), "superfat.high95Percent")),
                    sheet.verdict().word(),
                    alkali(),
                    water(),
                    masses(),
                    SuperfatPicture.of(sheet),
                    FattyAcidsPicture.of(sheet),
                    sheet.stopped(),
                    sheet.cautions().stream()
                            .filter(caution -> !SheetCautions.isNote(caution))
                            .map(units::told)
                            .toList(),
                    sheet.cautions().stream()
                            .filter(SheetCautions::isNote)
                            .map(units::told)
                            .toList(),
                    says(places));
        }

        private List<Piece> alkali() {
            List<Piece> all = new ArrayList<>();
            for (Weighing weighing : view.where(line -> line.kind() == BatchLine.Kind.ALKALI)) {
                if (!all.isEmpty()) {
                    all.add(Piece.plain(" and "));
                }
                all.add(weighed(weighing));
                all.add(Piece.plain(" " + small(weighing.name())));
            }
            return all;
        }

        private Piece weighed(Weighing weighing) {
            String path = path(weighing) + ".weighGrams";
            // as the balance shows it: an alkali rounded to grams could read as more than is weighed
            return units.ounces()
                    ? mass(weighing.weigh().grams(), path)
                    : new Piece(Figures.on(weighing.balance(), weighing.weigh()), path);
        }

        private String path(Weighing weighing) {
            for (int v = 0; v < sheet.vessels().size(); v++) {
                int i = sheet.vessels().get(v).weighings().indexOf(weighing);
                if (i >= 0) {
                    return "vessels[" + v + "].items[" + i + "]";
                }
            }
            throw new IllegalStateException(weighing.name() + " is in no vessel");
        }

        private Piece water() {
            return mass(sheet.totals().water(), "totals.waterGrams");
        }

        private Piece strength() {
            return waterIsBrought()
                    ? new Piece(
                            Figures.percent(sheet.lye().concentrationPercent(), 1), "alkali.jugConcentrationPercent")
                    : new Piece(Figures.percent(sheet.lye().pureStrengthPercent(), 1), "lye.pureStrengthPercent");
        }

        /** Milk and the like are in the jug too, so that only what is in it says how strong the lye is. */
        private boolean waterIsBrought() {
            return sheet.totals().waterBrought() >= 0.05;
        }

        private static String small(String name) {
            int bracket = name.indexOf(" (");
            return Names.inSentence(bracket < 0 ? name : name.substring(0, bracket));
        }

        private List<Mass> masses() {
            List<Mass> masses = new ArrayList<>();
            view.where(line -> line.kind() == BatchLine.Kind.ALKALI)
                    .forEach(weighing -> masses.add(new Mass(weighing.name(), List.of(weighed(weighing)))));
            masses.add(new Mass("Water", List.of(water())));
            if (sheet.totals().waterBrought() >= 0.5) {
                masses.add(new Mass(
                        "Water that other things bring",
                        List.of(mass(sheet.totals().waterBrought(), "totals.waterBroughtGrams"))));
            }
            masses.add(new Mass("Strength of the lye", List.of(strength(), Piece.plain(" pure alkali"))));
            masses.add(new Mass("Oils", List.of(mass(sheet.totals().oils(), "totals.oilsGrams"))));
            masses.add(new Mass("Everything", List.of(mass(sheet.totals().batch(), "totals.batchGrams"))));
            return masses;
        }

        private Map<String, List<Piece>> says(Map<String, String> places) {
            Map<String, List<Piece>> says = new HashMap<>();
            says.put(
                    "superfat",
                    List.of(
                            new Piece(Figures.percent(sheet.sheetSuperfatPercent(), 2), SUPERFAT),
                            Piece.plain(" by the sheet")));
            says.put("alkali", alkali());
            says.put("water", List.of(water(), Piece.plain(", lye of "), strength()));
            oils(places, says);
            additions(places, says);
            return says;
        }

        private void oils(Map<String, String> places, Map<String, List<Piece>> says) {
            for (int i = 0; i < sheet.formula().oils().size(); i++) {
                int place = i;
                String key = sheet.formula().oils().get(i).key();
                String share =
                        Figures.percent(100 * sheet.formula().oils().get(i).fraction(), 1);
                List<Weighing> weighed = view.where(line -> (line.kind() == BatchLine.Kind.OIL && line.place() == place)
                        || (wetsOut(line) && line.key().equals(key)));
                List<Piece> told = new ArrayList<>();
                if (!weighed.isEmpty()) {
                    told.add(Piece.plain(called(weighed)));
                    // what wets something out is weighed apart from the rest of it
                    told.add(
                            weighed.size() == 1
                                    ? weighed(weighed.get(0))
                                    : mass(grams(weighed), "sums.oils[" + i + "].weighedGrams"));
                    told.add(Piece.plain(", "));
                }
                told.add(new Piece(share, "sums.oils[" + i + "].percent"));
                says.put(row(places.getOrDefault("oils." + key, "")), told);
            }
        }

        private void additions(Map<String, String> places, Map<String, List<Piece>> says) {
            for (int i = 0; i < sheet.formula().additions().size(); i++) {
                int place = i;
                List<Weighing> weighed =
                        view.where(line -> line.kind() == BatchLine.Kind.ADDITION && line.place() == place);
                double percent =
                        weighed.stream().mapToDouble(Weighing::percentOfOils).sum();
                String path = "sums.additions[" + i + "]";
                says.put(
                        row(places.getOrDefault("additions." + i + ".of", "")),
                        List.of(
                                Piece.plain(called(weighed)),
                                mass(grams(weighed), path + ".grams"),
                                Piece.plain(", "),
                                new Piece(Figures.percent(percent, 1), path + ".percentOfOils"),
                                Piece.plain(" of oils")));
            }
        }

        private boolean wetsOut(BatchLine line) {
            return line.kind() == BatchLine.Kind.DISPERSING_LIQUID
                    && sheet.batch().liquidFrom(line) == DispersingLiquid.From.OILS;
        }

        /** What it is called, without its strength, which is no figure of this recipe; empty where nothing is weighed. */
        private static String called(List<Weighing> weighed) {
            return weighed.stream()
                    .map(w -> w.name().split(", (?=[0-9])", 2)[0] + ": ")
                    .findFirst()
                    .orElse("");
        }

        private static double grams(List<Weighing> weighed) {
            return weighed.stream().mapToDouble(w -> w.weigh().grams()).sum();
        }

        /** A field's row: {@code oils.2} of {@code oils.2.amount}. */
        private static String row(String field) {
            int end = field.lastIndexOf('.');
            return end < 0 ? field : field.substring(0, end);
        }

        private Piece mass(double grams, String path) {
            return new Piece(mass(grams), path);
        }

        private String mass(double grams) {
            return units.ounces()
                    ? UnitsShown.inOunces(grams)
                    : grams < 100 ? Figures.upTo(grams, 1) + " g" : Figures.grams(grams, 0);
        }
    }

    /** What a row comes to; empty where it has no figures. */
    public List<Piece> says(String row) {
        return says.getOrDefault(row, List.of());
    }

    /** How many cautions there are, in words; empty without any. */
    public String cautionCount() {
        if (stopped) {
            return "not to be made";
        }
        return cautions.isEmpty() ? "" : cautions.size() == 1 ? "1 caution" : cautions.size() + " cautions";
    }

    /** What can be heard of it. */
    public String said() {
        return superfat.text() + " superfat, 19 times in 20 between " + text(range) + "; " + text(alkali) + ", "
                + water.text() + " water"
                + Optional.of(cautionCount())
                        .filter(count -> !count.isEmpty())
                        .map(count -> "; " + count)
                        .orElse("");
    }

    private static String text(List<Piece> pieces) {
        return pieces.stream().map(Piece::text).collect(Collectors.joining());
    }
}
