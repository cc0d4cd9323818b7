package lyewright.web.recipe;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import lyewright.formula.Formula;

/** The valid formulas of every shape that the engine's own tests make; its tests are built before ours. */
final class RandomFormulas {

    private static final Path ENGINE_TESTS = Path.of("..", "engine", "target", "test-classes");

    private static final Method OF = of();

    private RandomFormulas() {}

    private static Method of() {
        if (!Files.isDirectory(ENGINE_TESTS)) {
            throw new IllegalStateException("build the engine's tests first: mvn -pl engine,records,app test");
        }
        try {
            URL[] classes = {ENGINE_TESTS.toUri().toURL()};
            return new URLClassLoader(classes, RandomFormulas.class.getClassLoader())
                    .loadClass("lyewright.formula.RandomFormulas")
                    .getMethod("of", long.class);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ReflectiveOperationException e) {
            throw new LinkageError("the engine's tests have no formulas", e);
        }
    }

    static Formula of(long seed) {
        try {
            return (Formula) OF.invoke(null, seed);
        } catch (ReflectiveOperationException e) {
            throw new LinkageError("seed " + seed, e);
        }
    }
}
