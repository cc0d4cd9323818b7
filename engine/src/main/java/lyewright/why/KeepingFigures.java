package lyewright.why;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.chemistry.OxidationIndices;
import lyewright.material.FattyAcid;

/** Indices of how readily the air gets at the oils. */
final class KeepingFigures {

    private static final String MEMORY = "Formula from memory.";

    private final OilPhaseAcids acids;
    private final OxidationIndices indices;

    KeepingFigures(OilPhaseAcids acids, OxidationIndices indices) {
        this.acids = acids;
        this.indices = indices;
    }

    void addTo(Figures figures) {
        add(
                figures,
                "oxidisability",
                "Oxidisability",
                "How readily air gets at the oils: linoleic acid counts once, linolenic twice, oleic next to nothing.",
                indices.oxidisability(),
                this::oxidisability,
                MEMORY);
        add(
                figures,
                "cox",
                "Calculated oxidisability (COX)",
                "The same with the weights of another paper: linoleic acid counts ten times as much as oleic, linolenic over twenty times.",
                indices.cox(),
                this::cox,
                "Fatemi and Hammond 1980; formula from memory.");
        add(
                figures,
                "pi",
                "Peroxidisability index (PI)",
                "As oxidisability; acids of four and more double bonds count as well, as fish oils have them.",
                indices.peroxidisability(),
                this::peroxidisability,
                MEMORY);
        add(
                figures,
                "ape",
                "Allylic position equivalents (APE)",
                "How many places there are right beside a double bond, where air can begin.",
                indices.allylic(),
                this::allylic,
                "Knothe 2002; formula from memory.");
        add(
                figures,
                "bape",
                "Bis-allylic position equivalents (BAPE)",
                "How many places there are between two double bonds, where air begins soonest.",
                indices.bisAllylic(),
                this::bisAllylic,
                "Knothe 2002; formula from memory.");
    }

    private static void add(
            Figures figures,
            String field,
            String title,
            String sentence,
            double value,
            java.util.function.Supplier<Term> formula,
            String source) {
        figures.add(
                "keeping." + field,
                title,
                "",
                value,
                () -> new Account(sentence, formula.get())
                        .note("More is sooner rancid. Antioxidants, light, warmth and metals are not in it.")
                        .note(source));
    }

    /** All acids that are meant, as the sheet's figures; 0 for none. */
    private Term all(Predicate<FattyAcid> which) {
        List<Term> found = new ArrayList<>();
        for (int i = 0; i < acids.acids().size(); i++) {
            OilPhaseAcids.Share share = acids.acids().get(i);
            if (which.test(share.acid())) {
                found.add(Ledger.figure(
                        share.acid().code(),
                        "fattyAcids[" + i + "].percent",
                        share.percent(),
                        "%",
                        share.acid().commonName()));
            }
        }
        return Term.sum(found);
    }

    private Term oleic() {
        return all(acid -> acid.code().equals("C18:1"));
    }

    private Term linoleic() {
        return all(acid -> acid.code().equals("C18:2"));
    }

    private Term linolenic() {
        return all(acid -> acid.code().equals("C18:3") || acid.code().equals("C18:3n6"));
    }

    private Term withBonds(int bonds) {
        return all(acid -> acid.doubleBonds() == bonds);
    }

    private Term bisAllylic() {
        return linoleic().plus(Term.number(2).times(linolenic()));
    }

    private Term oxidisability() {
        return Term.number(0.02).times(oleic()).plus(bisAllylic());
    }

    private Term cox() {
        return oleic().plus(Term.number(10.3).times(linoleic()))
                .plus(Term.number(21.6).times(linolenic()))
                .over(Term.number(100));
    }

    private Term peroxidisability() {
        return Term.number(0.025)
                .times(oleic())
                .plus(bisAllylic())
                .plus(Term.number(4).times(withBonds(4)))
                .plus(Term.number(6).times(withBonds(5)))
                .plus(Term.number(8).times(withBonds(6)));
    }

    private Term allylic() {
        return Term.number(2).times(oleic().plus(linoleic()).plus(linolenic()));
    }
}
