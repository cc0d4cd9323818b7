package lyewright.cli;

import java.util.List;
import java.util.Locale;
import lyewright.material.AcidShare;
import lyewright.material.Figure;
import lyewright.material.Oil;
import lyewright.words.Figures;
import lyewright.words.MaterialWords;

/** All that the tables know of one oil, each figure with its source. */
final class OilCard {

    private static final int LABEL = 22;

    private OilCard() {}

    static void write(Oil oil, Page page) {
        page.ends(oil.key(), oil.name());
        page.rule();
        page.pair("What it is", MaterialWords.kind(oil.kind()), LABEL);
        page.pair("Saponification value", figure(oil.saponificationValue(), "mg KOH/g"), LABEL);
        page.pair(
                "Used by a sheet",
                Figures.fixed(oil.reckoned().milligramsKohPerGram(), 1) + " mg KOH/g: " + MaterialWords.basis(oil),
                LABEL);
        oil.acidValue().ifPresent(v -> page.pair("Acid value", figure(v, "mg KOH/g"), LABEL));
        oil.iodineValue().ifPresent(v -> page.pair("Iodine value", figure(v, "g iodine/100 g"), LABEL));
        oil.unsaponifiableMax()
                .ifPresent(v -> page.pair(
                        "Unsaponifiables",
                        "at most " + Figures.upTo(v.high(), 1) + " g/kg" + source(v.source()),
                        LABEL));
        page.pair("Density", density(oil), LABEL);
        names(oil, page);
        acids(oil.acids().acids(), page);
        if (!oil.notes().isBlank()) {
            page.pair("Notes", oil.notes(), LABEL);
        }
    }

    private static String figure(Figure figure, String unit) {
        return MaterialWords.range(figure) + " " + unit + source(figure.source());
    }

    static String source(String source) {
        return source.isBlank() ? "" : "  [" + source + "]";
    }

    private static String density(Oil oil) {
        return MaterialWords.density(oil.density()) + source(oil.density().source());
    }

    private static void names(Oil oil, Page page) {
        Cards.names(oil.names(), LABEL, page);
        Cards.optional("Its sodium soap", oil.names().sodiumSoap(), "", LABEL, page);
        Cards.optional("Its potassium soap", oil.names().potassiumSoap(), "", LABEL, page);
    }

    private static void acids(List<AcidShare> acids, Page page) {
        if (acids.isEmpty()) {
            page.pair("Fatty acids", "not known", LABEL);
            return;
        }
        List<String> sources =
                acids.stream().map(share -> share.share().source()).distinct().toList();
        boolean one = sources.size() == 1;
        page.pair("Fatty acids", "% of all its fatty acids" + (one ? source(sources.get(0)) : ""), LABEL);
        TextTable table = new TextTable(
                        2, TextTable.words(""), TextTable.words(""), TextTable.figures(""), TextTable.words(""))
                .untitled();
        for (AcidShare share : acids) {
            String mark = one ? "" : "[" + (sources.indexOf(share.share().source()) + 1) + "]";
            table.row(
                    share.acid().code(),
                    share.acid().commonName().toLowerCase(Locale.ROOT),
                    MaterialWords.range(share.share()),
                    mark);
        }
        page.table(table);
        for (int i = 0; i < sources.size() && !one; i++) {
            page.hanging("  [" + (i + 1) + "] ", sources.get(i));
        }
    }
}
