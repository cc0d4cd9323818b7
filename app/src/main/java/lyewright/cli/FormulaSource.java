package lyewright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.formula.Places;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;

/**
 * A formula read from a file, and where each part of it stands there.
 *
 * @param typed the file's name as it was typed
 * @param formula what it says
 * @param places lines and columns of its parts
 */
record FormulaSource(String typed, Formula formula, Places places) {

    private static final int MOST_BYTES = 1 << 20;
    private static final String START = ":1:1";

    /**
     * Reads a file.
     *
     * @param typed its name as it was typed
     * @param folder the folder that relative names are in
     * @return the formula, or every problem with its place as it is printed
     */
    static Outcome<FormulaSource> read(String typed, Path folder) {
        return bytes(typed, folder).then(bytes -> {
            FormulaFile.Read read = FormulaFile.read(bytes);
            return read.formula().isPresent() && read.problems().isEmpty()
                    ? Outcome.ok(new FormulaSource(typed, read.formula().get(), read.places()))
                    : new Outcome.Refused<>(located(read.problems(), typed, read.places()));
        });
    }

    /** What is in a file, up to 1 MB. */
    static Outcome<byte[]> bytes(String typed, Path folder) {
        try {
            Path path = folder.resolve(typed);
            if (Files.isDirectory(path)) {
                return refused(typed, "is a folder", "name a formula file in it");
            }
            if (Files.size(path) > MOST_BYTES) {
                return tooBig(typed);
            }
            try (InputStream in = Files.newInputStream(path)) {
                // a device says it is empty and never ends
                byte[] bytes = in.readNBytes(MOST_BYTES + 1);
                return bytes.length > MOST_BYTES ? tooBig(typed) : Outcome.ok(bytes);
            }
        } catch (NoSuchFileException e) {
            return refused(typed, "there is no such file", "check its name and folder");
        } catch (AccessDeniedException e) {
            return refused(typed, "the file may not be read", "check its permissions");
        } catch (InvalidPathException e) {
            return refused(typed, "this is no file name", "check how it is written");
        } catch (IOException e) {
            return refused(typed, "the file cannot be read", "check that it is a file on a disk that works");
        }
    }

    private static Outcome<byte[]> tooBig(String typed) {
        return refused(
                typed, "the file is bigger than 1 MB", "a formula takes a few hundred lines: check that it is one");
    }

    private static Outcome<byte[]> refused(String typed, String what, String remedy) {
        return Outcome.refused(new Problem(typed + START, what, remedy));
    }

    /**
     * Looks the formula up.
     *
     * @param purities of the alkalis at hand
     * @return the resolved formula, or every problem with its place as it is printed
     */
    Outcome<ResolvedFormula> resolve(Purities purities) {
        Outcome<ResolvedFormula> resolved = ResolvedFormula.of(formula, Tables.bundled(), purities);
        return resolved instanceof Outcome.Ok ? resolved : new Outcome.Refused<>(located(resolved.problems()));
    }

    /**
     * Problems with their places as they are printed.
     *
     * @param problems problems whose paths are those of the formula
     * @return the same with {@code FILE:line:column} as their paths
     */
    List<Problem> located(List<Problem> problems) {
        return located(problems, typed, places);
    }

    private static List<Problem> located(List<Problem> problems, String typed, Places places) {
        return problems.stream()
                .map(problem -> {
                    Places.Place place = places.of(problem.path());
                    return new Problem(
                            typed + ":" + place.line() + ":" + place.column(), problem.what(), problem.remedy());
                })
                .toList();
    }
}
