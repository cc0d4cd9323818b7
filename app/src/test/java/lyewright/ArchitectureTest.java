package lyewright;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The rooms of the house, the arrows between them, and what the engine keeps away from. */
class ArchitectureTest {

    /** The engine's rooms, lowest first: each may use any before it and none after it. */
    private static final List<String> ENGINE = List.of(
            "measure",
            "chain",
            "material",
            "formula",
            "stock",
            "chemistry",
            "fill",
            "uncertainty",
            "makingsheet",
            "why");

    private static final List<String> RECORDS = List.of("records");

    /** The application's rooms, lowest first. */
    private static final List<String> APP = List.of("words", "picture", "template", "print", "web", "cli", "app");

    private static final JavaClasses CODE = new ClassFileImporter()
            .withImportOption(location -> !location.contains("/test-classes/"))
            .importPackages("lyewright");

    private static final JavaClasses ENGINE_CODE = CODE.that(resideInAnyPackage(patterns(ENGINE)));

    // Rooms and arrows

    @Test
    void every_room_named_in_a_rule_exists() {
        assertThat(roomsFound()).containsAll(roomsNamed());
    }

    @Test
    void every_room_that_exists_is_named_in_a_rule() {
        assertThat(roomsNamed()).containsAll(roomsFound());
    }

    static List<String> roomsWithOthersAbove() {
        return ENGINE.subList(0, ENGINE.size() - 1);
    }

    @ParameterizedTest
    @MethodSource("roomsWithOthersAbove")
    void a_room_of_the_engine_uses_none_above_it(String room) {
        List<String> above = ENGINE.subList(ENGINE.indexOf(room) + 1, ENGINE.size());
        neverUse(List.of(room), above);
    }

    @Test
    void the_engine_uses_neither_the_records_nor_the_application() {
        neverUse(ENGINE, RECORDS);
        neverUse(ENGINE, APP);
    }

    static List<String> roomsOfTheApplicationWithOthersAbove() {
        return APP.stream()
                .filter(room -> !room.equals("template") && !room.equals("app"))
                .toList();
    }

    /** Templates are below what runs them and name the page models of rooms above. */
    @ParameterizedTest
    @MethodSource("roomsOfTheApplicationWithOthersAbove")
    void a_room_of_the_application_uses_none_above_it(String room) {
        neverUse(List.of(room), APP.subList(APP.indexOf(room) + 1, APP.size()));
    }

    @Test
    void the_records_do_not_use_the_application() {
        neverUse(RECORDS, APP);
    }

    // The engine: values in, values out, the same ones every time

    @Test
    void the_engine_depends_on_few_libraries() {
        classes()
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(
                        "java..",
                        "lyewright..",
                        "org.snakeyaml.engine..",
                        "org.apache.commons.csv..",
                        "org.apache.commons.rng..",
                        "org.jspecify.."))
                .check(ENGINE_CODE);
    }

    @Test
    void the_engine_opens_no_file_no_socket_and_no_database() {
        neverDependOn(resideInAnyPackage("java.sql..", "java.net..", "java.nio.file..", "java.nio.channels..")
                .or(oneOf(
                        "java.io.File",
                        "java.io.FileInputStream",
                        "java.io.FileOutputStream",
                        "java.io.FileReader",
                        "java.io.FileWriter",
                        "java.io.RandomAccessFile")));
    }

    @Test
    void the_engine_reads_no_clock() {
        neverDependOn(oneOf("java.time.Clock", "java.util.Date", "java.util.Calendar", "java.util.GregorianCalendar"));
        neverTouch(member(resideInAnyPackage("java.time.."), "now"));
        neverTouch(member(oneOf("java.lang.System"), "currentTimeMillis", "nanoTime"));
    }

    @Test
    void the_engine_draws_no_number_that_a_seed_does_not_settle() {
        neverDependOn(oneOf("java.util.concurrent.ThreadLocalRandom", "java.security.SecureRandom"));
        neverTouch(member(oneOf("java.lang.Math", "java.lang.StrictMath"), "random"));
        neverTouch(member(oneOf("java.util.UUID"), "randomUUID"));
        neverTouch(signature("java.util.Random.<init>()"));
        neverTouch(signature("java.util.SplittableRandom.<init>()"));
        neverTouch(signature("java.util.Collections.shuffle(java.util.List)"));
    }

    @Test
    void the_engine_prints_nothing_and_asks_nothing_of_the_machine() {
        neverTouch(member(oneOf("java.lang.System"), "out", "err", "in", "getenv", "getProperty", "exit"));
        neverTouch(member(resideInAnyPackage("java.lang.."), "printStackTrace"));
        neverTouch(member(oneOf("java.util.Locale", "java.util.TimeZone"), "getDefault"));
        neverTouch(member(oneOf("java.time.ZoneId"), "systemDefault"));
    }

    // The sources

    @Test
    void every_package_says_what_lives_in_it() throws IOException {
        List<Path> packages = packages();
        assertThat(packages).hasSizeGreaterThanOrEqualTo(roomsNamed().size());
        for (Path folder : packages) {
            assertThat(prose(folder.resolve("package-info.java")))
                    .as("%s: what lives here, what it may use, what may be changed freely", folder)
                    .hasSizeGreaterThan(80);
        }
    }

    private static void neverUse(List<String> rooms, List<String> others) {
        noClasses()
                .that()
                .resideInAnyPackage(patterns(rooms))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(patterns(others))
                .check(CODE);
    }

    private static void neverDependOn(DescribedPredicate<JavaClass> types) {
        noClasses().should().dependOnClassesThat(types).check(ENGINE_CODE);
    }

    private static void neverTouch(DescribedPredicate<JavaAccess<?>> what) {
        noClasses().should().accessTargetWhere(what).check(ENGINE_CODE);
    }

    private static DescribedPredicate<JavaClass> oneOf(String... types) {
        return describe("are one of " + List.of(types), type -> List.of(types).contains(type.getName()));
    }

    /** Fields and methods by their names, called or referred to. */
    private static DescribedPredicate<JavaAccess<?>> member(DescribedPredicate<JavaClass> owner, String... names) {
        return describe(
                List.of(names) + " of classes that " + owner.getDescription(),
                access -> owner.test(access.getTargetOwner()) && List.of(names).contains(access.getName()));
    }

    private static DescribedPredicate<JavaAccess<?>> signature(String fullName) {
        return describe(fullName, access -> access.getTarget().getFullName().equals(fullName));
    }

    private static String[] patterns(List<String> rooms) {
        return rooms.stream().map(room -> "lyewright." + room + "..").toArray(String[]::new);
    }

    private static Set<String> roomsNamed() {
        return Stream.of(ENGINE, RECORDS, APP).flatMap(List::stream).collect(Collectors.toCollection(TreeSet::new));
    }

    /** The second part of each package's name; a class in the root package itself would be of the room "lyewright". */
    private static Set<String> roomsFound() {
        return CODE.stream()
                .map(type -> type.getPackageName().split("\\."))
                .map(parts -> parts[Math.min(1, parts.length - 1)])
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Folders with Java sources, of every module; tests run in their module's folder. */
    private static List<Path> packages() throws IOException {
        List<Path> packages = new ArrayList<>();
        for (String module : List.of("engine", "records", "app", "benchmarks")) {
            Path sources = Path.of("..", module, "src", "main", "java");
            if (Files.isDirectory(sources)) {
                packages.addAll(foldersWithSources(sources));
            }
        }
        return packages;
    }

    private static List<Path> foldersWithSources(Path sources) throws IOException {
        try (Stream<Path> files = Files.walk(sources)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .map(Path::getParent)
                    .distinct()
                    .toList();
        }
    }

    /** The Javadoc of a package without its marks; empty where there is none. */
    private static String prose(Path packageInfo) throws IOException {
        if (!Files.exists(packageInfo)) {
            return "";
        }
        String source = Files.readString(packageInfo);
        String javadoc = source.contains("/**") ? source.substring(source.indexOf("/**"), source.indexOf("*/")) : "";
        return Arrays.stream(javadoc.replaceAll("<[^>]*>|[/*]", " ").split("\\s+"))
                .collect(Collectors.joining(" "))
                .strip();
    }
}
