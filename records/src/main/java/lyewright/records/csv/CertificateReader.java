package lyewright.records.csv;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lyewright.formula.FormulaFile;
import lyewright.formula.OwnMaterial;
import lyewright.formula.OwnMaterial.BlendPart;
import lyewright.formula.OwnMaterial.Certified;
import lyewright.formula.WrittenFigure;
import lyewright.material.Alkali;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.stock.CertificateSaid;

/** What a row says of a lot's certificate: figure by figure, or whole as files had it before there were columns for it. */
final class CertificateReader {

    private static final String KOH = "mg KOH/g";
    private static final String IODINE = "g/100 g";
    private static final String PERCENT = "%";
    private static final Problem ALONE = new Problem(
            "",
            "it stands beside no figure of a certificate, so it is not kept",
            "write a figure, or keep the paper with the lot's documents");

    private final CellReader cells;
    private final DecimalSign decimal;

    CertificateReader(CellReader cells, DecimalSign decimal) {
        this.cells = cells;
        this.decimal = decimal;
    }

    /** What the columns say; empty where they say nothing. */
    Optional<CertificateSaid> inColumns() {
        Certified figures = new Certified(
                figure(Meaning.SV, Meaning.SV_UNCERTAINTY, KOH),
                figure(Meaning.AV, Meaning.AV_UNCERTAINTY, KOH),
                figure(Meaning.IODINE, Meaning.IODINE_UNCERTAINTY, IODINE),
                figure(Meaning.WATER, Meaning.WATER_UNCERTAINTY, PERCENT),
                Optional.empty());
        Optional<WrittenFigure> purity = figure(Meaning.PURITY, Meaning.PURITY_UNCERTAINTY, PERCENT);
        Optional<Alkali> alkali = cells.read(Meaning.PURITY_OF, CertificateReader::alkali);
        List<BlendPart> oils = cells.read(Meaning.MADE_OF, FigureCell::parts).orElse(List.of());
        String source = cells.line(Meaning.CERTIFICATE_SOURCE);
        if (figures.equals(Certified.NOTHING) && purity.isEmpty() && oils.isEmpty()) {
            if (!source.isEmpty() && cells.text(Meaning.CERTIFICATE).isEmpty()) {
                cells.note(Meaning.CERTIFICATE_SOURCE, ALONE);
            }
            return Optional.empty();
        }
        if (!cells.text(Meaning.CERTIFICATE).isEmpty()) {
            cells.add(
                    Meaning.CERTIFICATE,
                    new Problem("", "what the certificate says is said twice", "leave this one empty"));
        }
        return Optional.of(new CertificateSaid(figures, purity, alkali, oils, source));
    }

    /** A whole one, as a formula's text. */
    Optional<OwnMaterial> whole() {
        return cells.read(Meaning.CERTIFICATE, CertificateReader::formula);
    }

    private static Outcome<OwnMaterial> formula(String text) {
        return FormulaFile.read(text)
                .formula()
                .filter(formula -> formula.materials().size() == 1)
                .map(formula -> Outcome.ok(formula.materials().get(0)))
                .orElseGet(() -> Outcome.refused(
                        "it is no certificate as files had it once, a formula's text",
                        "write its figures into columns of their own, such as sv_mg_koh_g"));
    }

    private static Outcome<Alkali> alkali(String text) {
        return Alkali.ofKey(text.toLowerCase(Locale.ROOT))
                .map(Outcome::ok)
                .orElseGet(() -> Outcome.refused("'" + CellReader.shown(text) + "' is no alkali", "write naoh or koh"));
    }

    private Optional<WrittenFigure> figure(Meaning value, Meaning uncertainty, String unit) {
        Optional<WrittenFigure> figure = cells.read(value, text -> FigureCell.read(text, decimal, unit));
        Optional<WrittenFigure> half = cells.read(uncertainty, text -> FigureCell.uncertainty(text, decimal, unit));
        if (half.isEmpty()) {
            return figure;
        }
        if (figure.isEmpty() && cells.text(value).isEmpty()) {
            cells.add(uncertainty, new Problem("", "nothing says of which figure that is", "write the figure too"));
        }
        if (figure.filter(it -> it.form() != WrittenFigure.Form.EXACT).isPresent()) {
            cells.add(uncertainty, new Problem("", "how sure it is stands beside the figure already", "leave one out"));
        } else if (figure.filter(it -> it.first().compareTo(half.get().first()) < 0)
                .isPresent()) {
            cells.add(uncertainty, new Problem("", "it is more than the figure itself", "look at the two again"));
        }
        return figure.map(it -> new WrittenFigure(
                it.first(), WrittenFigure.Form.PLUS_MINUS, half.get().first()));
    }
}
