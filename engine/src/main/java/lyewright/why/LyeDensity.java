package lyewright.why;

import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import lyewright.material.Alkali;
import lyewright.material.Tables;
import lyewright.material.Tables.LyeDensityPoint;
import lyewright.why.Term.Given;
import lyewright.why.Term.Stage;

/** The density of a lye, by straight lines between the published points around it. */
final class LyeDensity {

    /** Fall of potash lye's density with temperature, taken from 32 % soda lye, g/ml per kelvin. */
    private static final double USUAL_SLOPE = 0.00064;

    private final List<LyeDensityPoint> points;
    private final Stage percent;
    private final double celsius;

    LyeDensity(Tables tables, Stage percent, double celsius) {
        this.points = tables.lyeDensities();
        this.percent = percent;
        this.celsius = celsius;
    }

    Term of(Alkali alkali) {
        Term density = alkali == Alkali.SODIUM ? sodium() : potassium();
        return density.as(
                "density of " + Alkalis.formula(alkali) + " lye", "g/ml", "between the published points around it");
    }

    private Given temperature() {
        return new Given(
                "lye temperature",
                celsius,
                "°C",
                "temperature of the lye when it is blended",
                "the formula's process, else common practice");
    }

    private Term potassium() {
        List<LyeDensityPoint> at20 = points.stream()
                .filter(p -> p.alkali() == Alkali.POTASSIUM && p.series().equals("crc20"))
                .sorted(Comparator.comparingDouble(LyeDensityPoint::percent))
                .toList();
        int i = Points.above(at20.stream().map(LyeDensityPoint::percent).toList(), value());
        Term density = between(
                percent,
                at20.get(i - 1).percent(),
                put(at20.get(i - 1)),
                at20.get(i).percent(),
                put(at20.get(i)));
        Given slope = new Given(
                "slope",
                USUAL_SLOPE,
                "g/ml/K",
                "fall with each kelvin, taken from 32 % soda lye",
                "published table 20-100 °C of NaOH (docs/sources.md)");
        return density.minus(slope.times(temperature().minus(Term.number(20))));
    }

    private double value() {
        return percent.value(new Reckoning(Reckoning.ALL));
    }

    private Term sodium() {
        List<Double> strong = percents("hot");
        List<Double> weak = percents("molality");
        double least = strong.get(0);
        double most = weak.get(weak.size() - 1);
        if (value() >= least) {
            return inGrid("hot", strong);
        }
        if (value() <= most) {
            return inGrid("molality", weak);
        }
        return between(percent, most, along("molality", most), least, along("hot", least));
    }

    private List<Double> percents(String series) {
        return List.copyOf(
                sodium(series).stream().map(LyeDensityPoint::percent).collect(Collectors.toCollection(TreeSet::new)));
    }

    private List<LyeDensityPoint> sodium(String series) {
        return points.stream()
                .filter(p -> p.alkali() == Alkali.SODIUM && p.series().equals(series))
                .toList();
    }

    private Term inGrid(String series, List<Double> percents) {
        int i = Points.above(percents, value());
        double low = percents.get(i - 1);
        double high = percents.get(i);
        return between(percent, low, along(series, low), high, along(series, high));
    }

    /** One published strength, between the two temperatures around. */
    private Term along(String series, double strength) {
        List<LyeDensityPoint> row = sodium(series).stream()
                .filter(p -> p.percent() == strength)
                .sorted(Comparator.comparingDouble(LyeDensityPoint::celsius))
                .toList();
        int j = Points.above(row.stream().map(LyeDensityPoint::celsius).toList(), celsius);
        LyeDensityPoint cold = row.get(j - 1);
        LyeDensityPoint hot = row.get(j);
        return between(temperature(), cold.celsius(), put(cold), hot.celsius(), put(hot));
    }

    private static Term between(Term x, double x1, Term y1, double x2, Term y2) {
        return Term.call(Function.BETWEEN, x, Term.number(x1), y1, Term.number(x2), y2);
    }

    private static Given put(LyeDensityPoint point) {
        String what = Digits.figure(point.percent()) + " % " + Alkalis.formula(point.alkali()) + " at "
                + Digits.figure(point.celsius()) + " °C";
        return new Given(
                "density at " + Digits.figure(point.percent()) + " and " + Digits.figure(point.celsius()),
                point.gramsPerMillilitre(),
                "g/ml",
                what,
                point.source());
    }
}
