package lyewright.web.recipe;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lyewright.chemistry.BatchComposition;
import lyewright.chemistry.Keeping;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.makingsheet.MakingSheet;
import lyewright.picture.FattyAcidsPicture;
import lyewright.picture.Picture;
import lyewright.picture.WhereMassGoesPicture;
import lyewright.words.UnitsShown;

/**
 * What a batch becomes: where its mass goes, what the cured bar consists of, its fatty acids and how it keeps.
 *
 * @param mass where the mass goes
 * @param poured what is poured, by what it is for
 * @param facts of the bar as a whole
 * @param substances what the bar consists of
 * @param acids the fatty acids
 * @param acidsTold the same in figures
 * @param keeping what the acids mean for keeping; empty where none are known
 * @param keepingTold its figures
 */
public record BarShown(
        Picture mass,
        List<Told> poured,
        List<Told> facts,
        List<Told> substances,
        Picture acids,
        List<Told> acidsTold,
        List<String> keeping,
        List<Told> keepingTold) {

    /** Copies its lists. */
    public BarShown {
        poured = List.copyOf(poured);
        facts = List.copyOf(facts);
        substances = List.copyOf(substances);
        acidsTold = List.copyOf(acidsTold);
        keeping = List.copyOf(keeping);
        keepingTold = List.copyOf(keepingTold);
    }

    /**
     * Of a sheet.
     *
     * @param sheet the sheet
     * @param units that masses are said in
     * @param why where a figure of it says why, by the figure's path
     * @return what its batch becomes
     */
    public static BarShown of(MakingSheet sheet, UnitsShown units, UnaryOperator<String> why) {
        BatchComposition composition = sheet.composition();
        OilPhaseAcids acids = OilPhaseAcids.of(sheet.batch(), sheet.filled().oilsGrams());
        Optional<Keeping> keeping = Keeping.of(acids);
        BarTold bar = new BarTold(composition, units, why);
        AcidsTold told = new AcidsTold(acids, why);
        return new BarShown(
                WhereMassGoesPicture.of(sheet, composition, units.mass()),
                PouredTold.of(sheet, units, why),
                bar.facts(),
                bar.substances(),
                FattyAcidsPicture.of(acids),
                told.acids(),
                keeping.map(Keeping::sentences).orElse(List.of()),
                keeping.map(told::keeping).orElse(List.of()));
    }
}
