package lyewright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Formulas to try commands with; invented. */
final class Recipes {

    /** A salt bar with clay in one of two portions and a fading pour: everything a sheet can show. */
    static final String SALT_BAR = """
            recipe: Tideline
            version: 3
            use: sale
            oils:
              coconut: 80 %
              olive-virgin: 12 %
              castor: rest
            alkali: sodium
            superfat: 18 %
            water: 34 % lye
            process: {make: cold, oils: 38 C, lye: 38 C, oven: 55 C then off, pour: fade plain into kelp in 7}
            additions:
              - of: green-clay
                amount: 12 g per kg portion oils
                stage: portion kelp
                disperse: {in: water, ratio: 3 to 1, ahead: 1 h}
              - of: rosemary-oil
                amount: 2.2 % of oils
                stage: every portion
              - of: sea-salt
                amount: 60 % of oils
                stage: every portion
            portions:
              plain: 60 %
              kelp: rest
            """;

    /** An ordinary bar in percent. */
    static final String PLAIN = """
            recipe: Plain
            oils:
              coconut: 25 %
              olive-virgin: 65 %
              castor: 10 %
            alkali: sodium
            superfat: 6 %
            water: 32 % lye
            """;

    /** From a notebook: grams, with the alkali given. */
    static final String NOTEBOOK = """
            recipe: Notebook
            oils:
              olive-virgin: 650 g
              coconut: 250 g
              castor: 100 g
            alkali: {sodium: 138 g}
            water: 280 g
            """;

    private Recipes() {}

    static Path write(Path folder, String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The demo workshop's own, at the root of the project. */
    static List<Path> examples() {
        Path folder = Path.of("..", "examples").toAbsolutePath().normalize();
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
