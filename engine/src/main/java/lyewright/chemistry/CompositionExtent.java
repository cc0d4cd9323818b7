package lyewright.chemistry;

/**
 * How far each reaction has gone, and with which alkali.
 *
 * @param begun whether any has, which tells free acid from the oil it is in
 * @param additionAcid fraction of the additions' acid that has reacted
 * @param oilAcid fraction of the oil phase's free acid that has
 * @param ester fraction of all glycerides that has
 * @param sodium fraction of the alkali, by moles, that is sodium hydroxide
 * @param alkaliLeft fraction of the alkali that is left
 */
record CompositionExtent(
        boolean begun, double additionAcid, double oilAcid, double ester, double sodium, double alkaliLeft) {

    /** Nothing has reacted. */
    static final CompositionExtent NOTHING = new CompositionExtent(false, 0, 0, 0, 1, 1);

    /** Everything that can: acids of the additions, then those of the oils, then glycerides. */
    static CompositionExtent full(Reaction reaction, double sodium) {
        double reaching = reaction.reaching();
        return new CompositionExtent(
                true,
                share(reaction.alkali(), reaction.taken()),
                share(reaching, reaction.freeAcid()),
                share(reaching - reaction.freeAcid(), reaction.equivalents() - reaction.freeAcid()),
                sodium,
                reaction.alkali() > 0 ? Math.max(0, reaching - reaction.equivalents()) / reaction.alkali() : 0);
    }

    private static double share(double there, double wanted) {
        return wanted > 0 ? Math.max(0, Math.min(1, there / wanted)) : 0;
    }
}
