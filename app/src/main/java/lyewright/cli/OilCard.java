package lyewright.cli;

import java.util.List;
import java.util.Locale;
import lyewright.material.AcidShare;
import lyewright.material.Figure;
import lyewright.material.Oil;
import lyewright.material.OilKind;
import lyewright.words.Figures;

/** All that the tables know of one oil, each figure with its source. */
final class OilCard {

    private static final int LABEL = 22;

    private OilCard() {}

    static void write(Oil oil, Page page) {
        page.ends(oil.key(), oil.name());
        page.rule();
        page.pair("What it is", kind(oil.kind()), LABEL);
        page.pair("Saponification value", figure(oil.saponificationValue(), "mg KOH/g"), LABEL);
        page.pair(
                "Used by a sheet",
                Figures.fixed(oil.reckoned().milligramsKohPerGram(), 1) + " mg KOH/g: " + basis(oil),
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

    private static String kind(OilKind kind) {
        return switch (kind) {
            case TRIGLYCERIDE -> "glycerides: alkali gives soap and glycerol";
            case FATTY_ACID -> "free fatty acid: takes alkali first and wholly, gives soap and water";
            case WAX -> "wax: only its free acid surely reacts";
        };
    }

    static String word(OilKind kind) {
        return switch (kind) {
            case TRIGLYCERIDE -> "oil";
            case FATTY_ACID -> "acid";
            case WAX -> "wax";
        };
    }

    /** A figure's ends. */
    static String range(Figure figure) {
        String low = Figures.upTo(figure.low(), 2);
        String high = Figures.upTo(figure.high(), 2);
        return low.equals(high) ? low : low + " to " + high;
    }

    private static String figure(Figure figure, String unit) {
        return range(figure) + " " + unit + source(figure.source());
    }

    static String source(String source) {
        return source.isBlank() ? "" : "  [" + source + "]";
    }

    /** Why a sheet computes with the saponification value that it does. */
    static String basis(Oil oil) {
        String doubt = oil.reckoned().remembered() ? "memory" : "wide";
        return switch (oil.reckoned().basis()) {
            case CERTIFICATE -> "the maker's own figure";
            case MIDDLE -> "middle of the published range";
            case LOWER_MIDDLE -> "middle of the range (" + doubt + ")";
            case FATTY_ACIDS -> "from its fatty acids, lower than the middle (" + doubt + ")";
            case WAX_ACID -> oil.reckoned().acidPart() > 0 ? "only the wax's free acid" : "nothing of it surely reacts";
        };
    }

    private static String density(Oil oil) {
        return Figures.upTo(oil.density().gramsPerMillilitre(), 4) + " g/ml at "
                + Figures.upTo(oil.density().atCelsius(), 0) + " °C, "
                + Figures.upTo(oil.density().slopePerKelvin(), 5) + " for each kelvin"
                + source(oil.density().source());
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
                    range(share.share()),
                    mark);
        }
        page.table(table);
        for (int i = 0; i < sources.size() && !one; i++) {
            page.hanging("  [" + (i + 1) + "] ", sources.get(i));
        }
    }
}
