package lyewright.formula;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.material.AdditiveKind;
import lyewright.material.NearestKey;
import lyewright.measure.Share;
import org.jspecify.annotations.Nullable;

/** What must hold of one of the maker's own materials. */
final class MaterialRules {

    private static final List<String> KINDS = kinds();

    private static final double LEAST_SAPONIFICATION_VALUE = 20;
    private static final double MOST_SAPONIFICATION_VALUE = 400;
    private static final double MOST_ACID_VALUE = 400;
    private static final double MOST_IODINE_VALUE = 400;

    /** mg KOH for each mg NaOH: 56.105 / 39.997, the molar masses of the engine's two alkalis. */
    private static final BigDecimal KOH_FOR_NAOH = new BigDecimal("1.40273");

    private static final double ROUNDING = 1e-9;

    private final OwnMaterial own;
    private final String path;
    private final Report report;

    MaterialRules(OwnMaterial own, String path, Report report) {
        this.own = own;
        this.path = path;
        this.report = report;
    }

    private static List<String> kinds() {
        List<String> kinds = new ArrayList<>(
                List.of(OwnMaterial.OIL, OwnMaterial.WAX, OwnMaterial.FATTY_ACID, OwnMaterial.OILS, OwnMaterial.LYE));
        for (AdditiveKind kind : AdditiveKind.values()) {
            kinds.add(kind.word());
        }
        return List.copyOf(kinds);
    }

    void check(boolean inTables, boolean oilOfTables) {
        kind(inTables);
        saponificationValue(MaterialReader.SAPONIFICATION_VALUE, own.saponificationValue());
        saponificationValue(MaterialReader.FAT_SAPONIFICATION_VALUE, own.fatSaponificationValue());
        if (isOil() && own.saponificationValue().isEmpty() && !oilOfTables) {
            add(
                    MaterialReader.SAPONIFICATION_VALUE,
                    name() + " has no saponification value",
                    "write it from its certificate, as in 189.5 ± 1.0 mg KOH/g");
        }
        if (atMost(MaterialReader.ACID_VALUE, own.acidValue(), MOST_ACID_VALUE, " mg KOH/g")) {
            acidWithinSaponification();
        }
        atMost(MaterialReader.IODINE_VALUE, own.iodineValue(), MOST_IODINE_VALUE, " g/100 g");
        makeup();
        strength();
        blend();
    }

    private boolean isOil() {
        return own.kind().equals(OwnMaterial.OIL)
                || own.kind().equals(OwnMaterial.WAX)
                || own.kind().equals(OwnMaterial.FATTY_ACID);
    }

    private String name() {
        return Wording.quote(own.key());
    }

    private void add(String field, String what, String remedy) {
        report.add(path + "." + field, what, remedy);
    }

    private void kind(boolean inTables) {
        if (own.kind().isEmpty()) {
            if (!inTables) {
                add(MaterialReader.KIND, name() + " has no kind", "write it, as in kind: oil");
            }
        } else if (!KINDS.contains(own.kind())) {
            List<String> near = NearestKey.among(own.kind(), KINDS);
            add(
                    MaterialReader.KIND,
                    Wording.quote(own.kind()) + " is not a kind of material",
                    near.isEmpty() ? "write one of " + Wording.oneOf(KINDS) : "did you mean " + near.get(0) + "?");
        }
    }

    private static double low(WrittenFigure figure) {
        return figure.form() == WrittenFigure.Form.PLUS_MINUS
                ? figure.first().subtract(figure.second()).doubleValue()
                : figure.first().doubleValue();
    }

    private static double high(WrittenFigure figure) {
        return figure.form() == WrittenFigure.Form.PLUS_MINUS
                ? figure.first().add(figure.second()).doubleValue()
                : figure.second().doubleValue();
    }

    private static double middle(WrittenFigure figure) {
        return (low(figure) + high(figure)) / 2;
    }

    private void saponificationValue(String field, Optional<WrittenFigure> written) {
        if (written.isEmpty()) {
            return;
        }
        WrittenFigure figure = written.get();
        if (low(figure) >= LEAST_SAPONIFICATION_VALUE && high(figure) <= MOST_SAPONIFICATION_VALUE) {
            return;
        }
        add(
                field,
                "a saponification value of " + figure + " mg KOH/g is not possible",
                inGrams(figure.first()) + "write one between 20 and 400");
    }

    /** Figures such as 0.189 or 0.135 are grams of alkali for a gram of oil. */
    private static String inGrams(BigDecimal value) {
        if (value.signum() == 0 || value.compareTo(BigDecimal.ONE) >= 0) {
            return "";
        }
        BigDecimal koh = value.movePointRight(3).setScale(1, RoundingMode.HALF_UP);
        BigDecimal naoh = value.movePointRight(3).multiply(KOH_FOR_NAOH).setScale(1, RoundingMode.HALF_UP);
        return "as g KOH for each g it would be " + koh + " (× 1000), as g NaOH for each g " + naoh + " (× 1402.73): ";
    }

    private boolean atMost(String field, Optional<WrittenFigure> written, double most, String unit) {
        boolean fits = written.isEmpty() || high(written.get()) <= most;
        if (!fits) {
            add(
                    field,
                    "a figure of " + written.get() + unit + " is not possible here",
                    "write at most " + (int) most + unit);
        }
        return fits;
    }

    private void acidWithinSaponification() {
        if (own.acidValue().isPresent()
                && own.saponificationValue().isPresent()
                && low(own.acidValue().get()) > high(own.saponificationValue().get())) {
            add(
                    MaterialReader.ACID_VALUE,
                    "the acid value is above the saponification value, of which it is a part",
                    "check both on the certificate");
        }
    }

    private void makeup() {
        double sum = percent(MaterialReader.WATER, own.water().orElse(null))
                + percent(MaterialReader.FAT, own.fat().orElse(null))
                + percent(MaterialReader.SUGAR, own.sugar().orElse(null))
                + percent(MaterialReader.SALT, own.salt().orElse(null))
                + percent(
                        MaterialReader.ACID,
                        own.acid().map(OwnMaterial.Acid::share).orElse(null));
        if (sum > 100 + ROUNDING) {
            report.add(
                    path,
                    "water, fat, sugar, salt and acid of " + name() + " come to more than 100 %",
                    "make them smaller until they fit");
        }
        if (own.acid().isPresent()
                && Characters.troubleWithName(own.acid().get().name()) != null) {
            add(MaterialReader.ACID, "the acid of " + name() + " has no name", "write it as 5 % acetic acid");
        }
    }

    private double percent(String field, @Nullable WrittenFigure figure) {
        return figure != null && atMost(field, Optional.of(figure), 100, " %") ? middle(figure) : 0;
    }

    private void strength() {
        boolean lye = own.kind().equals(OwnMaterial.LYE);
        if (own.strength().isEmpty()) {
            if (lye) {
                add(
                        MaterialReader.STRENGTH,
                        "the stock lye " + name() + " has no strength",
                        "write which alkali and its pure share, as in strength: 50 % sodium");
            }
            return;
        }
        if (!lye) {
            add(MaterialReader.STRENGTH, name() + " is no lye, but has a strength", "write kind: lye, or leave it out");
        }
        WrittenFigure pure = own.strength().get().pure();
        if (low(pure) <= 0 || high(pure) >= 100) {
            add(
                    MaterialReader.STRENGTH,
                    "a lye of " + pure + " % is not possible",
                    "write a pure share above 0 and under 100 %");
        }
    }

    private void blend() {
        boolean blend = own.kind().equals(OwnMaterial.OILS);
        List<OwnMaterial.BlendPart> parts = own.oils();
        if (parts.isEmpty()) {
            if (blend) {
                add(
                        MaterialReader.OILS,
                        "the premixed oils " + name() + " have no oils",
                        "write each with its share below oils:");
            }
            return;
        }
        if (!blend) {
            add(MaterialReader.OILS, name() + " is no premix, but has oils", "write kind: oils, or leave them out");
        }
        if (parts.size() > FormulaRules.MOST_LINES) {
            add(MaterialReader.OILS, "there are " + parts.size() + " oils", "write at most " + FormulaRules.MOST_LINES);
            return;
        }
        BigDecimal sum = BigDecimal.ZERO;
        for (int i = 0; i < parts.size(); i++) {
            part(parts, i);
            sum = sum.add(parts.get(i).share().percent());
        }
        if (sum.compareTo(Share.WHOLE.percent()) != 0) {
            add(
                    MaterialReader.OILS,
                    "the oils of " + name() + " add up to " + sum.toPlainString() + " %",
                    "change the shares until they add up to 100 %");
        }
    }

    private void part(List<OwnMaterial.BlendPart> parts, int i) {
        OwnMaterial.BlendPart part = parts.get(i);
        String field = part.key().isEmpty() ? MaterialReader.OILS : MaterialReader.OILS + "." + part.key();
        String trouble = Characters.troubleWithName(part.key());
        if (trouble != null) {
            add(field, "the name of an oil " + trouble, "write a name of one line");
        }
        if (part.key().equals(own.key())) {
            add(field, name() + " holds itself", "name the oils it was mixed from");
        }
        for (int j = 0; j < i; j++) {
            if (parts.get(j).key().equals(part.key())) {
                add(field, Wording.quote(part.key()) + " is listed twice", "make one line of the two");
            }
        }
        saponificationValue(field, part.saponificationValue());
        if (part.share().percent().signum() == 0) {
            add(field, Wording.quote(part.key()) + " is 0 %", "leave the line out, or write more than 0");
        }
    }
}
