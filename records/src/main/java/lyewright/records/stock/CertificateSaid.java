package lyewright.records.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.formula.OwnMaterial;
import lyewright.formula.OwnMaterial.BlendPart;
import lyewright.formula.OwnMaterial.Certified;
import lyewright.formula.OwnMaterial.Strength;
import lyewright.formula.WrittenFigure;
import lyewright.material.Alkali;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;

/**
 * What a row of a file says of a lot's certificate, and of what a lot was made of here, before it is known what it is a lot of.
 *
 * @param figures what an oil's certificate says; without a strength
 * @param purity percent of pure alkali
 * @param alkali of which alkali that is, where the row says
 * @param oils of a premix
 * @param source which certificate; perhaps empty
 */
public record CertificateSaid(
        Certified figures,
        Optional<WrittenFigure> purity,
        Optional<Alkali> alkali,
        List<BlendPart> oils,
        String source) {

    private static final String SV = "certificate.saponification value";
    private static final String AV = "certificate.acid value";
    private static final String IV = "certificate.iodine value";
    private static final String WATER = "certificate.water";
    private static final String STRENGTH = "certificate.strength";
    private static final String OILS = "certificate.oils";

    /** Copies its list. */
    public CertificateSaid {
        oils = List.copyOf(oils);
    }

    /** Of a material: as it is kept, or why that cannot be; problems are at the columns that say it. */
    Outcome<OwnMaterial> of(ItemSaid item, String lot) {
        List<Problem> problems = misplaced(item);
        if (!problems.isEmpty()) {
            return new Outcome.Refused<>(problems);
        }
        String key = item.identity().materialKey().orElseThrow();
        Certified whole = new Certified(
                figures.saponificationValue(),
                figures.acidValue(),
                figures.iodineValue(),
                figures.water(),
                purity.flatMap(pure -> which(item).map(which -> new Strength(pure, which))));
        String said = source.isEmpty() ? "certificate of lot " + lot : source;
        return Outcome.ok(
                oils.isEmpty()
                        ? OwnMaterial.certified(key, purity.isPresent() ? OwnMaterial.LYE : "", whole, said)
                        : OwnMaterial.made(key, OwnMaterial.OILS, Optional.empty(), oils, said));
    }

    /** The row's, or the one that recipes call so. */
    private Optional<Alkali> which(ItemSaid item) {
        return alkali.or(() -> byKey(item));
    }

    private static Optional<Alkali> byKey(ItemSaid item) {
        return item.identity().materialKey().flatMap(Alkali::ofKey);
    }

    private List<Problem> misplaced(ItemSaid item) {
        List<Problem> problems = new ArrayList<>();
        if (item.identity().materialKey().isEmpty()) {
            problems.add(new Problem(
                    said().get(0),
                    "no recipe names '" + item.name() + "', so no sheet could reckon with its certificate",
                    "write what recipes call it, or leave the figures out"));
        } else if (item.kind() == ItemKind.ALKALI) {
            said().stream()
                    .filter(path -> !path.equals(STRENGTH))
                    .forEach(path -> problems.add(
                            new Problem(path, "'" + item.name() + "' is an alkali", "write its purity alone")));
            which(problems, item);
        } else {
            boolean oil = item.kind() == ItemKind.OIL;
            said().stream()
                    .filter(path -> !oil || path.equals(STRENGTH))
                    .forEach(path -> problems.add(new Problem(
                            path,
                            "'" + item.name() + "' is " + (oil ? "no alkali" : "neither an oil nor an alkali"),
                            "leave that figure out")));
        }
        if (!oils.isEmpty() && said().size() > 1) {
            problems.add(new Problem(
                    OILS, "figures of a certificate stand beside what it was made of", "leave one of the two out"));
        }
        return problems;
    }

    private void which(List<Problem> problems, ItemSaid item) {
        if (which(item).isEmpty()) {
            problems.add(new Problem(STRENGTH, "nothing says which alkali that is", "write naoh or koh beside it"));
        } else if (!byKey(item).equals(which(item)) && byKey(item).isPresent()) {
            problems.add(new Problem(
                    STRENGTH,
                    "'" + item.name() + "' is the other alkali than the one beside its purity",
                    "look which of the two it is"));
        }
    }

    /** The paths of what is said; never none. */
    private List<String> said() {
        List<String> said = new ArrayList<>();
        figures.saponificationValue().ifPresent(it -> said.add(SV));
        figures.acidValue().ifPresent(it -> said.add(AV));
        figures.iodineValue().ifPresent(it -> said.add(IV));
        figures.water().ifPresent(it -> said.add(WATER));
        purity.ifPresent(it -> said.add(STRENGTH));
        if (!oils.isEmpty()) {
            said.add(OILS);
        }
        return said;
    }
}
