package lyewright.picture;

import lyewright.makingsheet.SuperfatBand;

/**
 * What of a band is drawn, all in percent.
 *
 * @param low end of the interval
 * @param high end of the interval
 * @param worst with all at its worst at once
 * @param sheet as the sheet has it
 */
record BandFigures(double low, double high, double worst, double sheet) {

    static BandFigures of(SuperfatBand band) {
        return new BandFigures(band.lowPercent(), band.highPercent(), band.worstPercent(), band.sheetPercent());
    }
}
