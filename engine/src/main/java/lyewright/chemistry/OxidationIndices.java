package lyewright.chemistry;

import lyewright.material.MeasuredFat;

/**
 * Indices of how readily the air gets at an oil, reckoned from its fatty acids. They count double bonds and the carbons
 * beside them, and nothing else: neither antioxidants nor metals, light or warmth. No published limit divides keeping oils
 * from others, so there is none here. All formulas are from memory.
 *
 * @param oleic C18:1, percent of the acids by mass
 * @param linoleic C18:2, percent
 * @param linolenic C18:3, percent
 * @param tetraenoic acids of four double bonds, percent
 * @param pentaenoic acids of five, percent
 * @param hexaenoic acids of six, percent
 */
public record OxidationIndices(
        double oleic, double linoleic, double linolenic, double tetraenoic, double pentaenoic, double hexaenoic) {

    /**
     * Of a fat whose acids were measured.
     *
     * @param fat the fat
     * @return its indices, acids of more than three double bonds taken as none
     */
    public static OxidationIndices of(MeasuredFat fat) {
        return new OxidationIndices(fat.oleic(), fat.linoleic(), fat.linolenic(), 0, 0, 0);
    }

    /**
     * Oxidisability: the three acids weighted by how readily each takes up oxygen. From memory.
     *
     * @return 0.02 O + L + 2 Ln
     */
    public double oxidisability() {
        return 0.02 * oleic + linoleic + 2 * linolenic;
    }

    /**
     * COX, calculated oxidisability (Fatemi and Hammond 1980; formula from memory).
     *
     * @return (O + 10.3 L + 21.6 Ln) / 100
     */
    public double cox() {
        return (oleic + 10.3 * linoleic + 21.6 * linolenic) / 100;
    }

    /**
     * PI, peroxidisability index. From memory.
     *
     * @return 0.025 O + L + 2 Ln + 4 tetra + 6 penta + 8 hexa
     */
    public double peroxidisability() {
        return 0.025 * oleic + linoleic + 2 * linolenic + 4 * tetraenoic + 6 * pentaenoic + 8 * hexaenoic;
    }

    /**
     * APE, allylic position equivalents: carbons beside a double bond (Knothe 2002; formula from memory).
     *
     * @return 2 (O + L + Ln)
     */
    public double allylic() {
        return 2 * (oleic + linoleic + linolenic);
    }

    /**
     * BAPE, bis-allylic position equivalents: carbons between two double bonds (Knothe 2002; formula from memory).
     *
     * @return L + 2 Ln
     */
    public double bisAllylic() {
        return linoleic + 2 * linolenic;
    }
}
