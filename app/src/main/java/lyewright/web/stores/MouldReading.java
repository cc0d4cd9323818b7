package lyewright.web.stores;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.chemistry.BatterVolume;
import lyewright.fill.CutPlan;
import lyewright.fill.Shape;
import lyewright.measure.Decimal;
import lyewright.measure.Length;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.measure.Said;
import lyewright.measure.Volume;
import lyewright.measure.VolumeUnit;
import lyewright.measure.WrittenMass;
import lyewright.records.equipment.KeptMould;
import lyewright.records.equipment.MouldMeasures;
import lyewright.records.equipment.MouldMeasures.Cut;
import lyewright.records.equipment.MouldMeasures.Inside;
import lyewright.records.equipment.MouldMeasures.UsualMass;

/** Reads a mould's form by the engine's rules; problems name the form's fields. */
final class MouldReading {

    /** Which field asks for what the register's rules name. */
    private static final Map<String, String> FIELDS = Map.of(
            "length", "size",
            "width", "size",
            "height", "size",
            "diameter", "size",
            "count", "size",
            "each", "size",
            "inside", "size",
            "thickness", "bar",
            "across", "bar",
            "waterFill", "water");

    private final MouldForm form;
    private final List<Problem> problems = new ArrayList<>();

    private MouldReading(MouldForm form) {
        this.form = form;
    }

    /**
     * What reading gave.
     *
     * @param inside as typed, where it reads
     * @param shape the same to compute with
     * @param plan the cut, where it reads
     * @param water the water that fills it, where it reads
     * @param measures all of it, where all reads
     * @param problems what does not, by field
     */
    record Read(
            Optional<Inside> inside,
            Optional<Shape> shape,
            Optional<CutPlan> plan,
            Optional<WrittenMass> water,
            Optional<MouldMeasures> measures,
            List<Problem> problems) {}

    static Read read(MouldForm form, RecipesByName recipes) {
        return new MouldReading(form).read(recipes);
    }

    /** The register's refusals at the form's fields. */
    static List<Problem> atFields(List<Problem> refusals) {
        return refusals.stream()
                .map(p -> new Problem(FIELDS.getOrDefault(p.path(), p.path()), p.what(), p.remedy()))
                .toList();
    }

    private Read read(RecipesByName recipes) {
        Optional<Inside> inside = inside();
        Optional<Shape> shape = inside.flatMap(this::shape);
        Optional<Cut> cut = cut();
        Optional<WrittenMass> water = mass("water", form.water());
        Optional<UsualMass> usual = usual(recipes);
        Optional<CutPlan> plan = cut.map(MouldReading::plan);
        if (shape.isPresent() && plan.isPresent()) {
            note("bar", plan.get().of(shape.get()));
        }
        if (form.kind() == MouldKind.UNMEASURED && !form.hasFills()) {
            problems.add(new Problem(
                    "water",
                    "nothing says how much the mould holds",
                    "fill it with water and weigh that, or write what it usually takes"));
        }
        Optional<MouldMeasures> measures =
                problems.isEmpty() ? Optional.of(new MouldMeasures(inside, water, usual, cut)) : Optional.empty();
        return new Read(inside, shape, plan, water, measures, List.copyOf(problems));
    }

    private Optional<Inside> inside() {
        if (form.kind() == MouldKind.UNMEASURED) {
            return Optional.empty();
        }
        if (form.size().isBlank()) {
            problems.add(new Problem("size", "the mould has no measures", "measure it inside and write them"));
            return Optional.empty();
        }
        String said = Said.measure(form.size());
        return switch (form.kind()) {
            case LOAF ->
                note("size", sides(said, 3, "300 x 80 x 65 mm"))
                        .map(s -> new MouldMeasures.Loaf(s.get(0), s.get(1), s.get(2)));
            case SLAB ->
                note("size", sides(said, 3, "360 x 240 x 30 mm"))
                        .map(s -> new MouldMeasures.Slab(s.get(0), s.get(1), s.get(2)));
            case TUBE ->
                note("size", sides(said, 2, "300 x 76 mm")).map(s -> new MouldMeasures.Tube(s.get(0), s.get(1)));
            case CAVITIES -> note("size", cavities(Said.counted(form.size())));
            case UNMEASURED -> Optional.empty();
        };
    }

    /** The sides in the units they were typed in; the engine says whether they are sides. */
    private static Outcome<List<Length>> sides(String said, int howMany, String example) {
        return Shape.sides(said, howMany, example).then(checked -> {
            String[] parts = said.split("\\s*[x×]\\s*", -1);
            String unit = Decimal.leading(parts[parts.length - 1]).orThrow().rest();
            List<Length> sides = new ArrayList<>();
            for (String part : parts) {
                boolean bare = Character.isDigit(part.charAt(part.length() - 1));
                sides.add(Length.parse(bare ? part + unit : part).orThrow());
            }
            return Outcome.ok(sides);
        });
    }

    private static Outcome<Inside> cavities(String said) {
        int x = Shape.times(said);
        if (x > 0 && isMass(said.substring(x + 1))) {
            return Shape.count(said.substring(0, x).strip())
                    .then(count -> WrittenMass.parse(said.substring(x + 1).strip())
                            .then(MouldReading::asWater)
                            .then(each -> Outcome.ok(new MouldMeasures.Cavities(count, each))));
        }
        return Shape.parseCavities(said)
                .then(shape -> Shape.count(said.substring(0, x).strip())
                        .then(count -> Volume.parse(said.substring(x + 1).strip())
                                .then(each -> Outcome.ok(new MouldMeasures.Cavities(count, each)))));
    }

    private static boolean isMass(String text) {
        return WrittenMass.parse(text.strip()) instanceof Outcome.Ok<WrittenMass>;
    }

    /** What a cavity holds is told by the water that fills it as well as by its volume. */
    private static Outcome<Volume> asWater(WrittenMass water) {
        if (!(water.grams() > 0)) {
            return Outcome.refused("a cavity of " + water + " holds nothing", "write what one cavity holds");
        }
        BigDecimal millilitres = new BigDecimal(water.grams() / BatterVolume.WATER_DENSITY).round(new MathContext(4));
        return Outcome.ok(new Volume(new BigDecimal(millilitres.toPlainString()), VolumeUnit.MILLILITRE));
    }

    private Optional<Shape> shape(Inside inside) {
        MouldMeasures alone =
                new MouldMeasures(Optional.of(inside), Optional.empty(), Optional.empty(), Optional.empty());
        return new KeptMould("", form.name(), alone, Optional.empty()).shape();
    }

    private Optional<Cut> cut() {
        if (!form.kind().isCut() || (form.bar().isBlank() && !form.hasLosses())) {
            return Optional.empty();
        }
        Optional<Length> blade = length("blade", form.blade());
        Optional<Length> ends = length("ends", form.ends());
        Optional<Length> trim = form.kind().hasTop() ? length("trim", form.trim()) : Optional.empty();
        if (form.bar().isBlank()) {
            problems.add(new Problem("bar", "there is no bar to cut", "write how thick a bar is, as in 25 mm"));
            return Optional.empty();
        }
        String said = Said.measure(form.bar());
        if (Shape.times(said) < 0) {
            return note("bar", Length.parse(said).then(MouldReading::notNothing))
                    .map(thickness -> new Cut(thickness, Optional.empty(), blade, ends, trim));
        }
        if (form.kind() != MouldKind.SLAB) {
            problems.add(new Problem(
                    "bar", "'" + form.bar().strip() + "' is cut both ways", "write how thick a slice is, as in 25 mm"));
            return Optional.empty();
        }
        return note("bar", sides(said, 2, "60 x 80 mm"))
                .map(s -> new Cut(s.get(0), Optional.of(s.get(1)), blade, ends, trim));
    }

    private static Outcome<Length> notNothing(Length length) {
        return length.value().signum() > 0
                ? Outcome.ok(length)
                : Outcome.refused("a bar of " + length + " has no thickness", "write it as 25 mm");
    }

    static CutPlan plan(Cut cut) {
        return new CutPlan(
                cut.thickness().millimetres(),
                cut.across().map(Length::millimetres),
                cut.blade().map(Length::millimetres).orElse(0.0),
                cut.ends().map(Length::millimetres).orElse(0.0),
                cut.trim().map(Length::millimetres).orElse(0.0));
    }

    private Optional<Length> length(String field, String typed) {
        return typed.isBlank() ? Optional.empty() : note(field, Length.parse(Said.measure(typed)));
    }

    private Optional<WrittenMass> mass(String field, String typed) {
        return typed.isBlank() ? Optional.empty() : note(field, WrittenMass.parse(Said.measure(typed)));
    }

    private Optional<UsualMass> usual(RecipesByName recipes) {
        if (form.usual().isBlank() && form.usualOf().isBlank()) {
            return Optional.empty();
        }
        if (form.usual().isBlank()) {
            problems.add(new Problem(
                    "usual", "a recipe without its mass says nothing", "write what the mould took, or leave both out"));
        }
        if (form.usualOf().isBlank()) {
            problems.add(new Problem(
                    "usualOf",
                    "a mass without its recipe says nothing: batters differ in weight",
                    "write which recipe was in the mould"));
        }
        Optional<WrittenMass> mass = mass("usual", form.usual());
        Optional<RecipesByName.Version> version =
                form.usualOf().isBlank() ? Optional.empty() : note("usualOf", recipes.named(form.usualOf()));
        return mass.isPresent() && version.isPresent()
                ? Optional.of(new UsualMass(
                        mass.get(), version.get().recipeId(), version.get().number()))
                : Optional.empty();
    }

    private <T> Optional<T> note(String field, Outcome<T> outcome) {
        outcome.problems().forEach(p -> problems.add(new Problem(field, p.what(), p.remedy())));
        return outcome instanceof Outcome.Ok<T> ok ? Optional.of(ok.value()) : Optional.empty();
    }
}
