package lyewright.cli;

/** The cautions that are on every sheet, said once. */
final class Safety {

    private static final int LABEL = 11;

    private static final String[][] CAUTIONS = {
        {
            "Wear",
            "goggles, gloves and long sleeves; alkali burns skin and blinds. Air the room; children and animals out."
        },
        {"Mix", "alkali into water, never water onto alkali. Soda and salt look alike: label both."},
        {"Vessels", "polypropylene, HDPE or stainless steel; never aluminium, zinc, tin or glass."},
        {"Blender", "its head under the surface before it is switched on."},
        {"Heat", "salt, sugar, milk and honey heat the batter; simmer alcohol off, and let it be cold, before alkali."},
        {"Cutting", "fresh soap is still caustic: gloves."},
        {"On skin", "brush off dry beads, then running water for a long time; no vinegar."},
        {"In eyes", "running water at once, for at least 20 minutes, and call emergency help."},
        {"Fragrance", "essential oils have limits and can make skin react."},
        {
            "Selling",
            "this sheet is arithmetic, not an assessment. Soap that is sold needs the assessment, notification and"
                    + " labelling that local law asks for, from qualified people."
        },
    };

    private Safety() {}

    static void write(Page page) {
        page.heading("Before the alkali is opened");
        for (String[] caution : CAUTIONS) {
            page.pair(caution[0], caution[1], LABEL);
        }
    }
}
