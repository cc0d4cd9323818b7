package lyewright.words;

import java.util.List;

/** The cautions that are on every sheet, said once. */
public final class Safety {

    /** What they stand under. */
    public static final String HEADING = "Before the alkali is opened";

    /** That this is no assessment. */
    public static final Labelled SELLING = new Labelled(
            "Selling",
            "this sheet is arithmetic, not an assessment. Soap that is sold needs the assessment, notification and"
                    + " labelling that local law asks for, from qualified people.");

    /** In the order in which they matter. */
    public static final List<Labelled> LINES = List.of(
            new Labelled(
                    "Wear",
                    "goggles, gloves and long sleeves; alkali burns skin and blinds. Air the room; children and animals"
                            + " out."),
            new Labelled("Mix", "alkali into water, never water onto alkali. Soda and salt look alike: label both."),
            new Labelled("Vessels", "polypropylene, HDPE or stainless steel; never aluminium, zinc, tin or glass."),
            new Labelled("Blender", "its head under the surface before it is switched on."),
            new Labelled(
                    "Heat",
                    "salt, sugar, milk and honey heat the batter; simmer alcohol off, and let it be cold, before alkali."),
            new Labelled("Cutting", "fresh soap is still caustic: gloves."),
            new Labelled("On skin", "brush off dry beads, then running water for a long time; no vinegar."),
            new Labelled("In eyes", "running water at once, for at least 20 minutes, and call emergency help."),
            new Labelled("Fragrance", "essential oils have limits and can make skin react."),
            SELLING);

    private Safety() {}
}
