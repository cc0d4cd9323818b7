package lyewright.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Part of a formula: a number, something put in, a step of its own, two terms joined by a sign, or a function of some. */
sealed interface Term {

    /** Its value. */
    double value(Reckoning reckoning);

    /** Its text, names being what the naming says. */
    String text(Naming naming);

    /** What it is called in a formula. */
    interface Naming {
        String of(Term named);
    }

    /** A plain number that needs no explanation: 1, 100. */
    record Plain(double number) implements Term {
        @Override
        public double value(Reckoning reckoning) {
            return number;
        }

        @Override
        public String text(Naming naming) {
            return Digits.exact(number);
        }
    }

    /**
     * Something put in from outside the formula.
     *
     * @param name what it is called
     * @param amount its value
     * @param unit its unit, empty for a plain number
     * @param meaning what it is
     * @param source where it comes from; empty where that is another figure
     * @param figure path of the figure it is, if it is one of the sheet's
     * @param spread between which ends it may lie, where it is not sure
     */
    record Given(
            String name,
            double amount,
            String unit,
            String meaning,
            String source,
            Optional<String> figure,
            Optional<Spread> spread)
            implements Term {

        Given(String name, double amount, String unit, String meaning, String source) {
            this(name, amount, unit, meaning, source, Optional.empty(), Optional.empty());
        }

        /** The same, taken as exact. */
        Given sure() {
            return new Given(name, amount, unit, meaning, source, figure, Optional.empty());
        }

        Given spread(Spread between) {
            return new Given(name, amount, unit, meaning, source, figure, Optional.of(between));
        }

        @Override
        public double value(Reckoning reckoning) {
            return reckoning.of(this);
        }

        @Override
        public String text(Naming naming) {
            return naming.of(this);
        }
    }

    /**
     * A step with a name of its own. Two that say the same are one. Not a record, since it keeps its hash: a step is looked up
     * at every place where it is named, and below it there may be a whole tree.
     */
    final class Stage implements Term {

        private final String name;
        private final String unit;
        private final String meaning;
        private final Term term;
        private final int hash;

        Stage(String name, String unit, String meaning, Term term) {
            this.name = name;
            this.unit = unit;
            this.meaning = meaning;
            this.term = term;
            this.hash = Objects.hash(name, unit, meaning, term);
        }

        /** What it is called. */
        String name() {
            return name;
        }

        String unit() {
            return unit;
        }

        /** What it is. */
        String meaning() {
            return meaning;
        }

        /** How it is computed. */
        Term term() {
            return term;
        }

        @Override
        public double value(Reckoning reckoning) {
            return reckoning.of(this);
        }

        @Override
        public String text(Naming naming) {
            return naming.of(this);
        }

        @Override
        public boolean equals(Object other) {
            return this == other
                    || (other instanceof Stage that
                            && hash == that.hash
                            && name.equals(that.name)
                            && unit.equals(that.unit)
                            && meaning.equals(that.meaning)
                            && term.equals(that.term));
        }

        @Override
        public int hashCode() {
            return hash;
        }
    }

    /** Two terms joined by a sign. */
    record Joined(Sign sign, Term left, Term right) implements Term {
        @Override
        public double value(Reckoning reckoning) {
            return sign.of(left.value(reckoning), right.value(reckoning));
        }

        @Override
        public String text(Naming naming) {
            return in(left, false, naming) + " " + sign.symbol() + " " + in(right, true, naming);
        }

        /** In brackets where reading from left to right, × and ÷ first, would part it. */
        private String in(Term side, boolean right, Naming naming) {
            String text = side.text(naming);
            if (!(side instanceof Joined joined)) {
                return text;
            }
            boolean weaker = joined.sign.isSum() && !sign.isSum();
            boolean parted = right && joined.sign.isSum() == sign.isSum();
            return weaker || parted ? "(" + text + ")" : text;
        }
    }

    /** A function of some terms. */
    record Call(Function function, List<Term> of) implements Term {
        @Override
        public double value(Reckoning reckoning) {
            return function.of(of.stream().mapToDouble(t -> t.value(reckoning)).toArray());
        }

        @Override
        public String text(Naming naming) {
            return function.word()
                    + of.stream().map(t -> t.text(naming)).collect(java.util.stream.Collectors.joining(", ", "(", ")"));
        }
    }

    /**
     * What came of drawing a term many times over with what is not sure put in anew, which no formula gives.
     *
     * @param function what is made of the draws
     * @param model what is drawn
     * @param more what else the function is told
     * @param outcome what came of it
     */
    record Drawn(String function, Term model, List<Term> more, double outcome) implements Term {
        @Override
        public double value(Reckoning reckoning) {
            return outcome;
        }

        @Override
        public String text(Naming naming) {
            StringBuilder text = new StringBuilder(function + "(" + model.text(naming));
            more.forEach(term -> text.append(", ").append(term.text(naming)));
            return text.append(')').toString();
        }
    }

    /** The same with other things put in. */
    default Term put(UnaryOperator<Given> other) {
        if (this instanceof Given given) {
            return other.apply(given);
        }
        if (this instanceof Stage stage) {
            return new Stage(
                    stage.name(), stage.unit(), stage.meaning(), stage.term().put(other));
        }
        if (this instanceof Joined joined) {
            return new Joined(
                    joined.sign(), joined.left().put(other), joined.right().put(other));
        }
        return this instanceof Call call
                ? new Call(
                        call.function(),
                        call.of().stream().map(t -> t.put(other)).toList())
                : this;
    }

    default Term plus(Term other) {
        return new Joined(Sign.PLUS, this, other);
    }

    default Term minus(Term other) {
        return new Joined(Sign.MINUS, this, other);
    }

    default Term times(Term other) {
        return new Joined(Sign.TIMES, this, other);
    }

    default Term over(Term other) {
        return new Joined(Sign.OVER, this, other);
    }

    /** The same with a name of its own. */
    default Stage as(String name, String unit, String meaning) {
        return new Stage(name, unit, meaning, this);
    }

    static Term number(double number) {
        return new Plain(number);
    }

    static Term call(Function function, Term... of) {
        return new Call(function, List.of(of));
    }

    /** All added up; 0 for none. */
    static Term sum(List<Term> terms) {
        return terms.stream().reduce(Term::plus).orElse(number(0));
    }

    /** Percent of a fraction. */
    static Term percent(Term part, Term whole) {
        return number(100).times(part).over(whole);
    }

    /** The terms right inside this one. */
    default List<Term> inside() {
        if (this instanceof Joined joined) {
            List<Term> both = new ArrayList<>(joined.left().inside());
            both.addAll(joined.right().inside());
            return both;
        }
        if (this instanceof Call call) {
            return call.of().stream().flatMap(t -> t.inside().stream()).toList();
        }
        if (this instanceof Drawn drawn) {
            List<Term> all = new ArrayList<>(drawn.model().inside());
            drawn.more().forEach(term -> all.addAll(term.inside()));
            return all;
        }
        return this instanceof Plain ? List.of() : List.of(this);
    }
}
