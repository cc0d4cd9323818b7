package lyewright.words;

import java.util.Optional;

/**
 * One thing to do once everything is weighed.
 *
 * @param number from 1
 * @param text what to do, in sentences
 * @param table what goes in, where that is a list
 */
public record MakingStep(int number, String text, Optional<StepTable> table) {}
