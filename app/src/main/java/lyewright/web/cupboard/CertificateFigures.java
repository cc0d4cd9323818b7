package lyewright.web.cupboard;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.OwnMaterial;
import lyewright.formula.WrittenFigure;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.PublishedRange;
import lyewright.web.cupboard.ItemPage.Fact;
import lyewright.words.Sentences;

/** The figures of a lot's certificate as they are kept, for who reads them. */
final class CertificateFigures {

    private CertificateFigures() {}

    /** Each with its doubt, and whether it lies within what was published. */
    static List<Fact> of(ItemSaid item, Optional<OwnMaterial> certificate) {
        Map<String, WrittenFigure> said = certificate.map(CertificateForm::said).orElse(Map.of());
        return CertificateForm.figures(item).stream()
                .flatMap(name -> Optional.ofNullable(said.get(name)).stream()
                        .map(figure -> new Fact(Sentences.upperFirst(name), says(item, name, figure))))
                .toList();
    }

    private static String says(ItemSaid item, String name, WrittenFigure figure) {
        String unit = CertificateForm.unit(name);
        return figure + " " + unit + " (" + doubt(figure.form()) + ")"
                + CertificateForm.published(item, name)
                        .map(published -> "; " + (PublishedRange.isOutside(figure, published) ? "outside" : "within")
                                + " what was published, " + PublishedRange.words(published) + " " + unit)
                        .orElse("");
    }

    private static String doubt(WrittenFigure.Form form) {
        return switch (form) {
            case PLUS_MINUS -> "right in 19 cases of 20";
            case TO -> "anywhere between the two";
            case EXACT -> "no doubt is stated";
        };
    }
}
