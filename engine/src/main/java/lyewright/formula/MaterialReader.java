package lyewright.formula;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.formula.OwnMaterial.Acid;
import lyewright.formula.OwnMaterial.BlendPart;
import lyewright.formula.OwnMaterial.Strength;
import lyewright.formula.YamlTree.Entries;
import lyewright.material.Alkali;
import lyewright.measure.Density;
import lyewright.measure.Outcome;
import lyewright.measure.Share;

/** Reads one of the maker's own materials. */
final class MaterialReader {

    static final String MG_KOH = "mg KOH/g";
    static final String PERCENT = "%";
    static final String G_IODINE = "g/100 g";

    static final String KIND = "kind";
    static final String SAPONIFICATION_VALUE = "saponification value";
    static final String ACID_VALUE = "acid value";
    static final String IODINE_VALUE = "iodine value";
    static final String DENSITY = "density";
    static final String WATER = "water";
    static final String FAT = "fat";
    static final String FAT_SAPONIFICATION_VALUE = "fat saponification value";
    static final String SUGAR = "sugar";
    static final String SALT = "salt";
    static final String ACID = "acid";
    static final String STRENGTH = "strength";
    static final String OILS = "oils";
    static final String INCI = "inci";
    static final String CAS = "cas";
    static final String SUPPLIER = "supplier";
    static final String SOURCE = "source";

    private static final List<String> NAMES = List.of(
            KIND,
            SAPONIFICATION_VALUE,
            ACID_VALUE,
            IODINE_VALUE,
            DENSITY,
            WATER,
            FAT,
            FAT_SAPONIFICATION_VALUE,
            SUGAR,
            SALT,
            ACID,
            STRENGTH,
            OILS,
            INCI,
            CAS,
            SUPPLIER,
            SOURCE);

    /** Between a share in a premix and the saponification value of what it is a share of. */
    private static final String OF = " of ";

    private final Fields fields;

    private MaterialReader(Fields fields) {
        this.fields = fields;
    }

    static OwnMaterial read(Findings findings, String path, String key, Entries map) {
        return new MaterialReader(Fields.known(findings, path, map, NAMES)).read(key);
    }

    private OwnMaterial read(String key) {
        return new OwnMaterial(
                key,
                word(KIND),
                figure(SAPONIFICATION_VALUE, MG_KOH, false),
                figure(ACID_VALUE, MG_KOH, false),
                figure(IODINE_VALUE, G_IODINE, false),
                Optional.ofNullable(fields.read(DENSITY, Density::parse)),
                figure(WATER, PERCENT, true),
                figure(FAT, PERCENT, true),
                figure(FAT_SAPONIFICATION_VALUE, MG_KOH, false),
                figure(SUGAR, PERCENT, true),
                figure(SALT, PERCENT, true),
                Optional.ofNullable(fields.read(ACID, MaterialReader::acid)),
                Optional.ofNullable(fields.read(STRENGTH, MaterialReader::strength)),
                blend(),
                word(INCI),
                word(CAS),
                word(SUPPLIER),
                word(SOURCE));
    }

    private String word(String name) {
        String text = fields.text(name);
        return text == null ? "" : text;
    }

    private Optional<WrittenFigure> figure(String name, String unit, boolean unitNeeded) {
        return Optional.ofNullable(fields.read(name, text -> FigureText.parse(text, unit, unitNeeded)));
    }

    private static Outcome<Acid> acid(String text) {
        return shareOfSomething(text, "write it as 5 % acetic acid")
                .then(read -> Outcome.ok(new Acid(read.figure(), read.unit())));
    }

    private static Outcome<Strength> strength(String text) {
        String remedy = "write it as 50 % sodium, or 50 % potassium";
        return shareOfSomething(text, remedy).then(read -> {
            for (Alkali alkali : Alkali.values()) {
                if (alkali.word().equals(read.unit())) {
                    return Outcome.ok(new Strength(read.figure(), alkali));
                }
            }
            return Outcome.refused(Wording.quote(read.unit()) + " is not an alkali", remedy);
        });
    }

    private static Outcome<WrittenFigure.WithUnit> shareOfSomething(String text, String remedy) {
        return WrittenFigure.parse(text).then(read -> {
            String of =
                    read.unit().startsWith(PERCENT) ? read.unit().substring(1).strip() : "";
            return of.isEmpty()
                    ? Outcome.refused(Wording.quote(text) + " does not say how many percent of what", remedy)
                    : Outcome.ok(new WrittenFigure.WithUnit(read.figure(), of));
        });
    }

    private List<BlendPart> blend() {
        Entries map = fields.map(OILS, "write each oil with its share");
        if (map == null) {
            return List.of();
        }
        Fields oils = Fields.open(fields.findings(), fields.at(OILS), map);
        List<BlendPart> parts = new ArrayList<>();
        BigDecimal sum = BigDecimal.ZERO;
        int rest = -1;
        for (String oil : oils.names()) {
            InPremix read = oils.read(oil, MaterialReader::inPremix);
            if (read != null && read.share().isEmpty()) {
                rest = noteRest(oils, oil, rest, parts.size());
                parts.add(new BlendPart(oil, Share.WHOLE, read.saponificationValue()));
            } else if (read != null) {
                Share share = read.share().get(0);
                sum = sum.add(share.percent());
                parts.add(new BlendPart(oil, share, read.saponificationValue()));
            }
        }
        if (rest >= 0) {
            parts.set(rest, restPart(oils, parts.get(rest), sum));
        }
        return parts;
    }

    /** Share and saponification value of an oil in a premix; no share for the rest. */
    private record InPremix(List<Share> share, Optional<WrittenFigure> saponificationValue) {}

    private static Outcome<InPremix> inPremix(String text) {
        int of = text.indexOf(OF);
        return of < 0
                ? AmountText.shareOrRest(text).then(share -> Outcome.ok(new InPremix(share, Optional.empty())))
                : AmountText.shareOrRest(text.substring(0, of).strip())
                        .then(share -> FigureText.parse(
                                        text.substring(of + OF.length()).strip(), MG_KOH, true)
                                .then(figure -> Outcome.ok(new InPremix(share, Optional.of(figure)))));
    }

    private static int noteRest(Fields oils, String oil, int before, int place) {
        if (before >= 0) {
            oils.findings().add(oils.at(oil), "two oils are rest", "give one of them its share");
        }
        return place;
    }

    private static BlendPart restPart(Fields oils, BlendPart part, BigDecimal sum) {
        String oil = part.key();
        BigDecimal rest = Share.WHOLE.percent().subtract(sum);
        if (rest.signum() <= 0) {
            oils.findings()
                    .add(
                            oils.at(oil),
                            "nothing is left for " + Wording.quote(oil) + ": the others add up to "
                                    + sum.toPlainString() + " %",
                            "make the other shares smaller");
            return part;
        }
        return new BlendPart(oil, new Share(rest), part.saponificationValue());
    }
}
