package lyewright.web.make;

import java.util.Optional;
import lyewright.fill.CutPlan;
import lyewright.fill.Fill;
import lyewright.fill.FillText;
import lyewright.fill.Mould;
import lyewright.measure.Decimal;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.web.make.MakeChoice.Much;

/** Reads how much is chosen; what is wrong is said of the field it was typed in. */
final class ChosenFill implements FillText.Typed {

    private final MakeChoice choice;
    private final Much much;

    private ChosenFill(MakeChoice choice, Much much) {
        this.choice = choice;
        this.much = much;
    }

    static Outcome<Fill> read(MakeChoice choice, Mould mould, Optional<CutPlan> planned) {
        Optional<Much> much = choice.much();
        if (much.isEmpty()) {
            return refused(MakeChoice.MUCH, "it is not said how much to make", "choose one of the ways");
        }
        if (much.get().needsAmount() && choice.typed(MakeChoice.AMOUNT).isEmpty()) {
            return refused(MakeChoice.AMOUNT, "it is not said how much", "write it as " + example(much.get()));
        }
        if (much.get() == Much.FULL && !mould.known()) {
            return refused(
                    MakeChoice.MOULD,
                    "without a mould nothing is full",
                    "choose one, or type its inside, or say how much to make");
        }
        return FillText.read(new ChosenFill(choice, much.get()), mould, planned)
                .then(fill -> Outcome.ok(
                        much.get() == Much.WRITTEN
                                ? new Fill(new Fill.AsWritten(), fill.mould(), fill.cut(), fill.holdBack())
                                : fill));
    }

    static String example(Much much) {
        return switch (much) {
            case BARS, CURED -> "10 x 110 g";
            case OILS -> "1 kg";
            default -> "1500 g";
        };
    }

    private static <T> Outcome<T> refused(String field, String what, String remedy) {
        return Outcome.refused(new Problem(field, what, remedy));
    }

    @Override
    public Optional<String> text(FillText.Part part) {
        return switch (part) {
            case TOTAL -> amountOf(Much.TOTAL);
            case OILS -> amountOf(Much.OILS);
            case BARS -> amountOf(Much.BARS).or(() -> amountOf(Much.CURED));
            case CURED -> amountOf(Much.CURED);
            case HOLD_BACK -> choice.typed(MakeChoice.HOLD_BACK).map(ChosenFill::percent);
            case CUT -> choice.typed(MakeChoice.CUT);
            case BLADE -> choice.typed(MakeChoice.BLADE);
            case ENDS -> choice.typed(MakeChoice.ENDS);
            case TRIM -> choice.typed(MakeChoice.TRIM);
            case BOX, TUBE, CAVITIES, WATER_FILL, USUAL -> Optional.empty();
        };
    }

    private Optional<String> amountOf(Much way) {
        return much == way ? choice.typed(MakeChoice.AMOUNT) : Optional.empty();
    }

    /** A share is always percent here. */
    private static String percent(String share) {
        return Decimal.parse(share) instanceof Outcome.Ok ? share.strip() + " %" : share;
    }

    @Override
    public String called(FillText.Part part) {
        return switch (part) {
            case TOTAL, OILS, BARS, CURED -> MakeChoice.AMOUNT;
            case HOLD_BACK -> MakeChoice.HOLD_BACK;
            case CUT -> MakeChoice.CUT;
            case BLADE -> MakeChoice.BLADE;
            case ENDS -> MakeChoice.ENDS;
            case TRIM -> MakeChoice.TRIM;
            case BOX -> "a box";
            case TUBE -> "a tube";
            case CAVITIES -> "cavities";
            case WATER_FILL, USUAL -> MakeChoice.MOULD;
        };
    }
}
