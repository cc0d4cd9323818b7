package lyewright.web.recipe;

import java.util.List;
import java.util.Optional;
import lyewright.makingsheet.MakingSheet;
import lyewright.picture.FadePicture;
import lyewright.picture.Picture;
import lyewright.picture.PortionsPicture;
import lyewright.picture.SuperfatPicture;
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
 * @param portions how the batter is shared; empty for a single batter
 * @param fade the layers of a fading pour; empty without one
 * @param bar what it becomes
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
        Optional<Picture> portions,
        Optional<Picture> fade,
        BarShown bar,
        List<Told> lyeTold,
        List<String> assumes) {

    /** Copies its lists. */
    public Look {
        bandTold = List.copyOf(bandTold);
        lyeTold = List.copyOf(lyeTold);
        assumes = List.copyOf(assumes);
    }

    /** Whether a caution asks for more than to be known. */
    public boolean grave() {
        return cautions.face().stream().anyMatch(caution -> !SheetCautions.isNote(caution));
    }

    /** Of a sheet. */
    static Look of(MakingSheet sheet, Ingredients.Address address) {
        BandWords words = new BandWords(sheet.band());
        LookTold told = new LookTold(sheet, address.units(), address::why);
        return new Look(
                RecipeSheet.basis(sheet, address.units()),
                Figures.percent(sheet.sheetSuperfatPercent(), 1),
                address.why("superfat.sheetPercent"),
                sheet.askedSuperfatPercent()
                        .map(asked -> Figures.upTo(asked, 2) + " % asked for")
                        .orElse("from the alkali given"),
                SuperfatPicture.of(sheet),
                told.band(),
                words.hangsOn(),
                words.certificate(),
                SheetCautions.of(sheet, address.units()),
                PortionsPicture.of(sheet, address.units().mass()),
                FadePicture.of(sheet, address.units().mass()),
                BarShown.of(sheet, address.units(), address::why),
                told.lye(),
                AssumedWords.of(sheet));
    }
}
