package lyewright.picture;

import java.util.ArrayList;
import java.util.List;
import lyewright.chemistry.Composition;
import lyewright.chemistry.Composition.Kind;
import lyewright.words.CompositionWords;
import lyewright.words.Sentences;

/** What a batch becomes, in the order of a column from the foot up; what dries off last. */
final class Becomes {

    private static final List<Kind> ORDER = List.of(
            Kind.SOAP,
            Kind.GLYCEROL,
            Kind.OIL_LEFT,
            Kind.UNSAPONIFIABLE,
            Kind.FREE_ALKALI,
            Kind.ACID_LEFT,
            Kind.ACID_SALT,
            Kind.SALT,
            Kind.INERT,
            Kind.OTHER,
            Kind.WATER);

    private Becomes() {}

    static List<MassPart> of(Composition cured) {
        List<MassPart> parts = new ArrayList<>();
        for (Kind kind : ORDER) {
            double grams = cured.grams(kind);
            if (kind == Kind.OIL_LEFT) {
                double wax = waxLeft(cured);
                add(parts, words(kind), style(kind), grams - wax);
                add(parts, "Wax left", style(kind), wax);
            } else {
                add(parts, words(kind), style(kind), grams);
            }
        }
        return parts;
    }

    private static void add(List<MassPart> parts, String words, MassStyle style, double grams) {
        if (grams > 0) {
            parts.add(new MassPart(words, style, grams));
        }
    }

    private static double waxLeft(Composition cured) {
        return cured.substances().stream()
                .filter(Composition.Substance::waxLeft)
                .mapToDouble(Composition.Substance::grams)
                .sum();
    }

    /** As at the head of a narrow column, first letter large. */
    private static String words(Kind kind) {
        return Sentences.upperFirst(CompositionWords.brief(kind));
    }

    private static MassStyle style(Kind kind) {
        return switch (kind) {
            case SOAP -> MassStyle.SOAP;
            case GLYCEROL -> MassStyle.GLYCEROL;
            case OIL_LEFT -> MassStyle.OIL_LEFT;
            case UNSAPONIFIABLE -> MassStyle.UNSAPONIFIABLE;
            case FREE_ALKALI -> MassStyle.FREE_ALKALI;
            case SALT, ACID_SALT -> MassStyle.SALT;
            case INERT -> MassStyle.SOLIDS;
            case ACID_LEFT, OTHER -> MassStyle.REST;
            case WATER -> MassStyle.WATER;
        };
    }
}
