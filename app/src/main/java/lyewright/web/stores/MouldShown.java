package lyewright.web.stores;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.chemistry.BatterVolume;
import lyewright.fill.CutPlan;
import lyewright.fill.Shape;
import lyewright.measure.Length;
import lyewright.measure.LengthUnit;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.measure.WrittenMass;
import lyewright.picture.MouldPicture;
import lyewright.picture.Picture;
import lyewright.picture.UnmeasuredView;
import lyewright.records.equipment.KeptMould;
import lyewright.records.equipment.MouldMeasures.Inside;
import lyewright.records.setting.Units;
import lyewright.web.WorkshopUnits;
import lyewright.words.Sentences;

/**
 * A mould as it is shown: its picture where its inside is known, and what it holds.
 *
 * @param picture with its bars; empty where nothing is measured yet
 * @param sentences what it holds
 * @param wanting what has still to be typed before more can be shown; empty where nothing has
 */
public record MouldShown(Optional<Picture> picture, List<String> sentences, String wanting) {

    /** Copies its list. */
    public MouldShown {
        sentences = List.copyOf(sentences);
    }

    /** Of one that is kept. */
    static MouldShown of(KeptMould kept, Units units, String usualOf) {
        List<String> sentences = new ArrayList<>();
        kept.shape().ifPresent(shape -> holds(sentences, shape, kept.cutPlan(), units));
        kept.measures().waterFill().ifPresent(water -> sentences.add(water(water, units)));
        kept.measures().usual().ifPresent(usual -> sentences.add(usual(usual.mass(), usualOf, units)));
        Optional<String> holds = kept.measures()
                .waterFill()
                .map(water -> brimful(water, units))
                .or(() -> kept.measures().usual().map(usual -> InUnits.mass(usual.mass(), units)));
        return new MouldShown(
                picture(kept.shape(), kept.cutPlan(), unit(kept.measures().inside(), units))
                        .or(() -> holds.map(UnmeasuredView::of)),
                sentences,
                "");
    }

    /** Of one that is being typed: what reads of it. */
    static MouldShown of(MouldForm form, MouldReading.Read read, Units units) {
        List<String> sentences = new ArrayList<>();
        read.shape().ifPresent(shape -> holds(sentences, shape, read.plan(), units));
        read.water().ifPresent(water -> sentences.add(water(water, units)));
        Optional<Problem> first = read.problems().stream()
                .filter(p -> p.path().equals("size") || p.path().equals("bar"))
                .findFirst();
        return new MouldShown(
                picture(read.shape(), read.plan(), unit(read.inside(), units))
                        .or(() -> read.water()
                                .filter(water -> form.kind() == MouldKind.UNMEASURED)
                                .map(water -> UnmeasuredView.of(brimful(water, units)))),
                sentences,
                wanting(form, read, first));
    }

    private static String wanting(MouldForm form, MouldReading.Read read, Optional<Problem> first) {
        if (form.kind() == MouldKind.UNMEASURED) {
            return read.water().isPresent() ? "" : "A mould of any shape is known by the water that fills it.";
        }
        if (form.size().isBlank()) {
            return "Measure it inside, and it is drawn here.";
        }
        return first.map(Sentences::whole).orElse("");
    }

    private static Optional<Picture> picture(Optional<Shape> shape, Optional<CutPlan> plan, LengthUnit unit) {
        return shape.map(s -> MouldPicture.of(s, plan.filter(p -> p.of(s) instanceof Outcome.Ok<CutPlan.Cut>), unit));
    }

    /** The unit it was typed in, so that a picture says what the maker measured. */
    private static LengthUnit unit(Optional<Inside> inside, Units units) {
        return inside.flatMap(MouldForm::length).map(Length::unit).orElse(WorkshopUnits.lengths(units));
    }

    private static void holds(List<String> sentences, Shape shape, Optional<CutPlan> plan, Units units) {
        sentences.add("Holds " + InUnits.volume(shape.millilitres(), units) + " to the brim.");
        plan.map(p -> p.of(shape))
                .flatMap(cut -> cut instanceof Outcome.Ok<CutPlan.Cut> ok ? Optional.of(ok.value()) : Optional.empty())
                .ifPresent(cut -> sentences.add(
                        "A bar is " + InUnits.volume(cut.barShare() * shape.millilitres(), units) + " of batter."));
    }

    private static String water(WrittenMass water, Units units) {
        return "Filled by " + InUnits.mass(water, units) + " of water, which is " + millilitres(water) + ".";
    }

    /** What the water that fills a mould says of it, in the measure its maker knows it by. */
    private static String brimful(WrittenMass water, Units units) {
        return units == Units.GRAMS ? millilitres(water) : InUnits.mass(water, units) + " of water";
    }

    private static String millilitres(WrittenMass water) {
        return InUnits.volume(water.grams() / BatterVolume.WATER_DENSITY, Units.GRAMS);
    }

    private static String usual(WrittenMass mass, String usualOf, Units units) {
        return "Usually takes " + InUnits.mass(mass, units) + ", measured with " + usualOf + ".";
    }
}
