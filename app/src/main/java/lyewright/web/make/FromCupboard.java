package lyewright.web.make;

import java.util.List;
import lyewright.measure.Problem;
import lyewright.stock.Cupboard;
import lyewright.stock.LotFigures;

/**
 * What the cupboard gives to a sheet.
 *
 * @param cupboard which lots serve what, by the sheet's own masses
 * @param figures what the certificates of these lots say: what the sheet is reckoned with where it asks for them
 * @param stock where it was looked
 */
record FromCupboard(Cupboard cupboard, LotFigures figures, StockLook stock) {

    /** What was picked by hand and cannot be taken. */
    List<Problem> refused() {
        return cupboard.refused();
    }
}
