package lyewright.web.cupboard;

import java.util.List;
import java.util.Optional;
import lyewright.formula.OwnMaterial;
import lyewright.formula.OwnMaterial.Strength;
import lyewright.material.Figure;
import lyewright.records.Records;
import lyewright.records.setting.Units;
import lyewright.records.stock.Counting;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.StockItem;
import lyewright.records.stock.StockMove;
import lyewright.words.Figures;

/** Looks at what a lot was made of. */
final class MadeView {

    /** Doubt under this, in percent of strength, is shown to two decimals. */
    private static final double SMALL = 0.1;

    private final Records records;
    private final Units units;

    MadeView(Records records, Units units) {
        this.records = records;
        this.units = units;
    }

    /** What it was made of and how strong it is; nothing where it was bought as an oil or as a dry alkali. */
    Optional<LotPage.Made> of(KeptLot lot, StockItem item) {
        List<LotPage.Part> parts =
                records.lots().madeOf(lot.id()).stream().map(this::part).toList();
        String strength = lot.said()
                .certificate()
                .filter(own -> own.kind().equals(OwnMaterial.LYE))
                .filter(own -> CertificateForm.figures(item.said()).isEmpty())
                .flatMap(OwnMaterial::strength)
                .map(MadeView::said)
                .orElse("");
        return parts.isEmpty() && strength.isEmpty()
                ? Optional.empty()
                : Optional.of(new LotPage.Made(strength, parts));
    }

    private static String said(Strength strength) {
        Figure pure = strength.pure().figure("");
        double half = (pure.high() - pure.low()) / 2;
        int decimals = half < SMALL ? 2 : 1;
        return Figures.upTo(pure.middle(), decimals) + (half > 0 ? " ± " + Figures.upTo(half, decimals) : "") + " % "
                + MadeName.name(strength.alkali()) + " by mass";
    }

    private LotPage.Part part(StockMove move) {
        KeptLot from = records.lots().find(move.lotId()).orElseThrow();
        String name = records.items().find(from.itemId()).orElseThrow().name();
        return new LotPage.Part(
                Amounts.said(Counting.MASS, -move.told().amount(), units),
                name + ", lot " + from.said().ownCode(),
                LotPages.addressOf(from.id()),
                move.correctedBy().isPresent());
    }
}
