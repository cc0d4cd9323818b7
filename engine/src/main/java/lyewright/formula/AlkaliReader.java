package lyewright.formula;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.formula.AlkaliChoice.As;
import lyewright.formula.AlkaliChoice.Basis;
import lyewright.formula.YamlTree.Entries;
import lyewright.material.Alkali;
import lyewright.measure.Decimal;
import lyewright.measure.Outcome;
import lyewright.measure.Share;
import lyewright.measure.WrittenMass;
import org.jspecify.annotations.Nullable;

/** Reads which alkali, or how much: one word, shares with {@code by}, masses with {@code as}, or a stock lye's mass. */
final class AlkaliReader {

    private static final String ALKALI = "alkali";
    private static final String BY = "by";
    private static final String AS = "as";
    private static final String SODIUM = Alkali.SODIUM.word();
    private static final String POTASSIUM = Alkali.POTASSIUM.word();
    private static final List<String> WORDS = List.of(SODIUM, POTASSIUM, BY, AS);

    private final Fields formula;
    private final Findings findings;

    private AlkaliReader(Fields formula) {
        this.formula = formula;
        this.findings = formula.findings();
    }

    /** The choice; null, and noted, where it cannot be read. */
    static @Nullable AlkaliChoice read(Fields formula) {
        return new AlkaliReader(formula).read();
    }

    private @Nullable AlkaliChoice read() {
        if (!(formula.node(ALKALI) instanceof Entries map)) {
            String word = formula.needed(ALKALI, "write alkali: sodium, or potassium");
            return word == null ? null : word(word);
        }
        Fields open = Fields.open(findings, ALKALI, map);
        List<String> others = new ArrayList<>(open.names());
        others.removeAll(WORDS);
        if (others.isEmpty()) {
            return both(open);
        }
        if (others.size() == 1 && open.names().size() == 1) {
            return stock(open, others.get(0));
        }
        findings.add(
                open.at(others.get(0)),
                Wording.quote(others.get(0)) + " does not belong here",
                Wording.offer(others.get(0), WORDS));
        return null;
    }

    private @Nullable AlkaliChoice word(String word) {
        if (Decimal.leading(word) instanceof Outcome.Ok) {
            findings.add(
                    ALKALI,
                    Wording.quote(word) + " does not say which alkali it is of",
                    "write alkali: {sodium: " + word + "}, or potassium in its place");
            findings.expect("superfat");
            return null;
        }
        for (Alkali alkali : Alkali.values()) {
            if (alkali.word().equals(word)) {
                return new AlkaliChoice.Single(alkali);
            }
        }
        return new AlkaliChoice.Stock(word, Optional.empty(), false);
    }

    private @Nullable AlkaliChoice stock(Fields fields, String key) {
        AmountText.Fixable mass = fields.read(key, AmountText::mass);
        return mass == null ? null : new AlkaliChoice.Stock(key, Optional.of(mass.mass()), mass.fixed());
    }

    private @Nullable AlkaliChoice both(Fields fields) {
        boolean shares = isShare(fields, SODIUM) || isShare(fields, POTASSIUM);
        if (!fields.has(SODIUM) && !fields.has(POTASSIUM)) {
            if (!findings.has(ALKALI)) {
                findings.add(
                        ALKALI, "'alkali' names neither sodium nor potassium", "write the share or the mass of each");
            }
            return null;
        }
        return shares ? mix(fields) : given(fields);
    }

    private static boolean isShare(Fields fields, String name) {
        return fields.node(name) instanceof YamlTree.Text text
                && (text.text().contains("%") || text.text().strip().equals("rest"));
    }

    private @Nullable AlkaliChoice mix(Fields fields) {
        refuse(fields, AS, "goes with masses", "write by: as weighed, or leave it out");
        List<Share> sodium = share(fields, SODIUM);
        List<Share> potassium = share(fields, POTASSIUM);
        Basis by = basis(fields);
        if (sodium == null || potassium == null || by == null) {
            return null;
        }
        if (sodium.isEmpty() && potassium.isEmpty()) {
            findings.add(ALKALI, "both alkalis are rest", "write the share of one");
            return null;
        }
        Share sodiumShare = sodium.isEmpty() ? restOf(POTASSIUM, potassium.get(0)) : sodium.get(0);
        Share potassiumShare = potassium.isEmpty() ? restOf(SODIUM, sodium.get(0)) : potassium.get(0);
        return sodiumShare == null || potassiumShare == null
                ? null
                : new AlkaliChoice.Mix(sodiumShare, potassiumShare, by);
    }

    private @Nullable Share restOf(String other, Share share) {
        BigDecimal rest = Share.WHOLE.percent().subtract(share.percent());
        if (rest.signum() <= 0) {
            findings.add(ALKALI, share + " " + other + " leaves nothing for the rest", "write a share under 100 %");
            return null;
        }
        return new Share(rest);
    }

    private @Nullable List<Share> share(Fields fields, String name) {
        fields.require(name, "write its share, or rest");
        return fields.read(name, AmountText::shareOrRest);
    }

    private @Nullable Basis basis(Fields fields) {
        String word = fields.needed(BY, "say what the shares are of: by: moles, pure mass or as weighed");
        return word == null
                ? null
                : Words.choose(findings, fields.at(BY), Wording.tidy(word), Basis.values(), Basis::word);
    }

    private @Nullable AlkaliChoice given(Fields fields) {
        refuse(fields, BY, "goes with shares in percent", "leave it out, or write as: weighed or as: pure");
        AmountText.Fixable sodium = fields.read(SODIUM, AmountText::mass);
        AmountText.Fixable potassium = fields.read(POTASSIUM, AmountText::mass);
        As as = null;
        if (fields.has(AS)) {
            String word = fields.text(AS);
            as = word == null ? null : Words.choose(findings, fields.at(AS), word, As.values(), As::word);
        }
        if ((sodium == null && fields.has(SODIUM))
                || (potassium == null && fields.has(POTASSIUM))
                || (as == null && fields.has(AS))) {
            return null;
        }
        if (sodium != null && potassium != null && sodium.fixed() != potassium.fixed()) {
            findings.add(ALKALI, "one alkali is fixed, the other is not", "write fixed behind both or neither");
            return null;
        }
        boolean fixed = sodium != null ? sodium.fixed() : potassium != null && potassium.fixed();
        return new AlkaliChoice.Given(mass(sodium), mass(potassium), Optional.ofNullable(as), fixed);
    }

    private static Optional<WrittenMass> mass(AmountText.@Nullable Fixable fixable) {
        return Optional.ofNullable(fixable).map(AmountText.Fixable::mass);
    }

    private void refuse(Fields fields, String name, String why, String remedy) {
        if (fields.has(name)) {
            findings.add(fields.at(name), Wording.quote(name) + " " + why, remedy);
        }
    }
}
