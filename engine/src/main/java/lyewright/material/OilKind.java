package lyewright.material;

/** What a member of the oil phase is, chemically. */
public enum OilKind {
    /** Glycerides: alkali gives soap and glycerol. */
    TRIGLYCERIDE,
    /** A free fatty acid, or several: takes alkali first and wholly, gives soap and water, no glycerol. */
    FATTY_ACID,
    /** Wax: esters that barely react in the cold; only its free acid is sure. Jojoba and lanolin too. */
    WAX
}
