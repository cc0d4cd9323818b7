package lyewright.records.store;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import lyewright.measure.Length;
import lyewright.measure.LengthUnit;
import lyewright.measure.MassUnit;
import lyewright.measure.Volume;
import lyewright.measure.VolumeUnit;
import lyewright.measure.WrittenMass;
import org.jdbi.v3.core.statement.Update;

/**
 * Typed quantities as they are kept: whole milligrams, micrometres or microlitres, and the unit beside them. Read back they are what
 * was typed, to a digit less than the whole figure could tell: a sixteenth of an inch is 0.0625 in again.
 */
public final class Typing {

    private static final BigDecimal MILLIGRAMS = new BigDecimal(1000);

    private Typing() {}

    /** Binds {@code name_milligrams} and {@code name_unit}. */
    public static void bindMass(Update update, String name, Optional<WrittenMass> mass) {
        update.bind(name + "_milligrams", mass.map(Typing::milligrams).orElse(null))
                .bind(name + "_unit", mass.map(m -> m.unit().symbol()).orElse(null));
    }

    /** Binds {@code name_micrometres} and {@code name_unit}. */
    public static void bindLength(Update update, String name, Optional<Length> length) {
        update.bind(name + "_micrometres", length.map(Typing::micrometres).orElse(null))
                .bind(name + "_unit", length.map(l -> l.unit().symbol()).orElse(null));
    }

    /** Binds {@code name_microlitres} and {@code name_unit}. */
    public static void bindVolume(Update update, String name, Optional<Volume> volume) {
        update.bind(name + "_microlitres", volume.map(Typing::microlitres).orElse(null))
                .bind(name + "_unit", volume.map(v -> v.unit().symbol()).orElse(null));
    }

    /** A mass in whole milligrams. */
    public static long milligrams(WrittenMass mass) {
        return whole(mass.exactGrams().multiply(MILLIGRAMS));
    }

    /** A length in whole micrometres. */
    public static long micrometres(Length length) {
        return whole(length.value().multiply(micrometres(length.unit())));
    }

    /** A volume in whole microlitres. */
    public static long microlitres(Volume volume) {
        return whole(volume.value().multiply(microlitres(volume.unit())));
    }

    private static long whole(BigDecimal figure) {
        return figure.setScale(0, RoundingMode.HALF_UP).longValueExact();
    }

    private static BigDecimal micrometres(LengthUnit unit) {
        return BigDecimal.valueOf(unit.millimetres()).multiply(BigDecimal.valueOf(1000));
    }

    private static BigDecimal microlitres(VolumeUnit unit) {
        return BigDecimal.valueOf(unit.millilitres()).multiply(BigDecimal.valueOf(1000));
    }

    /** Reads {@code name_milligrams} and {@code name_unit}. */
    public static Optional<WrittenMass> mass(ResultSet row, String name) throws SQLException {
        long milligrams = row.getLong(name + "_milligrams");
        if (row.wasNull()) {
            return Optional.empty();
        }
        MassUnit unit = unit(MassUnit.values(), row.getString(name + "_unit"));
        BigDecimal size = unit.grams().multiply(MILLIGRAMS);
        return Optional.of(new WrittenMass(typed(milligrams, size, digits(unit)), unit));
    }

    /** Reads {@code name_micrometres} and {@code name_unit}. */
    public static Optional<Length> length(ResultSet row, String name) throws SQLException {
        long micrometres = row.getLong(name + "_micrometres");
        if (row.wasNull()) {
            return Optional.empty();
        }
        LengthUnit unit = unit(LengthUnit.values(), row.getString(name + "_unit"));
        int digits = unit == LengthUnit.MILLIMETRE ? 3 : 4;
        return Optional.of(new Length(typed(micrometres, micrometres(unit), digits), unit));
    }

    /** Reads {@code name_microlitres} and {@code name_unit}. */
    public static Optional<Volume> volume(ResultSet row, String name) throws SQLException {
        long microlitres = row.getLong(name + "_microlitres");
        if (row.wasNull()) {
            return Optional.empty();
        }
        VolumeUnit unit = unit(VolumeUnit.values(), row.getString(name + "_unit"));
        return Optional.of(new Volume(typed(microlitres, microlitres(unit), unit == VolumeUnit.LITRE ? 6 : 3), unit));
    }

    private static int digits(MassUnit unit) {
        return switch (unit) {
            case MILLIGRAM -> 0;
            case GRAM -> 3;
            case KILOGRAM -> 6;
            case OUNCE -> 4;
            case POUND -> 5;
        };
    }

    private static BigDecimal typed(long whole, BigDecimal unit, int digits) {
        BigDecimal value = BigDecimal.valueOf(whole)
                .divide(unit, digits, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return value.scale() < 0 ? value.setScale(0) : value;
    }

    private static <U extends Enum<U>> U unit(U[] units, String symbol) {
        for (U unit : units) {
            if (symbolOf(unit).equals(symbol)) {
                return unit;
            }
        }
        throw new IllegalStateException("'" + symbol + "' is no unit that is kept");
    }

    private static String symbolOf(Enum<?> unit) {
        if (unit instanceof MassUnit mass) {
            return mass.symbol();
        }
        return unit instanceof LengthUnit length ? length.symbol() : ((VolumeUnit) unit).symbol();
    }
}
