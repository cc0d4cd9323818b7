package lyewright.web.stores;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.formula.OwnMaterial;
import lyewright.formula.WrittenFigure;
import lyewright.material.Tables;
import lyewright.records.material.KeptMaterial;
import lyewright.words.Figures;

/** A material of the maker's own in a line. */
final class MaterialWritten {

    private MaterialWritten() {}

    static StoresPage.MaterialRow row(KeptMaterial kept) {
        OwnMaterial own = kept.material();
        return new StoresPage.MaterialRow(
                kept.id(),
                own.key(),
                MaterialKind.of(own.kind()).map(MaterialKind::label).orElse(own.kind()),
                figures(own),
                own.source(),
                Tables.bundled().has(own.key()));
    }

    private static String figures(OwnMaterial own) {
        List<String> said = new ArrayList<>();
        own.saponificationValue().ifPresent(value -> said.add(Figures.shown(value) + " mg KOH/g"));
        own.strength()
                .ifPresent(strength -> said.add(Figures.shown(strength.pure()) + " % "
                        + strength.alkali().word()));
        if (!own.oils().isEmpty()) {
            said.add(own.oils().stream()
                    .map(part -> part.key() + " " + Figures.upTo(part.share().fraction() * 100, 2) + " %")
                    .collect(Collectors.joining(", ")));
        }
        figure(said, "acid value ", own.acidValue(), "");
        figure(said, "iodine value ", own.iodineValue(), "");
        figure(said, "water ", own.water(), " %");
        figure(said, "fat ", own.fat(), " %");
        figure(said, "sugar ", own.sugar(), " %");
        figure(said, "salt ", own.salt(), " %");
        own.acid().ifPresent(acid -> said.add(acid.share() + " % " + acid.name()));
        own.density().ifPresent(density -> said.add(density.toString()));
        return String.join("; ", said);
    }

    private static void figure(List<String> said, String label, Optional<WrittenFigure> figure, String unit) {
        figure.ifPresent(f -> said.add(label + Figures.shown(f) + unit));
    }
}
