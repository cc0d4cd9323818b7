package lyewright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Reckons formulas as docs/guide/why.md tells their notation, knowing nothing else. (The engine's tests have one too: tests of one
 * module cannot use those of another.)
 *
 * <p>Numbers, names,
 * + − × ÷, brackets and six functions.
 */
final class PocketCalculator {

    private final String text;
    private final Map<String, Double> names;
    private int at;

    private PocketCalculator(String text, Map<String, Double> names) {
        this.text = text;
        this.names = names;
    }

    static double value(String formula, Map<String, Double> names) {
        PocketCalculator calculator = new PocketCalculator(formula, names);
        double value = calculator.sum();
        if (calculator.at < formula.length()) {
            throw new IllegalArgumentException("cannot read on at " + calculator.at + ": " + formula);
        }
        return value;
    }

    private double sum() {
        double value = product();
        while (true) {
            if (sign('+')) {
                value += product();
            } else if (sign('−')) {
                value -= product();
            } else {
                return value;
            }
        }
    }

    private double product() {
        double value = part();
        while (true) {
            if (sign('×')) {
                value *= part();
            } else if (sign('÷')) {
                value /= part();
            } else {
                return value;
            }
        }
    }

    private double part() {
        if (sign('(')) {
            double inside = sum();
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
        return Character.isDigit(word.charAt(0)) ? Double.parseDouble(word) : named(word);
    }

    private double named(String word) {
        Double value = names.get(word);
        if (value == null) {
            throw new IllegalArgumentException("nothing is called '" + word + "': " + text);
        }
        return value;
    }

    private double function(String word) {
        List<Double> x = new ArrayList<>();
        do {
            x.add(sum());
        } while (sign(','));
        expect(')');
        return switch (word) {
            case "max" -> Math.max(x.get(0), x.get(1));
            case "min" -> Math.min(x.get(0), x.get(1));
            case "nearest" -> thousandth(Math.floor(x.get(0) / x.get(1) + 0.5) * x.get(1));
            case "down" -> down(x.get(0), x.get(1));
            case "whole" -> Math.floor(x.get(0) + 1e-9);
            case "between" -> x.get(2) + (x.get(4) - x.get(2)) / (x.get(3) - x.get(1)) * (x.get(0) - x.get(1));
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
