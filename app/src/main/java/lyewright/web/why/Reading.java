package lyewright.web.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lyewright.picture.Picture;
import lyewright.why.Reason;
import lyewright.why.Spread;

/** Turns a reason into what its page shows. */
final class Reading {

    private final Reason reason;
    private final UnaryOperator<String> address;
    private final WhyUnits units;
    private final WhyDigits digits;

    Reading(Reason reason, UnaryOperator<String> address, WhyUnits units) {
        this.reason = reason;
        this.address = address;
        this.units = units;
        this.digits = new WhyDigits(reason);
    }

    ReasonShown shown(Optional<Picture> drawn, Optional<ReasonShown.Posted> posted) {
        List<ReasonShown.Step> steps = new ArrayList<>();
        for (int i = 0; i < reason.steps().size(); i++) {
            Reason.Step step = reason.steps().get(i);
            steps.add(i == 0 ? answer(step) : step(step));
        }
        return new ReasonShown(
                reason.title(),
                reason.value().map(this::value),
                reason.path(),
                reason.sentence(),
                steps,
                reason.checks().stream()
                        .map(check -> new ReasonShown.Check(check.meaning(), step(check.left()), step(check.right())))
                        .toList(),
                reason.inputs().stream().map(this::input).toList(),
                reason.sources(),
                reason.notes(),
                drawn,
                exact(),
                posted);
    }

    private String value(double value) {
        return units.said(reason.path(), value, digits.figure(value, reason.unit()), reason.unit());
    }

    private ReasonShown.Step answer(Reason.Step step) {
        return new ReasonShown.Step("", step.formula(), value(step.value()), step.meaning());
    }

    private ReasonShown.Step step(Reason.Step step) {
        return new ReasonShown.Step(
                step.name(), step.formula(), WhyUnits.with(digits.step(step.value()), step.unit()), step.meaning());
    }

    private ReasonShown.Input input(Reason.Input input) {
        List<Integer> numbers = new ArrayList<>();
        number(numbers, input.source());
        input.spread().ifPresent(spread -> number(numbers, spread.source()));
        return new ReasonShown.Input(
                input.name(),
                units.said(input.figure().orElse(""), input.value(), digits.input(input), input.unit()),
                input.meaning(),
                input.spread().map(spread -> between(spread, input.unit())).orElse(""),
                input.figure().map(address),
                numbers);
    }

    private void number(List<Integer> numbers, String source) {
        int number = reason.sources().indexOf(source) + 1;
        if (number > 0 && !numbers.contains(number)) {
            numbers.add(number);
        }
    }

    private static String between(Spread spread, String unit) {
        String ends = end(spread.low(), spread) + " to " + WhyUnits.with(end(spread.high(), spread), unit);
        return switch (spread.kind()) {
            case RECTANGULAR -> ends + ", anywhere between";
            case NORMAL -> ends + ", in 19 cases of 20";
            case TRAPEZOIDAL ->
                ends + "; evenly " + end(spread.evenLow(), spread) + " to " + end(spread.evenHigh(), spread)
                        + ", rarer outside";
        };
    }

    private static String end(double value, Spread spread) {
        return WhyDigits.within(value, spread);
    }

    /** All of it, as the formula can be reckoned with. */
    private List<ReasonShown.Exact> exact() {
        List<ReasonShown.Exact> exact = new ArrayList<>();
        for (int i = 0; i < reason.steps().size(); i++) {
            Reason.Step step = reason.steps().get(i);
            exact.add(new ReasonShown.Exact(i == 0 ? "" : step.name(), WhyUnits.with(step.text(), step.unit())));
        }
        for (Reason.Check check : reason.checks()) {
            for (Reason.Step side : List.of(check.left(), check.right())) {
                exact.add(new ReasonShown.Exact(side.name(), WhyUnits.with(side.text(), side.unit())));
            }
        }
        for (Reason.Input input : reason.inputs()) {
            exact.add(new ReasonShown.Exact(input.name(), WhyUnits.with(input.text(), input.unit())));
        }
        return exact;
    }
}
