package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.chemistry.BatchLine;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.SuperfatBand;
import lyewright.makingsheet.Weighing;
import lyewright.material.Names;
import lyewright.measure.MassUnit;
import lyewright.picture.FattyAcidsPicture;
import lyewright.picture.Picture;
import lyewright.picture.SuperfatPicture;
import lyewright.words.Figures;
import lyewright.words.Labelled;
import lyewright.words.SheetCautions;
import lyewright.words.SheetView;

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
        String superfat,
        String range,
        String verdict,
        String alkali,
        String water,
        List<Labelled> masses,
        Picture band,
        Picture acids,
        boolean stopped,
        List<Caution> cautions,
        List<Caution> notes,
        Map<String, String> says) {

    /** The figures of a sheet. */
    static EditorFigures of(MakingSheet sheet, Map<String, String> places, boolean ounces) {
        return new Reckoned(sheet, ounces).figures(places);
    }

    /** Puts the words together, once for each sheet. */
    private static final class Reckoned {

        private final MakingSheet sheet;
        private final SheetView view;
        private final boolean ounces;

        Reckoned(MakingSheet sheet, boolean ounces) {
            this.sheet = sheet;
            this.view = new SheetView(sheet);
            this.ounces = ounces;
        }

        EditorFigures figures(Map<String, String> places) {
            SuperfatBand band = sheet.band();
            return new EditorFigures(
                    sheet.formula().formula().inMasses() ? "As written" : "For 1 kg of oils",
                    Figures.percent(sheet.sheetSuperfatPercent(), 1),
                    Figures.fixed(band.lowPercent(), 1) + " and " + Figures.percent(band.highPercent(), 1),
                    sheet.verdict().word(),
                    alkali(),
                    mass(sheet.totals().water()),
                    masses(),
                    SuperfatPicture.of(sheet),
                    FattyAcidsPicture.of(sheet),
                    sheet.stopped(),
                    sheet.cautions().stream()
                            .filter(caution -> !SheetCautions.isNote(caution))
                            .toList(),
                    sheet.cautions().stream().filter(SheetCautions::isNote).toList(),
                    says(places));
        }

        private String alkali() {
            List<String> each = view.where(line -> line.kind() == BatchLine.Kind.ALKALI).stream()
                    .map(weighing -> mass(weighing.weigh().grams()) + " " + small(weighing.name()))
                    .toList();
            return String.join(" and ", each);
        }

        private static String small(String name) {
            int bracket = name.indexOf(" (");
            return Names.inSentence(bracket < 0 ? name : name.substring(0, bracket));
        }

        private List<Labelled> masses() {
            List<Labelled> masses = new ArrayList<>();
            view.where(line -> line.kind() == BatchLine.Kind.ALKALI)
                    .forEach(weighing -> masses.add(
                            new Labelled(weighing.name(), mass(weighing.weigh().grams()))));
            masses.add(new Labelled("Water", mass(sheet.totals().water())));
            if (sheet.totals().waterBrought() >= 0.5) {
                masses.add(new Labelled(
                        "Water that other things bring", mass(sheet.totals().waterBrought())));
            }
            masses.add(new Labelled(
                    "Strength of the lye", Figures.percent(sheet.lye().pureStrengthPercent(), 1) + " pure alkali"));
            masses.add(new Labelled("Oils", mass(sheet.totals().oils())));
            masses.add(new Labelled("Everything", mass(sheet.totals().batch())));
            return masses;
        }

        private Map<String, String> says(Map<String, String> places) {
            Map<String, String> says = new HashMap<>();
            says.put("superfat", Figures.percent(sheet.sheetSuperfatPercent(), 2) + " by the sheet");
            says.put("alkali", alkali());
            says.put(
                    "water",
                    mass(sheet.totals().water()) + ", lye of "
                            + Figures.percent(sheet.lye().pureStrengthPercent(), 1));
            oils(places, says);
            additions(places, says);
            return says;
        }

        private void oils(Map<String, String> places, Map<String, String> says) {
            for (int i = 0; i < sheet.formula().oils().size(); i++) {
                int place = i;
                String key = sheet.formula().oils().get(i).key();
                List<Weighing> weighed = view.where(line -> line.kind() == BatchLine.Kind.OIL && line.place() == place);
                double grams = grams(weighed);
                String share =
                        Figures.percent(100 * sheet.formula().oils().get(i).fraction(), 1);
                says.put(row(places.getOrDefault("oils." + key, "")), mass(grams) + ", " + share);
            }
        }

        private void additions(Map<String, String> places, Map<String, String> says) {
            for (int i = 0; i < sheet.formula().additions().size(); i++) {
                int place = i;
                List<Weighing> weighed =
                        view.where(line -> line.kind() == BatchLine.Kind.ADDITION && line.place() == place);
                double percent =
                        weighed.stream().mapToDouble(Weighing::percentOfOils).sum();
                says.put(
                        row(places.getOrDefault("additions." + i + ".of", "")),
                        mass(grams(weighed)) + ", " + Figures.percent(percent, 1) + " of oils");
            }
        }

        /** A field's row: {@code oils.2} of {@code oils.2.amount}. */
        private static String row(String field) {
            int end = field.lastIndexOf('.');
            return end < 0 ? field : field.substring(0, end);
        }

        private static double grams(List<Weighing> weighed) {
            return weighed.stream().mapToDouble(w -> w.weigh().grams()).sum();
        }

        private String mass(double grams) {
            return ounces
                    ? Figures.fixed(grams / MassUnit.OUNCE.grams().doubleValue(), 2) + " oz"
                    : grams < 100 ? Figures.upTo(grams, 1) + " g" : Figures.grams(grams, 0);
        }
    }

    /** What a row comes to; empty where it has no figures. */
    public String says(String row) {
        return says.getOrDefault(row, "");
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
        return superfat + " superfat, 19 times in 20 between " + range + "; " + alkali + ", " + water + " water"
                + Optional.of(cautionCount())
                        .filter(count -> !count.isEmpty())
                        .map(count -> "; " + count)
                        .orElse("");
    }
}
