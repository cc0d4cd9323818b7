package lyewright.words;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import lyewright.chemistry.Composition.Kind;
import lyewright.chemistry.Composition.Substance;
import lyewright.makingsheet.Purpose;
import lyewright.material.SoapGrade;
import lyewright.material.Tables;

/** Words for substances, and published grades beside them. */
public final class CompositionWords {

    private CompositionWords() {}

    /** A kind as a line of its own. */
    public static String of(Kind kind) {
        return switch (kind) {
            case SOAP -> "Soap";
            case GLYCEROL -> "Glycerol (glycerin)";
            case OIL_LEFT -> "Oil left over";
            case ACID_LEFT -> "Acid left over";
            case ACID_SALT -> "Salts of acids and carbonates";
            case UNSAPONIFIABLE -> "Unsaponifiable matter";
            case SALT -> "Salt";
            case WATER -> "Water";
            case FREE_ALKALI -> "Free alkali";
            case INERT -> "Clay, colour, other solids";
            case OTHER -> "Fragrance and the rest";
        };
    }

    /** What is weighed, by what it is for a maker. */
    public static String of(Purpose purpose) {
        return switch (purpose) {
            case OILS -> "Oils";
            case ALKALI -> "Alkali";
            case STOCK_LYE -> "Stock lye";
            case SALT -> "Salt";
            case SOLIDS -> "Solids";
            case FRAGRANCE -> "Fragrance";
            case OTHER -> "Other";
            case LIQUIDS -> "Liquids";
            case WATER -> "Water";
        };
    }

    /** Wax that is left, which is no superfat. */
    public static final String WAX_LEFT = "Wax that does not react";

    /** A kind at the head of a narrow column. */
    public static String brief(Kind kind) {
        return switch (kind) {
            case SOAP -> "soap";
            case GLYCEROL -> "glycerol";
            case OIL_LEFT -> "oil left";
            case ACID_LEFT -> "acid left";
            case ACID_SALT -> "acid salts";
            case UNSAPONIFIABLE -> "unsaponif.";
            case SALT -> "salt";
            case WATER -> "water";
            case FREE_ALKALI -> "free alkali";
            case INERT -> "solids";
            case OTHER -> "rest";
        };
    }

    /** What a substance is told under: soap by its oil, whichever the alkali; the sum of what nobody asks for oil by oil. */
    public static String nameIn(Substance s) {
        return switch (s.kind()) {
            case SOAP -> {
                int of = s.name().indexOf(" of ");
                yield of < 0 ? s.name() : "Soap" + s.name().substring(of);
            }
            case OIL_LEFT -> s.waxLeft() ? WAX_LEFT : of(s.kind());
            case GLYCEROL, UNSAPONIFIABLE, WATER -> of(s.kind());
            case FREE_ALKALI -> "Free " + s.name().toLowerCase(Locale.ROOT);
            case ACID_LEFT -> s.name() + ", left over";
            case ACID_SALT, SALT, INERT, OTHER -> s.name();
        };
    }

    /** Its INCI name, where the line is of one thing alone. */
    public static String inci(Substance s) {
        return switch (s.kind()) {
            case OIL_LEFT, UNSAPONIFIABLE -> "";
            default -> s.inci();
        };
    }

    public static String leastFattyMatter(Tables tables) {
        return "Published grades, at least: " + grades(tables, SoapGrade.LEAST_FATTY_MATTER);
    }

    public static String mostChloride(Tables tables) {
        return "Published grades, at most: " + grades(tables, SoapGrade.MOST_CHLORIDE);
    }

    /** {@code toilet soap 76, 70 or 60 % (IS 2888:2004)}: only limits that are one number, by standard. */
    private static String grades(Tables tables, String parameter) {
        Map<String, List<SoapGrade>> byStandard = tables.soapGrades().stream()
                .filter(g -> g.parameter().equals(parameter) && g.limit().matches("[0-9.]+"))
                .collect(Collectors.groupingBy(SoapGrade::standard, LinkedHashMap::new, Collectors.toList()));
        return byStandard.entrySet().stream()
                        .map(e -> limits(e.getValue()) + " (" + e.getKey() + remembered(e.getValue()) + ")")
                        .collect(Collectors.joining(", "))
                + ".";
    }

    private static String limits(List<SoapGrade> grades) {
        String product = grades.get(0).product().replaceFirst(" grade \\d$", "");
        String limits = grades.stream().map(SoapGrade::limit).collect(Collectors.joining(", "));
        int last = limits.lastIndexOf(", ");
        String either = last < 0 ? limits : limits.substring(0, last) + " or" + limits.substring(last + 1);
        return product + " " + either + " %";
    }

    private static String remembered(List<SoapGrade> grades) {
        long remembered =
                grades.stream().filter(g -> g.status().contains("memory")).count();
        return remembered == 0 ? "" : remembered == grades.size() ? ", from memory" : ", partly from memory";
    }
}
