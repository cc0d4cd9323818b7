package lyewright.measure;

import java.util.List;
import java.util.function.Function;

/**
 * Either a value or the problems that prevent it. What a person gave is never answered with an exception.
 *
 * @param <T> the value's type
 */
public sealed interface Outcome<T> {

    /**
     * It worked.
     *
     * @param <T> the value's type
     * @param value the value
     */
    record Ok<T>(T value) implements Outcome<T> {}

    /**
     * It did not.
     *
     * @param <T> the type of the value there would have been
     * @param problems why, at least one
     */
    record Refused<T>(List<Problem> problems) implements Outcome<T> {
        /** Copies its list and insists on a reason. */
        public Refused {
            problems = List.copyOf(problems);
            if (problems.isEmpty()) {
                throw new IllegalArgumentException("a refusal needs a problem");
            }
        }
    }

    /**
     * A value.
     *
     * @param <T> its type
     * @param value the value
     * @return the value as an outcome
     */
    static <T> Outcome<T> ok(T value) {
        return new Ok<>(value);
    }

    /**
     * A refusal of something whose place is known to the caller only.
     *
     * @param <T> the type of the value there would have been
     * @param what what is wrong
     * @param remedy what to do
     * @return the refusal, at the empty path
     */
    static <T> Outcome<T> refused(String what, String remedy) {
        return new Refused<>(List.of(new Problem("", what, remedy)));
    }

    /**
     * A refusal with its place.
     *
     * @param <T> the type of the value there would have been
     * @param problem why
     * @return the refusal
     */
    static <T> Outcome<T> refused(Problem problem) {
        return new Refused<>(List.of(problem));
    }

    /**
     * The problems, none if it worked.
     *
     * @return why it was refused
     */
    default List<Problem> problems() {
        return this instanceof Refused<T> no ? no.problems() : List.of();
    }

    /**
     * The value of an outcome that is known to have worked.
     *
     * @return the value
     * @throws IllegalStateException when it was refused, with the first reason
     */
    default T orThrow() {
        if (this instanceof Ok<T> yes) {
            return yes.value();
        }
        throw new IllegalStateException(problems().get(0).sentence());
    }

    /**
     * Goes on with the value, if there is one.
     *
     * @param <R> what comes next
     * @param next the next step
     * @return what the next step gives, or this refusal
     */
    default <R> Outcome<R> then(Function<? super T, Outcome<R>> next) {
        return this instanceof Ok<T> yes ? next.apply(yes.value()) : new Refused<>(problems());
    }
}
