package lyewright.picture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lyewright.fill.CutPlan;
import lyewright.fill.Fill;
import lyewright.fill.Mould;
import lyewright.fill.Shape;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.MakingSheet;
import lyewright.material.Tables;

/** Sheets to draw, of formulas given as text. */
final class Sheets {

    /** A kitchen balance and a fine one, so that a gram of soap can be weighed too. */
    static final Equipment FINE = Equipment.parseBalances("kitchen:500kg:1g,fine:500g:0.1g,gem:10g:0.001g")
            .orThrow();

    private Sheets() {}

    static Formula formula(String text) {
        return FormulaFile.read(text)
                .formula()
                .orElseThrow(() -> new IllegalArgumentException(
                        FormulaFile.read(text).problems().toString()));
    }

    static ResolvedFormula resolved(String text) {
        return ResolvedFormula.of(formula(text), Tables.bundled(), Purities.ASSUMED)
                .orThrow();
    }

    static MakingSheet of(String text, Fill fill) {
        return MakingSheet.of(resolved(text), fill, FINE).orThrow();
    }

    /** In a loaf of 300 x 80 x 65 mm that is filled and cut. */
    static MakingSheet inLoaf(String text) {
        return of(
                text,
                full(
                        Shape.parseLoaf("300x80x65mm").orThrow(),
                        CutPlan.parse("25mm").orThrow().losing(1, 5, 3)));
    }

    static Fill full(Shape shape, CutPlan cut) {
        return new Fill(
                new Fill.FullMould(),
                new Mould(Optional.of(shape), Optional.empty(), Optional.empty()),
                Optional.ofNullable(cut),
                0);
    }

    /** The demo workshop's own formulas, at the root of the project. */
    static List<Path> examples() {
        try (Stream<Path> files = Files.list(Path.of("..", "examples"))) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
