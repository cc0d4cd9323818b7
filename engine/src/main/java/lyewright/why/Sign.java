package lyewright.why;

/** The four signs of a formula. */
enum Sign {
    PLUS("+", true),
    MINUS("−", true),
    TIMES("×", false),
    OVER("÷", false);

    private final String symbol;
    private final boolean sum;

    Sign(String symbol, boolean sum) {
        this.symbol = symbol;
        this.sum = sum;
    }

    String symbol() {
        return symbol;
    }

    /** Whether it adds or takes away, which is done after the other two. */
    boolean isSum() {
        return sum;
    }

    double of(double left, double right) {
        return switch (this) {
            case PLUS -> left + right;
            case MINUS -> left - right;
            case TIMES -> left * right;
            case OVER -> left / right;
        };
    }
}
