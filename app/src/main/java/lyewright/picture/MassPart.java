package lyewright.picture;

/**
 * One part of a column of masses.
 *
 * @param words what it is
 * @param style how it is drawn
 * @param grams how much, above 0
 */
record MassPart(String words, MassStyle style, double grams) {}
