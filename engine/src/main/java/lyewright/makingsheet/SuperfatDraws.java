package lyewright.makingsheet;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import lyewright.makingsheet.SuperfatBand.Contribution;
import lyewright.makingsheet.SuperfatBand.Gain;
import lyewright.makingsheet.SuperfatModel.About;
import lyewright.makingsheet.SuperfatModel.OilInput;
import lyewright.uncertainty.Distribution;
import lyewright.uncertainty.Drawn;
import lyewright.uncertainty.Input;
import lyewright.uncertainty.Interval;
import lyewright.uncertainty.LinearPropagation;
import lyewright.uncertainty.MonteCarlo;

/**
 * What drawing a superfat comes to. Where there is wax it is drawn twice: a chance or a lower end that counted on wax to
 * take alkali would call a caustic bar safe, so these are of wax that reacts only where it surely does, and the higher end is
 * of wax that may react wholly.
 */
final class SuperfatDraws {

    private final SuperfatModel model;
    private final LinearPropagation linear;
    private final Ends ends;
    private final Optional<String> publishedRange;
    private final Map<String, Gain> gains = new ConcurrentHashMap<>();

    SuperfatDraws(SuperfatModel model) {
        this.model = model;
        this.linear = LinearPropagation.of(model.inputs(), model);
        this.ends = ends(model.inputs());
        this.publishedRange = ends.chance() < SuperfatBand.THIN ? Optional.empty() : rangeBehindIt();
    }

    /** Both ends of a band, and the chance that alkali is left over. */
    private record Ends(Interval interval, double chance, long draws) {}

    private Ends ends(List<Input> inputs) {
        Drawn all = draw(inputs);
        Drawn careful = model.hasWax() ? draw(model.withoutWaxReacting(inputs)) : all;
        Interval interval =
                new Interval(careful.interval(0.95).low(), all.interval(0.95).high());
        return new Ends(interval, careful.chanceBelowZero(), all.draws());
    }

    /** Drawn anew, which comes to the same: few ask for it, and the counts are large. */
    SuperfatShape shape() {
        List<Input> inputs = model.inputs();
        return SuperfatShape.of(draw(model.hasWax() ? model.withoutWaxReacting(inputs) : inputs));
    }

    private Drawn draw(List<Input> inputs) {
        return MonteCarlo.drawUntil(
                inputs, model, SuperfatBand.TOLERANCE, SuperfatBand.OF_SPREAD, SuperfatBand.MOST_DRAWS);
    }

    /**
     * The oil whose published range is most of the oils' doubt; none unless it would be safe if all oils with such ranges had
     * certificates that say what the sheet computes with.
     */
    private Optional<String> rangeBehindIt() {
        List<OilInput> doubtful =
                model.oils().stream().filter(OilInput::wantsCertificate).toList();
        return !doubtful.isEmpty() && ends(model.certified(doubtful)).chance() < SuperfatBand.THIN
                ? widest().map(o -> o.oil().name())
                : Optional.empty();
    }

    private Optional<OilInput> widest() {
        return model.oils().stream().filter(OilInput::wantsCertificate).max(Comparator.comparingDouble(this::doubt));
    }

    Interval interval() {
        return ends.interval();
    }

    double chance() {
        return ends.chance();
    }

    long draws() {
        return ends.draws();
    }

    double worst() {
        return model.worstCorner(Distribution.NORMAL_95);
    }

    Optional<String> publishedRange() {
        return publishedRange;
    }

    List<String> takenAsExact() {
        return model.takenAsExact();
    }

    /** What most of the doubt is about that may leave alkali over, which a wax does not; weighing where there is none. */
    About leading() {
        Map<About, Double> shares = new EnumMap<>(About.class);
        for (int i = 0; i < model.about().size(); i++) {
            shares.merge(model.about().get(i), linear.contributions().get(i).percentOfVariance(), Double::sum);
        }
        return shares.entrySet().stream()
                .filter(e -> e.getKey() != About.WAX && e.getValue() > 0)
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(About.WEIGHING);
    }

    List<Contribution> shares() {
        return linear.contributions().stream()
                .filter(c -> c.percentOfVariance() > 0)
                .map(c -> new Contribution(c.input().name(), c.percentOfVariance()))
                .sorted(Comparator.comparingDouble(Contribution::percentOfVariance)
                        .reversed())
                .toList();
    }

    Optional<Gain> certificateGain() {
        return widest().map(this::gain);
    }

    /** Of one oil; empty where a certificate of it could not narrow anything. */
    Optional<Gain> certificateGain(String key) {
        return model.oils().stream()
                .filter(oil -> oil.oil().key().equals(key) && oil.wantsCertificate())
                .findFirst()
                .map(this::gain);
    }

    /** Of the oils with much of the doubt, the most first. */
    List<Gain> certificateGains(int most) {
        return model.oils().stream()
                .filter(oil -> oil.wantsCertificate() && doubt(oil) >= SuperfatBand.MUCH_OF_DOUBT)
                .sorted(Comparator.comparingDouble(this::doubt).reversed())
                .limit(most)
                .map(this::gain)
                .toList();
    }

    private double doubt(OilInput oil) {
        return linear.contributions().get(oil.place()).percentOfVariance();
    }

    /** Drawn once for each oil, for it takes as long as the band itself. */
    private Gain gain(OilInput oil) {
        return gains.computeIfAbsent(oil.oil().key(), key -> {
            Interval with = ends(model.certified(List.of(oil))).interval();
            return new Gain(key, oil.oil().name(), with.low(), with.high());
        });
    }
}
