package lyewright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleBinaryOperator;

/**
 * Reckons formulas that are written in the notation of docs/guide/why.md, knowing nothing but that notation: numbers, names,
 * + − × ÷, brackets and six functions. What is drawn ({@code below}, {@code chance}) it does not know. The engine's tests have
 * one too: tests of one module cannot use those of another.
 */
final class PocketCalculator {

    /** A formula that was read, to be reckoned with one set of values after another. */
    interface Formula {
        double of(Map<String, Double> names);
    }

    private final String text;
    private int at;

    private PocketCalculator(String text) {
        this.text = text;
    }

    static double value(String formula, Map<String, Double> names) {
        return read(formula).of(names);
    }

    static Formula read(String formula) {
        PocketCalculator calculator = new PocketCalculator(formula);
        Formula read = calculator.sum();
        if (calculator.at < formula.length()) {
            throw new IllegalArgumentException("cannot read on at " + calculator.at + ": " + formula);
        }
        return read;
    }

    private Formula sum() {
        Formula value = product();
        while (true) {
            if (sign('+')) {
                value = joined(value, product(), Double::sum);
            } else if (sign('−')) {
                value = joined(value, product(), (a, b) -> a - b);
            } else {
                return value;
            }
        }
    }

    private Formula product() {
        Formula value = part();
        while (true) {
            if (sign('×')) {
                value = joined(value, part(), (a, b) -> a * b);
            } else if (sign('÷')) {
                value = joined(value, part(), (a, b) -> a / b);
            } else {
                return value;
            }
        }
    }

    private static Formula joined(Formula left, Formula right, DoubleBinaryOperator sign) {
        return names -> sign.applyAsDouble(left.of(names), right.of(names));
    }

    private Formula part() {
        if (sign('(')) {
            Formula inside = sum();
            expect(')');
            return inside;
        }
        int from = at;
        while (at < text.length() && "+−×÷(),".indexOf(text.charAt(at)) < 0) {
            at++;
        }
        String word = text.substring(from, at).strip();
        if (sign('(')) {
            return function(word);
        }
        if (Character.isDigit(word.charAt(0))) {
            double number = Double.parseDouble(word);
            return names -> number;
        }
        return names -> named(word, names);
    }

    private double named(String word, Map<String, Double> names) {
        Double value = names.get(word);
        if (value == null) {
            throw new IllegalArgumentException("nothing is called '" + word + "': " + text);
        }
        return value;
    }

    private Formula function(String word) {
        List<Formula> of = new ArrayList<>();
        do {
            of.add(sum());
        } while (sign(','));
        expect(')');
        return names -> function(word, of.stream().mapToDouble(f -> f.of(names)).toArray());
    }

    private double function(String word, double[] x) {
        return switch (word) {
            case "max" -> java.util.Arrays.stream(x).max().orElseThrow();
            case "min" -> java.util.Arrays.stream(x).min().orElseThrow();
            case "nearest" -> thousandth(Math.floor(x[0] / x[1] + 0.5) * x[1]);
            case "down" -> down(x[0], x[1]);
            case "whole" -> Math.floor(x[0] + 1e-9);
            case "between" -> x[2] + (x[4] - x[2]) / (x[3] - x[1]) * (x[0] - x[1]);
            default -> throw new IllegalArgumentException("no function is called '" + word + "': " + text);
        };
    }

    /** The most whole steps, each to the nearest thousandth, that are not over x; a billionth of a step is forgiven. */
    private static double down(double x, double step) {
        double steps = Math.floor(x / step + 1e-9);
        boolean whole = x - steps * step < 1e-9 * step;
        while (!whole && thousandth(steps * step) > x + 1e-9 * step) {
            steps--;
        }
        return thousandth(steps * step);
    }

    private static double thousandth(double x) {
        return Math.floor(x * 1000 + 0.5) / 1000;
    }

    private boolean sign(char sign) {
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
        if (at < text.length() && text.charAt(at) == sign) {
            at++;
            return true;
        }
        return false;
    }

    private void expect(char sign) {
        if (!sign(sign)) {
            throw new IllegalArgumentException("'" + sign + "' is missing at " + at + ": " + text);
        }
    }
}
