package lyewright.cli;

import lyewright.material.Names;

/** What the cards of oils and additives have in common. */
final class Cards {

    private Cards() {}

    /** A line of a card, if there is anything to say. */
    static void optional(String label, String what, String source, int labelWidth, Page page) {
        if (!what.isBlank()) {
            page.pair(label, what + OilCard.source(source), labelWidth);
        }
    }

    /** What it is called on paper. */
    static void names(Names names, int labelWidth, Page page) {
        optional("INCI", names.inci(), names.inciSource(), labelWidth, page);
        optional("CAS", names.cas(), names.casSource(), labelWidth, page);
        optional("EC", names.ec(), "", labelWidth, page);
    }
}
