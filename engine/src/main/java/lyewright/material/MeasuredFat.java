package lyewright.material;

import java.util.List;

/**
 * A fat whose fatty acids were measured fresh and which was then oxidised slowly and measured again: what an index reckoned
 * from fatty acids is held against. Not an oil that formulas are made of.
 *
 * @param name what it is called
 * @param oleic C18:1, percent of its fatty acids
 * @param linoleic C18:2, percent of its fatty acids
 * @param linolenic C18:3, percent of its fatty acids
 * @param iodineValue measured fresh, g iodine/100 g
 * @param peroxideValue measured after slow oxidation, meq/kg
 * @param source document and table
 */
public record MeasuredFat(
        String name,
        double oleic,
        double linoleic,
        double linolenic,
        double iodineValue,
        double peroxideValue,
        String source) {

    private static final class Bundled {
        static final List<MeasuredFat> FATS =
                CsvTable.rows("measured_fats.csv").stream().map(MeasuredFat::of).toList();
    }

    /**
     * The measured fats that come with this release, all of one paper.
     *
     * @return in the table's order
     */
    public static List<MeasuredFat> bundled() {
        return Bundled.FATS;
    }

    private static MeasuredFat of(CsvTable.Row row) {
        return new MeasuredFat(
                row.text("name"),
                row.number("oleic_percent"),
                row.number("linoleic_percent"),
                row.number("linolenic_percent"),
                row.number("iodine_value"),
                row.number("peroxide_meq_kg"),
                row.text("source"));
    }
}
