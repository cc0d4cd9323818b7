package lyewright.web.stores;

import java.util.Arrays;
import java.util.Optional;
import lyewright.records.equipment.MouldMeasures;
import lyewright.records.equipment.MouldMeasures.Inside;
import lyewright.records.setting.Units;

/** What a mould is, which says what is asked of it. */
public enum MouldKind {
    /** Cut across its length. */
    LOAF("loaf", "Loaf", "A long box. The bars are slices off it."),
    /** Cut in a grid. */
    SLAB("slab", "Slab", "A flat box. The bars are cut out of it in a grid."),
    /** Cut across its length. */
    TUBE("tube", "Tube", "A pipe or a round column. The bars are discs off it."),
    /** Bars already. */
    CAVITIES("cavities", "Cavities", "A tray of separate hollows. What comes out is bars already."),
    /** Known only by what goes into it. */
    UNMEASURED("unmeasured", "Any other shape", "Known by the water that fills it, or by what it usually takes.");

    private final String word;
    private final String label;
    private final String what;

    MouldKind(String word, String label, String what) {
        this.word = word;
        this.label = label;
        this.what = what;
    }

    /** As it stands in addresses and forms. */
    public String word() {
        return word;
    }

    /** What a maker calls it. */
    public String label() {
        return label;
    }

    /** What it is, a sentence or two. */
    public String what() {
        return what;
    }

    static Optional<MouldKind> of(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }

    static MouldKind of(Optional<Inside> inside) {
        if (inside.isEmpty()) {
            return UNMEASURED;
        }
        Inside shape = inside.get();
        return shape instanceof MouldMeasures.Loaf
                ? LOAF
                : shape instanceof MouldMeasures.Slab ? SLAB : shape instanceof MouldMeasures.Tube ? TUBE : CAVITIES;
    }

    /** Whether bars are cut from it. */
    public boolean isCut() {
        return this == LOAF || this == SLAB || this == TUBE;
    }

    /** Whether its top can be planed. */
    public boolean hasTop() {
        return this == LOAF || this == SLAB;
    }

    /** How its inside is called. */
    String sizeLabel() {
        return switch (this) {
            case LOAF, SLAB -> "Length, width and height inside";
            case TUBE -> "Length and diameter inside";
            case CAVITIES -> "How many, and what one holds";
            case UNMEASURED -> "";
        };
    }

    /** How its inside is typed. */
    String sizeExample(Units units) {
        boolean ounces = units == Units.OUNCES;
        return switch (this) {
            case LOAF -> ounces ? "12 x 3 x 2.5 in" : "300 x 80 x 65 mm";
            case SLAB -> ounces ? "15 x 10 x 1.25 in" : "360 x 240 x 30 mm";
            case TUBE -> ounces ? "12 x 3 in" : "300 x 76 mm";
            case CAVITIES -> ounces ? "12 x 3.3 oz" : "12 x 95 ml";
            case UNMEASURED -> "";
        };
    }

    /** How a bar is typed. */
    String barExample(Units units) {
        boolean ounces = units == Units.OUNCES;
        return this == SLAB ? (ounces ? "2.5 x 3.5 in" : "60 x 80 mm") : ounces ? "1 in" : "25 mm";
    }
}
