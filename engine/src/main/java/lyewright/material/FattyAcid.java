package lyewright.material;

/**
 * A fatty acid.
 *
 * @param code carbons and double bonds, such as {@code C18:1}; {@code -OH} or {@code n6} where that does not tell it apart
 * @param systematicName its systematic name
 * @param commonName its trivial name
 * @param formula its molecular formula
 * @param carbons carbon atoms
 * @param doubleBonds double bonds
 * @param molarMass g/mol
 * @param source how the molar mass was found
 */
public record FattyAcid(
        String code,
        String systematicName,
        String commonName,
        String formula,
        int carbons,
        int doubleBonds,
        double molarMass,
        String source) {}
