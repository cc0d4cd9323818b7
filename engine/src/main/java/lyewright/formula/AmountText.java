package lyewright.formula;

import java.util.ArrayList;
import java.util.List;
import lyewright.measure.Decimal;
import lyewright.measure.MassUnit;
import lyewright.measure.Outcome;
import lyewright.measure.Share;
import lyewright.measure.Volume;
import lyewright.measure.VolumeUnit;
import lyewright.measure.WrittenMass;

/** Reads how much: of an oil, of an addition, of an alkali or water by mass. */
final class AmountText {

    private static final String FIXED = " fixed";

    private AmountText() {}

    /** A mass that may be fixed. */
    record Fixable(WrittenMass mass, boolean fixed) {}

    /** Reads {@code 80 %}, {@code 400 g} or {@code rest}. */
    static Outcome<OilLine.Amount> ofOil(String text) {
        if (text.equals("rest")) {
            return Outcome.ok(new OilLine.Rest());
        }
        return Decimal.leading(text).then(lead -> {
            if (lead.rest().startsWith("%")) {
                return Share.parse(text).then(share -> Outcome.ok(new OilLine.Percent(share)));
            }
            return lead.rest().isEmpty()
                    ? noUnit(text, text + " % or " + text + " g")
                    : WrittenMass.parse(text).then(mass -> Outcome.ok(new OilLine.Weight(mass)));
        });
    }

    /** Reads {@code 60 %}, or {@code rest} as null's stand-in, an empty list. */
    static Outcome<List<Share>> shareOrRest(String text) {
        return text.equals("rest")
                ? Outcome.ok(List.of())
                : Share.parse(text).then(share -> Outcome.ok(List.of(share)));
    }

    /** Reads {@code 76 g} or {@code 76 g fixed}. */
    static Outcome<Fixable> mass(String text) {
        boolean fixed = text.endsWith(FIXED);
        return WrittenMass.parse(withoutFixed(text)).then(mass -> Outcome.ok(new Fixable(mass, fixed)));
    }

    /** Reads how much of an addition. */
    static Outcome<Amount> ofAddition(String text) {
        return Decimal.leading(text).then(lead -> {
            String unit = lead.rest();
            if (unit.startsWith("%")) {
                return Share.parse(lead.value().toPlainString() + " %")
                        .then(share -> percent(share, unit.substring(1).strip()));
            }
            int per = unit.indexOf("per ");
            if (per >= 0) {
                return rate(text, lead, unit.substring(0, per).strip(), unit.substring(per + 4));
            }
            return unit.isEmpty()
                    ? noUnit(text, text + " % of oils, or " + text + " g")
                    : weightOrBulk(text, withoutFixed(unit));
        });
    }

    private static Outcome<Amount> percent(Share share, String of) {
        for (Amount.Base base : Amount.Base.values()) {
            if (of.equals("of " + base.word())) {
                return Outcome.ok(new Amount.Percent(share, base));
            }
        }
        String what = of.isEmpty()
                ? "'" + share + "' does not say of what"
                : Wording.quote(share + " " + of) + " is not a percentage of something known";
        return Outcome.refused(what, "write " + share + " of oils, of portion oils or of batch");
    }

    private static Outcome<Amount> rate(String text, Decimal.Leading lead, String unit, String per) {
        for (MassUnit each : MassUnit.values()) {
            if (each != MassUnit.MILLIGRAM && per.startsWith(each.symbol() + " ")) {
                String of = per.substring(each.symbol().length()).strip();
                Amount.Base base = of.equals(Amount.Base.OILS.word())
                        ? Amount.Base.OILS
                        : of.equals(Amount.Base.PORTION_OILS.word()) ? Amount.Base.PORTION_OILS : null;
                if (base != null) {
                    return WrittenMass.parse(lead.value().toPlainString() + " " + unit)
                            .then(mass -> Outcome.ok(new Amount.Per(mass, each, base)));
                }
            }
        }
        return Outcome.refused(
                Wording.quote(text) + " is not a rate used here",
                "write it as 12 g per kg oils, or per kg portion oils");
    }

    private static Outcome<Amount> weightOrBulk(String text, String unit) {
        boolean fixed = text.endsWith(FIXED);
        String plain = withoutFixed(text);
        for (VolumeUnit volume : VolumeUnit.values()) {
            if (unit.equals(volume.symbol())) {
                return Volume.parse(plain).then(read -> Outcome.ok(new Amount.Bulk(read, fixed)));
            }
        }
        for (MassUnit mass : MassUnit.values()) {
            if (unit.equals(mass.symbol())) {
                return WrittenMass.parse(plain).then(read -> Outcome.ok(new Amount.Weight(read, fixed)));
            }
        }
        if (unit.contains("fl")) {
            return WrittenMass.parse(plain).then(read -> Outcome.ok(new Amount.Weight(read, fixed)));
        }
        return Outcome.refused(
                Wording.quote(unit) + " is not a unit used here",
                "use one of " + Wording.oneOf(units()) + ", as in 12 g, or write 2 % of oils");
    }

    private static List<String> units() {
        List<String> units = new ArrayList<>();
        for (MassUnit unit : MassUnit.values()) {
            units.add(unit.symbol());
        }
        for (VolumeUnit unit : VolumeUnit.values()) {
            units.add(unit.symbol());
        }
        return units;
    }

    private static String withoutFixed(String text) {
        return text.endsWith(FIXED) ? text.substring(0, text.length() - FIXED.length()) : text;
    }

    private static <T> Outcome<T> noUnit(String text, String remedy) {
        return Outcome.refused(Wording.quote(text) + " has no unit", "write " + Wording.clip(remedy));
    }
}
