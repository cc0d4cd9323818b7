package lyewright.records.stock;

/**
 * What was paid for a lot.
 *
 * @param minor in the smallest unit of the currency, such as pence; 0 or more
 * @param currency its ISO 4217 code
 */
public record Price(long minor, String currency) {}
