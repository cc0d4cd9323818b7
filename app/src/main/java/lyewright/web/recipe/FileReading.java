package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lyewright.formula.FormulaFile;
import lyewright.formula.Places;
import lyewright.measure.Problem;

/** A formula that is typed as a file: everything that is wrong is said of the one field, with its line. */
final class FileReading {

    private FileReading() {}

    static FormRead read(String file) {
        FormulaFile.Read read = FormulaFile.read(file);
        List<Problem> located = new ArrayList<>();
        for (Problem problem : read.problems()) {
            Places.Place place = read.places().of(problem.path());
            located.add(new Problem(FormFields.FILE, "line " + place.line() + ": " + problem.what(), problem.remedy()));
        }
        // whatever is found wrong later is said of the file as a whole
        Map<String, String> places = Map.of();
        return new FormRead(read.formula(), located.isEmpty() ? Map.of() : Map.of(FormFields.FILE, located), places);
    }
}
