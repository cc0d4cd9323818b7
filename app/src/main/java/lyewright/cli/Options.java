package lyewright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import picocli.CommandLine.ParseResult;

/** Reads options' values and gathers what is wrong with any of them, so that all is said at once. */
final class Options {

    private final ParseResult typed;
    private final List<Problem> problems = new ArrayList<>();

    Options(ParseResult typed) {
        this.typed = typed;
    }

    /**
     * Whether an option was typed.
     *
     * @param option its name
     * @return true if it was
     */
    boolean has(String option) {
        return typed.hasMatchedOption(option);
    }

    /**
     * Reads an option's value.
     *
     * @param <T> what it is
     * @param option the option's name
     * @param parser reads its text
     * @return the value; empty if the option was not typed, or was typed wrongly, which is noted
     */
    <T> Optional<T> read(String option, Function<String, Outcome<T>> parser) {
        if (!has(option)) {
            return Optional.empty();
        }
        return keep(option, parser.apply(text(option)));
    }

    /**
     * What was typed for an option.
     *
     * @param option its name
     * @return its value as text; empty for one that takes none
     */
    String text(String option) {
        return typed.matchedOption(option).stringValues().stream().findFirst().orElse("");
    }

    /**
     * Keeps an outcome's value, or notes its problems as those of an option.
     *
     * @param <T> what it is
     * @param option the option's name
     * @param outcome what came of it
     * @return the value, if there is one
     */
    <T> Optional<T> keep(String option, Outcome<T> outcome) {
        if (outcome instanceof Outcome.Ok<T> ok) {
            return Optional.of(ok.value());
        }
        for (Problem problem : outcome.problems()) {
            problems.add(new Problem(option, problem.what(), problem.remedy()));
        }
        return Optional.empty();
    }

    /**
     * Notes problems whose places are known.
     *
     * @param <T> what there would have been
     * @param outcome what came of it
     * @return the value, if there is one
     */
    <T> Optional<T> keep(Outcome<T> outcome) {
        problems.addAll(outcome.problems());
        return outcome instanceof Outcome.Ok<T> ok ? Optional.of(ok.value()) : Optional.empty();
    }

    /**
     * Notes a problem of an option.
     *
     * @param option the option's name
     * @param what what is wrong
     * @param remedy what to do
     */
    void refuse(String option, String what, String remedy) {
        problems.add(new Problem(option, what, remedy));
    }

    /**
     * What is wrong so far.
     *
     * @return all problems noted, in order
     */
    List<Problem> problems() {
        return problems;
    }
}
