package lyewright.material;

/**
 * One fatty acid of an oil, as percent by mass of the oil's fatty acids.
 *
 * @param acid which acid
 * @param share least and most percent, with source
 */
public record AcidShare(FattyAcid acid, Figure share) {}
