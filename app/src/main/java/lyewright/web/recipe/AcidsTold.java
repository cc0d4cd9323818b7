package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import lyewright.chemistry.Keeping;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.chemistry.OilPhaseAcids.Share;
import lyewright.chemistry.OxidationIndices;
import lyewright.web.Piece;
import lyewright.words.FattyAcidWords;
import lyewright.words.Figures;

/** The figures of fatty acids and of keeping, each with the way to its why. */
final class AcidsTold {

    private final OilPhaseAcids acids;
    private final UnaryOperator<String> why;

    AcidsTold(OilPhaseAcids acids, UnaryOperator<String> why) {
        this.acids = acids;
        this.why = why;
    }

    List<Told> acids() {
        List<Told> told = new ArrayList<>();
        for (int i = 0; i < acids.acids().size(); i++) {
            Share share = acids.acids().get(i);
            String path = "fattyAcids[" + i + "]";
            List<Piece> value = new ArrayList<>();
            value.add(figure(Figures.percent(share.percent(), 1), path + ".percent"));
            value.add(Piece.plain(" ("));
            value.addAll(range(share, path));
            value.add(Piece.plain(")"));
            told.add(new Told(FattyAcidWords.name(share), value, false));
        }
        return told;
    }

    private List<Piece> range(Share share, String path) {
        Piece low = figure(Figures.fixed(share.lowPercent(), 1), path + ".lowPercent");
        Piece high = figure(Figures.fixed(share.highPercent(), 1), path + ".highPercent");
        return low.text().equals(high.text()) ? List.of(low) : List.of(low, Piece.plain(" to "), high);
    }

    private Piece figure(String text, String path) {
        return new Piece(text, why.apply(path));
    }

    List<Told> keeping(Keeping keeping) {
        OxidationIndices indices = keeping.indices();
        List<Told> told = new ArrayList<>();
        acids.iodineValue()
                .ifPresent(value -> told.add(
                        told("Iodine value", Figures.fixed(value, 1) + " g/100 g", "oilPhase.iodineValueFromAcids")));
        acids.saponificationValue()
                .ifPresent(value -> told.add(told(
                        "Saponification value from the acids",
                        Figures.fixed(value, 1) + " mg KOH/g",
                        "oilPhase.saponificationValueFromAcids")));
        told.add(told("Oxidisability", Figures.fixed(indices.oxidisability(), 1), "keeping.oxidisability"));
        told.add(told("Calculated oxidisability (COX)", Figures.fixed(indices.cox(), 2), "keeping.cox"));
        told.add(told("Peroxidisability index (PI)", Figures.fixed(indices.peroxidisability(), 1), "keeping.pi"));
        told.add(told("Allylic position equivalents (APE)", Figures.fixed(indices.allylic(), 1), "keeping.ape"));
        told.add(told(
                "Bis-allylic position equivalents (BAPE)", Figures.fixed(indices.bisAllylic(), 1), "keeping.bape"));
        return told;
    }

    private Told told(String label, String value, String path) {
        return Told.of(label, figure(value, path));
    }
}
