package lyewright.web.cupboard;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.OwnMaterial;
import lyewright.formula.WrittenFigure;
import lyewright.material.Alkali;
import lyewright.material.Figure;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.stock.CertificateRules;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.PublishedRange;
import lyewright.web.TextField;

/**
 * What a lot's certificate says, as typed.
 *
 * @param texts by field
 * @param sure whether a figure that is outside what was published is right all the same
 */
record CertificateForm(Map<String, String> texts, boolean sure) {

    static final String SV = "saponification value";
    private static final String AV = "acid value";
    private static final String IV = "iodine value";
    private static final String WATER = "water";
    private static final String PURITY = "purity";
    private static final String SOURCE = "source";

    private static final String TICK = "; if it is right, tick below that it is";

    private static final String KOH = "mg KOH/g";

    CertificateForm {
        texts = Map.copyOf(texts);
    }

    /** The figures that a certificate of a thing may have; none for what has no chemistry that a sheet reckons with. */
    static List<String> figures(ItemSaid item) {
        if (item.identity().materialKey().isEmpty()) {
            return List.of();
        }
        return switch (item.kind()) {
            case OIL -> List.of(SV, AV, IV, WATER);
            case ALKALI -> alkali(item).isPresent() ? List.of(PURITY) : List.of();
            default -> List.of();
        };
    }

    private static Optional<Alkali> alkali(ItemSaid item) {
        return item.kind() == ItemKind.ALKALI ? item.identity().materialKey().flatMap(Alkali::ofKey) : Optional.empty();
    }

    static CertificateForm sent(Context ctx) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (String name : List.of(SV, AV, IV, WATER, PURITY, SOURCE)) {
            texts.put(name, Typed.line(ctx, name).strip());
        }
        return new CertificateForm(texts, Typed.ticked(ctx, "sure"));
    }

    static CertificateForm of(Optional<OwnMaterial> certificate) {
        Map<String, String> texts = new LinkedHashMap<>();
        certificate.ifPresent(own -> {
            said(own).forEach((name, figure) -> texts.put(name, figure.toString()));
            texts.put(SOURCE, own.source());
        });
        return new CertificateForm(texts, false);
    }

    private String text(String name) {
        return texts.getOrDefault(name, "");
    }

    /** What was published of a figure of a thing, if anything was. */
    static Optional<Figure> published(ItemSaid item, String name) {
        return PublishedRange.of(item, name.equals(PURITY) ? PublishedRange.STRENGTH : name);
    }

    /** What a figure is measured in. */
    static String unit(String name) {
        return switch (name) {
            case SV, AV -> KOH;
            case IV -> "g/100 g";
            default -> "%";
        };
    }

    /** The figures that a certificate has, by their names. */
    static Map<String, WrittenFigure> said(OwnMaterial certificate) {
        Map<String, WrittenFigure> said = new LinkedHashMap<>();
        certificate.saponificationValue().ifPresent(figure -> said.put(SV, figure));
        certificate.acidValue().ifPresent(figure -> said.put(AV, figure));
        certificate.iodineValue().ifPresent(figure -> said.put(IV, figure));
        certificate.water().ifPresent(figure -> said.put(WATER, figure));
        certificate.strength().ifPresent(strength -> said.put(PURITY, strength.pure()));
        return said;
    }

    List<TextField> fields(ItemSaid item, List<Problem> problems) {
        List<TextField> fields = new ArrayList<>();
        for (String figure : figures(item)) {
            String unit = switch (figure) {
                case SV -> KOH + ", as in 189.5 ± 1.0";
                case AV -> KOH + ", as in 0.4 or 0.4 ± 0.1";
                case IV -> "g iodine/100 g, as in 82 or 80 to 84";
                case PURITY -> "percent, as in 98.6 ± 0.4";
                default -> "percent, as in 0.1";
            };
            fields.add(TextField.of(
                            figure,
                            figure.substring(0, 1).toUpperCase(Locale.ROOT) + figure.substring(1),
                            unit,
                            text(figure))
                    .with(problems)
                    .forFigures());
        }
        fields.add(TextField.of(SOURCE, "Which certificate", "its number and day, as on the paper", text(SOURCE))
                .with(problems));
        return fields;
    }

    /** Read; nothing where no figure is left. Problems name the fields; those at {@code sure} ask once. */
    Outcome<Optional<OwnMaterial>> read(ItemSaid item, String lot) {
        List<Problem> problems = new ArrayList<>();
        Map<String, WrittenFigure> read = new LinkedHashMap<>();
        for (String name : figures(item)) {
            if (!text(name).isEmpty()) {
                Outcome<WrittenFigure> figure = figure(name);
                figure.problems().forEach(problem -> problems.add(problem.within(name)));
                if (figure instanceof Outcome.Ok<WrittenFigure> ok) {
                    read.put(name, ok.value());
                }
            }
        }
        if (!problems.isEmpty()) {
            return new Outcome.Refused<>(problems);
        }
        if (read.isEmpty()) {
            return Outcome.ok(Optional.empty());
        }
        OwnMaterial material =
                material(item, read, text(SOURCE).isEmpty() ? "certificate of lot " + lot : text(SOURCE));
        List<Problem> refused = CertificateRules.refused(item, material);
        if (!refused.isEmpty()) {
            return new Outcome.Refused<>(
                    refused.stream().map(CertificateForm::atItsField).toList());
        }
        List<Problem> unusual = sure ? List.of() : unusual(item, material);
        return unusual.isEmpty() ? Outcome.ok(Optional.of(material)) : new Outcome.Refused<>(unusual);
    }

    /** Nothing was typed of a lot that has none. */
    static Outcome<Optional<OwnMaterial>> nothing(ItemSaid item) {
        return Outcome.refused(new Problem(
                figures(item).stream().findFirst().orElse(""),
                "no figure was typed",
                "copy at least one from the paper, or keep the paper itself with the lot's documents"));
    }

    private Outcome<WrittenFigure> figure(String name) {
        String unit = unit(name);
        return WrittenFigure.parse(text(name))
                .then(with -> with.unit().isEmpty() || with.unit().equals(unit)
                        ? Outcome.ok(with.figure())
                        : Outcome.refused("'" + with.unit() + "' is not the unit used here", "write it in " + unit));
    }

    private static OwnMaterial material(ItemSaid item, Map<String, WrittenFigure> read, String source) {
        String key = item.identity().materialKey().orElseThrow();
        Optional<OwnMaterial.Strength> strength = alkali(item)
                .flatMap(alkali ->
                        Optional.ofNullable(read.get(PURITY)).map(pure -> new OwnMaterial.Strength(pure, alkali)));
        return OwnMaterial.certified(
                key,
                strength.isPresent() ? OwnMaterial.LYE : "",
                new OwnMaterial.Certified(
                        Optional.ofNullable(read.get(SV)),
                        Optional.ofNullable(read.get(AV)),
                        Optional.ofNullable(read.get(IV)),
                        Optional.ofNullable(read.get(WATER)),
                        strength),
                source);
    }

    private static Problem atItsField(Problem problem) {
        return new Problem(
                problem.path().equals(PublishedRange.STRENGTH) ? PURITY : problem.path(),
                problem.what(),
                problem.remedy());
    }

    /** Whether something is asked about once, and may be right. */
    static boolean asks(List<Problem> problems) {
        return problems.stream().anyMatch(problem -> problem.remedy().endsWith(TICK));
    }

    /** What is hardly meant is asked about once: a slip of the finger would cost a batch. */
    private static List<Problem> unusual(ItemSaid item, OwnMaterial read) {
        return CertificateRules.asked(item, read).stream()
                .map(CertificateForm::atItsField)
                .map(problem -> new Problem(problem.path(), problem.what(), problem.remedy() + TICK))
                .toList();
    }
}
