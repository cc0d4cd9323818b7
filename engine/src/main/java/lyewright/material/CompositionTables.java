package lyewright.material;

import java.util.List;
import lyewright.material.CsvTable.Row;

/** Reads what only the composition of a bar asks for: the salts of acids, and published grades of soap. */
final class CompositionTables {

    private CompositionTables() {}

    static List<AcidSalt> acidSalts() {
        return CsvTable.rows("acid_salts.csv").stream()
                .map(CompositionTables::acidSalt)
                .toList();
    }

    private static AcidSalt acidSalt(Row row) {
        return new AcidSalt(
                row.text("acid"),
                row.text("weighed_as"),
                row.text("fatty").equals("yes"),
                row.text("acid_label"),
                row.text("acid_inci"),
                row.text("sodium_salt"),
                row.text("sodium_inci"),
                row.text("potassium_salt"),
                row.text("potassium_inci"),
                row.text("source"));
    }

    static List<SoapGrade> soapGrades() {
        return CsvTable.rows("soap_grades.csv").stream()
                .map(row -> new SoapGrade(
                        row.text("standard"),
                        row.text("product"),
                        row.text("parameter"),
                        row.text("limit"),
                        row.text("unit"),
                        row.text("status"),
                        row.text("confidence")))
                .toList();
    }
}
