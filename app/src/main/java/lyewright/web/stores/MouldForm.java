package lyewright.web.stores;

import java.util.Optional;
import java.util.function.UnaryOperator;
import lyewright.measure.Length;
import lyewright.measure.WrittenMass;
import lyewright.records.equipment.KeptMould;
import lyewright.records.equipment.MouldMeasures;
import lyewright.records.equipment.MouldMeasures.Cut;
import lyewright.records.equipment.MouldMeasures.Inside;

/**
 * A mould as typed.
 *
 * @param kind what it is
 * @param name what it is called
 * @param size its inside
 * @param bar a bar's thickness, or its grid
 * @param blade what a cut takes
 * @param ends what is cut off each end
 * @param trim what is planed off the top
 * @param water the water that fills it
 * @param usual what it usually takes
 * @param usualOf the recipe that was in it then
 */
record MouldForm(
        MouldKind kind,
        String name,
        String size,
        String bar,
        String blade,
        String ends,
        String trim,
        String water,
        String usual,
        String usualOf) {

    static MouldForm empty(MouldKind kind) {
        return new MouldForm(kind, "", "", "", "", "", "", "", "", "");
    }

    static MouldForm sent(MouldKind kind, UnaryOperator<String> field) {
        return new MouldForm(
                kind,
                field.apply("name"),
                field.apply("size"),
                field.apply("bar"),
                field.apply("blade"),
                field.apply("ends"),
                field.apply("trim"),
                field.apply("water"),
                field.apply("usual"),
                field.apply("usualOf"));
    }

    static MouldForm of(KeptMould kept, String usualOf) {
        MouldMeasures measures = kept.measures();
        Optional<Cut> cut = measures.cut();
        return new MouldForm(
                MouldKind.of(measures.inside()),
                kept.name(),
                measures.inside().map(MouldForm::size).orElse(""),
                cut.map(MouldForm::bar).orElse(""),
                cut.flatMap(Cut::blade).map(Length::toString).orElse(""),
                cut.flatMap(Cut::ends).map(Length::toString).orElse(""),
                cut.flatMap(Cut::trim).map(Length::toString).orElse(""),
                measures.waterFill().map(WrittenMass::toString).orElse(""),
                measures.usual().map(usual -> usual.mass().toString()).orElse(""),
                usualOf);
    }

    /** An inside as it is typed. */
    static String size(Inside inside) {
        if (inside instanceof MouldMeasures.Loaf loaf) {
            return sides(loaf.length(), loaf.width(), loaf.height());
        }
        if (inside instanceof MouldMeasures.Slab slab) {
            return sides(slab.length(), slab.width(), slab.height());
        }
        if (inside instanceof MouldMeasures.Tube tube) {
            return sides(tube.length(), tube.diameter());
        }
        MouldMeasures.Cavities cavities = (MouldMeasures.Cavities) inside;
        return cavities.count() + " x " + cavities.each();
    }

    /** The first measure of an inside that has any. */
    static Optional<Length> length(Inside inside) {
        return inside instanceof MouldMeasures.Loaf loaf
                ? Optional.of(loaf.length())
                : inside instanceof MouldMeasures.Slab slab
                        ? Optional.of(slab.length())
                        : inside instanceof MouldMeasures.Tube tube ? Optional.of(tube.length()) : Optional.empty();
    }

    private static String bar(Cut cut) {
        return cut.across()
                .map(across -> sides(cut.thickness(), across))
                .orElseGet(() -> cut.thickness().toString());
    }

    /** The unit once at the end where all have the same. */
    private static String sides(Length... sides) {
        boolean one = true;
        for (Length side : sides) {
            one &= side.unit() == sides[0].unit();
        }
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < sides.length; i++) {
            boolean last = i == sides.length - 1;
            text.append(i == 0 ? "" : " x ")
                    .append(one && !last ? sides[i].value().toPlainString() : sides[i].toString());
        }
        return text.toString();
    }

    /** Whether anything beyond shape and bars is typed, so that its fold stands open. */
    boolean hasLosses() {
        return !(blade.isBlank() && ends.isBlank() && trim.isBlank());
    }

    /** Whether what goes into it was measured too. */
    boolean hasFills() {
        return !(water.isBlank() && usual.isBlank() && usualOf.isBlank());
    }
}
