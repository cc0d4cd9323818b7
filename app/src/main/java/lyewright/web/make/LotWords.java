package lyewright.web.make;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lyewright.formula.OwnMaterial;
import lyewright.formula.WrittenFigure;
import lyewright.material.Tables;
import lyewright.stock.Allocation.PassedOver;
import lyewright.stock.Allocation.Taken;
import lyewright.stock.Cupboard;
import lyewright.stock.LotFigures;
import lyewright.stock.MadeHere;
import lyewright.words.Dates;
import lyewright.words.Figures;
import lyewright.words.Labelled;
import lyewright.words.Sentences;
import lyewright.words.UnitsShown;

/** Which lots, in words. */
final class LotWords {

    private static final double MILLIGRAMS = 1000;

    private final UnitsShown units;

    LotWords(UnitsShown units) {
        this.units = units;
    }

    String mass(long milligrams) {
        return units.stocked(milligrams / MILLIGRAMS);
    }

    /** What is taken of a material, what is short, and what is left alone. */
    String taken(Cupboard.Line line) {
        List<String> lots = new ArrayList<>();
        for (Taken taken : line.allocation().taken()) {
            lots.add(ofLot(taken)
                    + taken.lot()
                            .bestBefore()
                            .map(day -> " (best before " + Dates.day(day) + ")")
                            .orElse(""));
        }
        isShort(line).ifPresent(lots::add);
        for (PassedOver over : line.allocation().passedOver()) {
            lots.add("left alone: lot " + over.lot().code() + ", " + why(over));
        }
        return String.join("; ", lots);
    }

    private String ofLot(Taken taken) {
        return mass(taken.amount()) + " of lot " + taken.lot().code();
    }

    private Optional<String> isShort(Cupboard.Line line) {
        return Optional.of(line.allocation().shortBy())
                .filter(lacking -> lacking > 0)
                .map(lacking -> mass(lacking) + " short");
    }

    private static String why(PassedOver over) {
        return switch (over.why()) {
            case QUARANTINE -> "in quarantine";
            case REFUSED -> "refused";
            case EXPIRED -> "past its best before";
            case LEFT_OUT -> "as chosen";
            case OTHER_KIND -> over.lot().alkali() ? "which is lye or alkali" : "which is no alkali";
        };
    }

    /** For paper: each material of the cupboard with the lots it is taken from. */
    List<Labelled> onPaper(Cupboard cupboard) {
        if (cupboard.lines().stream().noneMatch(Cupboard.Line::known)) {
            return List.of();
        }
        return cupboard.lines().stream()
                .map(line -> new Labelled(
                        line.need().name(),
                        line.known()
                                ? Stream.concat(
                                                line.allocation().taken().stream()
                                                        .map(this::ofLot),
                                                isShort(line).stream())
                                        .collect(Collectors.joining(", "))
                                : "not known to the cupboard"))
                .toList();
    }

    /** What certificates say of lots that go in together; nothing to say of one lot alone. */
    static Optional<String> mixed(Cupboard.Line line, LotFigures figures) {
        Optional<OwnMaterial> mixed =
                Optional.ofNullable(figures.materials().get(line.need().key()));
        if (mixed.isEmpty() || line.allocation().taken().size() < 2) {
            return Optional.empty();
        }
        OwnMaterial own = mixed.get();
        List<String> values = new ArrayList<>();
        add(values, "saponification value", own.saponificationValue(), "mg KOH/g");
        MadeHere.saponificationValue(own, Tables.bundled())
                .ifPresent(value -> values.add("saponification value " + Figures.fixed(value.middle(), 1) + " ± "
                        + Figures.fixed((value.high() - value.low()) / 2, 1) + " mg KOH/g"));
        add(values, "acid value", own.acidValue(), "mg KOH/g");
        add(values, "iodine value", own.iodineValue(), "g/100 g");
        add(values, "water", own.water(), "%");
        add(values, "purity", own.strength().map(OwnMaterial.Strength::pure), "%");
        List<String> missing = figures.missing().getOrDefault(line.need().key(), List.of());
        String rest = missing.isEmpty()
                ? ""
                : "; not every certificate says its " + Sentences.row(missing) + ", so the tables' counts";
        return values.isEmpty() && missing.isEmpty()
                ? Optional.empty()
                : Optional.of("Mixed by mass: " + (values.isEmpty() ? "nothing both say" : String.join(", ", values))
                        + rest + ".");
    }

    private static void add(List<String> values, String name, Optional<WrittenFigure> figure, String unit) {
        figure.ifPresent(said -> values.add(name + " " + Figures.shown(said) + " " + unit));
    }

    /** Lots that are taken and have no certificate, by their codes. */
    static List<String> without(Cupboard.Line line, Map<String, OwnMaterial> certificates) {
        return line.allocation().taken().stream()
                .filter(part -> !certificates.containsKey(part.lot().id()))
                .map(part -> part.lot().code())
                .toList();
    }

    /** Which of several lots have no certificate, so that those of the others do not count; nothing where none has one. */
    static Optional<String> halfCertified(Cupboard.Line line, Map<String, OwnMaterial> certificates) {
        List<String> without = without(line, certificates);
        return without.isEmpty() || without.size() == line.allocation().taken().size()
                ? Optional.empty()
                : Optional.of((without.size() == 1 ? "Lot " : "Lots ") + Sentences.row(without)
                        + (without.size() == 1 ? " has" : " have")
                        + " no certificate, so the tables' figures count for all of it.");
    }
}
