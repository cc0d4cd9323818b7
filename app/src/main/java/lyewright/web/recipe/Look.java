package lyewright.web.recipe;

import java.util.List;
import java.util.Optional;
import lyewright.chemistry.BatchComposition;
import lyewright.chemistry.Keeping;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.makingsheet.MakingSheet;
import lyewright.picture.FadePicture;
import lyewright.picture.FattyAcidsPicture;
import lyewright.picture.Picture;
import lyewright.picture.PortionsPicture;
import lyewright.picture.SuperfatPicture;
import lyewright.picture.WhereMassGoesPicture;
import lyewright.words.AssumedWords;
import lyewright.words.BandWords;
import lyewright.words.Figures;
import lyewright.words.SheetCautions;

/**
 * What a recipe comes to, in pictures and figures.
 *
 * @param basis for how much it is reckoned
 * @param superfat of the sheet, percent
 * @param superfatWhy where it says why
 * @param asked what was asked, in words
 * @param band how sure that is
 * @param bandTold the same in figures
 * @param hangsOn what its width hangs on
 * @param certificate what would narrow it
 * @param cautions gravest first
 * @param mass where the mass goes
 * @param portions how the batter is shared; empty for a single batter
 * @param fade the layers of a fading pour; empty without one
 * @param bar what the cured bar consists of
 * @param barTold more of the bar
 * @param acids the fatty acids
 * @param acidsTold the same in figures
 * @param keeping what the acids mean for keeping; empty where none are known
 * @param keepingTold its figures
 * @param lyeTold lye, water, batter
 * @param assumes which balances and which alkali the figures take, as sentences
 */
public record Look(
        String basis,
        String superfat,
        String superfatWhy,
        String asked,
        Picture band,
        List<Told> bandTold,
        Optional<String> hangsOn,
        Optional<String> certificate,
        SheetCautions cautions,
        Picture mass,
        Optional<Picture> portions,
        Optional<Picture> fade,
        List<Told> bar,
        List<Told> barTold,
        Picture acids,
        List<Told> acidsTold,
        List<String> keeping,
        List<Told> keepingTold,
        List<Told> lyeTold,
        List<String> assumes) {

    /** Copies its lists. */
    public Look {
        bandTold = List.copyOf(bandTold);
        bar = List.copyOf(bar);
        barTold = List.copyOf(barTold);
        acidsTold = List.copyOf(acidsTold);
        keeping = List.copyOf(keeping);
        keepingTold = List.copyOf(keepingTold);
        lyeTold = List.copyOf(lyeTold);
        assumes = List.copyOf(assumes);
    }

    /** Whether a caution asks for more than to be known. */
    public boolean grave() {
        return cautions.face().stream().anyMatch(caution -> !SheetCautions.isNote(caution));
    }

    /** Of a sheet. */
    static Look of(MakingSheet sheet, Ingredients.Address address) {
        BatchComposition composition = sheet.composition();
        BandWords words = new BandWords(sheet.band());
        OilPhaseAcids acids = OilPhaseAcids.of(sheet.batch(), sheet.filled().oilsGrams());
        Optional<Keeping> keeping = Keeping.of(acids);
        BarTold bar = new BarTold(composition, address);
        LookTold told = new LookTold(sheet, address);
        return new Look(
                RecipeSheet.basis(sheet),
                Figures.percent(sheet.sheetSuperfatPercent(), 1),
                address.why("superfat.sheetPercent"),
                sheet.askedSuperfatPercent()
                        .map(asked -> Figures.upTo(asked, 2) + " % asked for")
                        .orElse("from the alkali given"),
                SuperfatPicture.of(sheet),
                told.band(),
                words.hangsOn(),
                words.certificate(),
                SheetCautions.of(sheet),
                WhereMassGoesPicture.of(sheet, composition),
                PortionsPicture.of(sheet),
                FadePicture.of(sheet),
                bar.substances(),
                bar.facts(),
                FattyAcidsPicture.of(acids),
                told.acids(acids),
                keeping.map(Keeping::sentences).orElse(List.of()),
                keeping.map(known -> told.keeping(acids, known)).orElse(List.of()),
                told.lye(),
                AssumedWords.of(sheet));
    }
}
