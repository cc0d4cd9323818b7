package lyewright.stock;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lyewright.formula.OwnMaterial;
import lyewright.formula.WrittenFigure;
import lyewright.material.Figure;

/**
 * What lots that go in together come to. Saponification, acid and iodine value, water, purity are all so much per mass, so that a mass
 * balance mixes them: the mean by mass. What is unsure of one lot says nothing of another: their standard uncertainties, each by its
 * share, add in squares (JCGM 100:2008, 5.1.2).
 *
 * @param material the figures that every lot has, mixed
 * @param missing figures that some of the lots have and others lack, which therefore are left to the tables
 */
public record MixedFigures(OwnMaterial material, List<String> missing) {

    /** A normal spread's 95 % interval is so many standard uncertainties to each side. */
    private static final double NORMAL_95 = 1.959963984540054;

    /** Digits of a mixed value: more than any certificate has. */
    private static final int DIGITS = 8;

    /** Digits of how unsure it is, rounded up: JCGM 100:2008, 7.2.6 asks for at most two. */
    private static final int DIGITS_UNSURE = 2;

    /** Copies its list. */
    public MixedFigures {
        missing = List.copyOf(missing);
    }

    /**
     * So much of a lot.
     *
     * @param figures what its certificate says
     * @param amount how much of it goes in, above 0
     */
    public record Part(OwnMaterial figures, long amount) {}

    /**
     * A figure and its weight in a mixture.
     *
     * @param figure the figure
     * @param weight how much of it, above 0, in any unit that all of them have
     */
    public record Weighted(Figure figure, double weight) {}

    /**
     * Lots of one material, mixed.
     *
     * @param parts at least one, all of one material
     * @param source what the mixed figures are of, such as the lots' codes
     * @return the one lot's own figures, or the mean by mass of what all of them have
     */
    public static MixedFigures of(List<Part> parts, String source) {
        OwnMaterial first = parts.get(0).figures();
        if (parts.stream().allMatch(part -> part.figures().equals(first))) {
            return new MixedFigures(first, List.of());
        }
        if (parts.stream().allMatch(part -> part.figures().kind().equals(OwnMaterial.OILS))) {
            return new MixedFigures(premix(parts, source), List.of());
        }
        List<String> missing = new ArrayList<>();
        Mixer mixer = new Mixer(parts, missing);
        OwnMaterial mixed = new OwnMaterial(
                first.key(),
                first.kind(),
                mixer.mean("saponification value", OwnMaterial::saponificationValue),
                mixer.mean("acid value", OwnMaterial::acidValue),
                mixer.mean("iodine value", OwnMaterial::iodineValue),
                mixer.same("density", OwnMaterial::density),
                mixer.mean("water", OwnMaterial::water),
                mixer.mean("fat", OwnMaterial::fat),
                mixer.same("fat saponification value", OwnMaterial::fatSaponificationValue),
                mixer.mean("sugar", OwnMaterial::sugar),
                mixer.mean("salt", OwnMaterial::salt),
                mixer.same("acid", OwnMaterial::acid),
                mixer.strength(),
                first.oils(),
                first.inci(),
                first.cas(),
                mixer.same("supplier", own -> Optional.of(own.supplier())).orElse(""),
                source);
        return new MixedFigures(mixed, missing);
    }

    /** Premixes are mixed oil by oil. */
    private static OwnMaterial premix(List<Part> parts, String source) {
        List<MadeHere.Oil> oils = new ArrayList<>();
        for (Part part : parts) {
            part.figures()
                    .oils()
                    .forEach(oil -> oils.add(new MadeHere.Oil(
                            oil.key(),
                            Math.max(1, Math.round(part.amount() * oil.share().fraction())),
                            oil.saponificationValue().map(figure -> figure.figure("")))));
        }
        return MadeHere.premix(parts.get(0).figures().key(), oils, source);
    }

    /**
     * The mean by mass of figures that have nothing to do with each other.
     *
     * @param parts at least one
     * @param source of the mixed figure
     * @return exact where all are, else normal
     */
    public static Figure mean(List<Weighted> parts, String source) {
        double whole = parts.stream().mapToDouble(Weighted::weight).sum();
        double mean = 0;
        double squares = 0;
        for (Weighted part : parts) {
            double share = part.weight() / whole;
            mean += share * part.figure().middle();
            squares += Math.pow(share * standardUncertainty(part.figure()), 2);
        }
        double half = NORMAL_95 * Math.sqrt(squares);
        return half == 0
                ? Figure.exact(mean, source)
                : new Figure(mean - half, mean + half, Figure.Spread.NORMAL, source);
    }

    private static double standardUncertainty(Figure figure) {
        double half = (figure.high() - figure.low()) / 2;
        return switch (figure.spread()) {
            case EXACT -> 0;
            case RECTANGULAR -> half / Math.sqrt(3);
            case NORMAL -> half / NORMAL_95;
        };
    }

    static WrittenFigure written(Figure figure) {
        BigDecimal middle = rounded(figure.middle());
        if (figure.spread() == Figure.Spread.EXACT) {
            return new WrittenFigure(middle, WrittenFigure.Form.EXACT, middle);
        }
        BigDecimal half = new BigDecimal((figure.high() - figure.low()) / 2)
                // what only reckoning in binary adds is not rounded up
                .round(new MathContext(2 * DIGITS_UNSURE + DIGITS, RoundingMode.HALF_EVEN))
                .round(new MathContext(DIGITS_UNSURE, RoundingMode.UP));
        return new WrittenFigure(middle, WrittenFigure.Form.PLUS_MINUS, plain(half));
    }

    private static BigDecimal rounded(double value) {
        return plain(new BigDecimal(value).round(new MathContext(DIGITS, RoundingMode.HALF_EVEN)));
    }

    private static BigDecimal plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    /** Mixes one figure after another and notes which were not to be had. */
    private record Mixer(List<Part> parts, List<String> missing) {

        Optional<WrittenFigure> mean(String name, Function<OwnMaterial, Optional<WrittenFigure>> figure) {
            List<Weighted> weighted = new ArrayList<>();
            for (Part part : parts) {
                figure.apply(part.figures())
                        .ifPresent(said -> weighted.add(new Weighted(said.figure(""), part.amount())));
            }
            if (weighted.size() == parts.size()) {
                return Optional.of(written(MixedFigures.mean(weighted, "")));
            }
            if (!weighted.isEmpty()) {
                missing.add(name);
            }
            return Optional.empty();
        }

        /** What is not a mean by mass stays only where all say the same. */
        <T> Optional<T> same(String name, Function<OwnMaterial, Optional<T>> figure) {
            Optional<T> first = figure.apply(parts.get(0).figures());
            if (parts.stream().allMatch(part -> figure.apply(part.figures()).equals(first))) {
                return first;
            }
            missing.add(name);
            return Optional.empty();
        }

        Optional<OwnMaterial.Strength> strength() {
            return mean("strength", own -> own.strength().map(OwnMaterial.Strength::pure))
                    .flatMap(pure -> parts.get(0)
                            .figures()
                            .strength()
                            .map(strength -> new OwnMaterial.Strength(pure, strength.alkali())));
        }
    }
}
