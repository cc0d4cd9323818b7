package lyewright.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lyewright.fill.CutPlan;
import lyewright.fill.Fill;
import lyewright.fill.Mould;
import lyewright.fill.Shape;
import lyewright.formula.FormulaFile;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.MakingSheet;
import lyewright.material.Tables;
import lyewright.words.UnitsShown;

/** Sheets to print; their formulas are invented. */
final class Sheets {

    /** Ounces on the big balance, hundredths of a gram on the small one, jugs that are not tared. */
    static final Equipment OUNCES = Equipment.parseBalances("counter:10lb:0.05oz,fine:200g:0.01g")
            .orThrow()
            .withVessels("lye jug:312g,oil pot:1480g")
            .orThrow();

    /** One balance for everything. */
    static final Equipment COARSE = Equipment.parseBalances("shop:20kg:5g").orThrow();

    /** A loaf cut into bars. */
    static final Fill LOAF = new Fill(
            new Fill.FullMould(),
            new Mould(Optional.of(Shape.parseLoaf("300x80x65mm").orThrow()), Optional.empty(), Optional.empty()),
            Optional.of(CutPlan.parse("25mm").orThrow().losing(1, 0, 0)),
            0.02);

    /** More alkali than the oils can take. */
    static final String CAUSTIC = """
            recipe: Too Much
            oils: {olive-virgin: 650 g, coconut: 250 g, castor: 100 g}
            alkali: {sodium: 190 g}
            water: 380 g
            """;

    private Sheets() {}

    static MakingSheet of(String formula, Fill fill, Equipment equipment) {
        FormulaFile.Read read = FormulaFile.read(formula.getBytes(StandardCharsets.UTF_8));
        ResolvedFormula resolved = ResolvedFormula.of(
                        read.formula()
                                .orElseThrow(() -> new IllegalArgumentException(
                                        read.problems().toString())),
                        Tables.bundled(),
                        Purities.ASSUMED)
                .orThrow();
        return MakingSheet.of(resolved, fill, equipment).orThrow();
    }

    static MakingSheet of(Path file, Fill fill, Equipment equipment) {
        try {
            return of(Files.readString(file), fill, equipment);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static MakingSheet example(String name) {
        return of(folder().resolve(name + ".yaml"), Fill.mouldMass(1500), Equipment.USUAL);
    }

    static MakingSheet caustic() {
        return of(CAUSTIC, Fill.AS_WRITTEN, Equipment.USUAL);
    }

    /** The demo workshop's own, at the root of the project. */
    static List<Path> examples() {
        try (Stream<Path> files = Files.list(folder())) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path folder() {
        return Path.of("..", "examples").toAbsolutePath().normalize();
    }

    static PaperOrder order(PaperSize size) {
        return order(size, UnitsShown.METRIC);
    }

    static PaperOrder order(PaperSize size, UnitsShown units) {
        return new PaperOrder(
                size, "Gannet Stair Soap", "", "", LocalDate.of(2026, 11, 25), units, "the ten-inch loaf");
    }

    static PaperOrder titled(String title) {
        return new PaperOrder(
                PaperSize.A4, "Gannet Stair Soap", title, "3", LocalDate.of(2026, 11, 25), UnitsShown.METRIC, "");
    }
}
