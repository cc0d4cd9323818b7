package lyewright.records.csv;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import lyewright.formula.OwnMaterial;
import lyewright.formula.WrittenFigure;
import lyewright.records.csv.Sheet.Column;
import lyewright.records.stock.StockBook.Booked;

/** What a lot's certificate says, and what a lot was made of here, figure by figure. {@link CertificateReader} reads them. */
final class CertificateColumns {

    private static final String KOH = "mg KOH/g";
    private static final String PERCENT = "%";

    private CertificateColumns() {}

    static List<Column<Booked>> all() {
        return List.of(
                value(
                        Meaning.SV,
                        "saponification value by its certificate",
                        KOH,
                        "257.5",
                        OwnMaterial::saponificationValue),
                half(Meaning.SV_UNCERTAINTY, KOH, "1.5", OwnMaterial::saponificationValue),
                value(Meaning.AV, "acid value", KOH, "0.2", OwnMaterial::acidValue),
                half(Meaning.AV_UNCERTAINTY, KOH, "0.05", OwnMaterial::acidValue),
                value(Meaning.IODINE, "iodine value", "g/100 g", "9.5", OwnMaterial::iodineValue),
                half(Meaning.IODINE_UNCERTAINTY, "g/100 g", "0.5", OwnMaterial::iodineValue),
                value(Meaning.WATER, "water", PERCENT, "0.1", OwnMaterial::water),
                half(Meaning.WATER_UNCERTAINTY, PERCENT, "0.02", OwnMaterial::water),
                value(Meaning.PURITY, "pure alkali in an alkali or a lye", PERCENT, "98.6", CertificateColumns::purity),
                half(Meaning.PURITY_UNCERTAINTY, PERCENT, "0.4", CertificateColumns::purity),
                text(
                        Meaning.PURITY_OF,
                        "which alkali that is, naoh or koh",
                        "naoh",
                        own -> own.strength().map(it -> it.alkali().key()).orElse("")),
                text(Meaning.CERTIFICATE_SOURCE, "which certificate", "NQ-118 of 2026-11-20", OwnMaterial::source),
                text(
                        Meaning.MADE_OF,
                        "the oils of a premix that was made here, one on a line, as recipes call them, with their share",
                        "olive-virgin: 60 %",
                        CertificateColumns::madeOf));
    }

    private static Optional<WrittenFigure> purity(OwnMaterial own) {
        return own.strength().map(OwnMaterial.Strength::pure);
    }

    private static String madeOf(OwnMaterial own) {
        return own.oils().stream()
                .map(part -> part.key() + ": " + part.amount())
                .collect(Collectors.joining("\n"));
    }

    private static Column<Booked> text(
            Meaning says, String meaning, String example, Function<OwnMaterial, String> cell) {
        return Sheet.of(
                says.header(), meaning, example, it -> certificate(it).map(cell).orElse(""));
    }

    private static Column<Booked> value(
            Meaning says,
            String meaning,
            String unit,
            String example,
            Function<OwnMaterial, Optional<WrittenFigure>> figure) {
        return Sheet.in(
                says.header(),
                meaning + "; two numbers with 'to' between them where the paper gives a range",
                unit,
                example,
                it -> certificate(it).flatMap(figure).map(CertificateColumns::number));
    }

    private static Object number(WrittenFigure figure) {
        return figure.form() == WrittenFigure.Form.TO ? figure.toString() : figure.first();
    }

    private static Column<Booked> half(
            Meaning says, String unit, String example, Function<OwnMaterial, Optional<WrittenFigure>> figure) {
        return Sheet.in(
                says.header(),
                "the ± of the figure before it, half the width of what it is with 95 in 100 chances",
                unit,
                example,
                it -> certificate(it)
                        .flatMap(figure)
                        .filter(found -> found.form() == WrittenFigure.Form.PLUS_MINUS)
                        .map(WrittenFigure::second));
    }

    private static Optional<OwnMaterial> certificate(Booked lot) {
        return lot.lot().said().certificate();
    }
}
