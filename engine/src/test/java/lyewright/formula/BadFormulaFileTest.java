package lyewright.formula;

import static lyewright.formula.FormulaTexts.NOTEBOOK;
import static lyewright.formula.FormulaTexts.PLAIN;
import static lyewright.formula.FormulaTexts.problem;
import static lyewright.formula.FormulaTexts.problems;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import lyewright.formula.Places.Place;
import lyewright.measure.Problem;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class BadFormulaFileTest {

    private static final Duration QUICK = Duration.ofSeconds(1);

    /** Reading the tables for the first time is not the file's doing. */
    @BeforeAll
    static void warm() {
        FormulaFile.read(PLAIN);
    }

    private static Arguments bad(
            String name, String text, String path, int line, int column, String what, String remedy) {
        return arguments(name, text, path, line, column, what, remedy);
    }

    private static String swap(String old, String now) {
        assertThat(PLAIN).contains(old);
        return PLAIN.replace(old, now);
    }

    private static String with(String lines) {
        return PLAIN + lines;
    }

    private static String addition(String lines) {
        return PLAIN + "additions:\n" + lines;
    }

    static Stream<Arguments> notAFormula() {
        return Stream.of(
                bad("an empty file", "", "", 1, 1, "the file is empty", "recipe:"),
                bad("a file of spaces", " \n\n", "", 1, 1, "the file is empty", "recipe:"),
                bad("a file of comments", "# one\n# two\n", "", 1, 1, "nothing in it but comments", "recipe:"),
                bad("an empty document", "---\n", "", 1, 1, "the file is empty", "recipe:"),
                bad("a bare word", "\n  Tideline\n", "", 2, 3, "'Tideline' is not a formula", "recipe:"),
                bad("a list", "# mine\n- coconut\n- olive\n", "", 2, 1, "is a list", "recipe:"),
                bad("a page of the web", "<html>\n<a b: c>\n", "", 2, 5, "not YAML", "own line"),
                bad("an open bracket", "recipe: {x\n", "", 2, 1, "a bracket is not closed", "close it"),
                bad("a missing comma", "recipe: {a: b c: d}\n", "", 1, 16, "comma is missing", "comma between"),
                bad("open quotes", "recipe: \"Tide\noils: 1\n", "", 3, 1, "the quotes opened at line 1", "close them"),
                bad("a tab for an indent", "oils:\n\tcoconut: 1\n", "", 2, 1, "a tab", "spaces"),
                bad("a text with an at sign", "recipe: @home\n", "", 1, 9, "begins with a sign", "quotes"),
                bad("a name in the wrong column", "recipe: x\n oils: y\n", "", 2, 6, "a colon where", "own line"),
                bad("a stray bracket", "recipe: x\n}\n", "", 2, 1, "does not fit the lines above", "indent"),
                bad("a stray word", "recipe: x\noils\nwater: 1\n", "", 3, 1, "no colon", "colon"),
                bad("a strange escape", "recipe: \"\\q\"\n", "", 1, 11, "backslash", "twice"),
                bad("a short escape", "recipe: \"\\uZZZZ\"\n", "", 1, 12, "backslash", "twice"),
                bad("a block on its sign's line", "notes: |x\n", "", 1, 9, "a block of text", "next line"),
                bad("two documents", PLAIN + "---\nrecipe: B\n", "", 9, 1, "more than one document", "one formula"),
                bad("an alias", "recipe: *a\n", "", 1, 9, "'*' refers", "write it out"),
                bad("an anchor", "recipe: &a b\n", "", 1, 9, "'&' marks", "take the mark out"),
                bad("an anchored group", "oils: &a {b: c}\n", "", 1, 7, "'&' marks", "take the mark out"),
                bad("a type", "recipe: !!str b\n", "", 1, 9, "'!' gives", "take the type out"),
                bad("a group with a type", "oils: !x {b: c}\n", "", 1, 7, "'!' gives", "take the type out"),
                bad("a list for a name", "? [a]\n: b\n", "", 1, 3, "a name cannot be a list", "one word"),
                bad("NUL", "recipe: a\u0000b\n", "", 1, 10, "control character (U+0000)", "UTF-8"),
                bad("a bell", "recipe: a\noils: \u0007\n", "", 2, 7, "control character (U+0007)", "take it out"),
                bad("a control character behind CR LF", "a: b\r\nc: \u0001\r\n", "", 2, 4, "U+0001", "take it out"),
                bad("a control character behind CR", "a: b\rc: \u0001\r", "", 2, 4, "U+0001", "take it out"),
                bad("a next-line character", "a: b\u0085c\n", "", 1, 5, "U+0085", "take it out"),
                bad("half a character", "recipe: 🧼\ud83d\n", "", 1, 10, "U+D83D", "take it out"),
                bad("a mark in the middle", "recipe: a\uFEFFb\n", "", 1, 10, "U+FEFF", "take it out"),
                bad("21 levels", "a: " + "[".repeat(20) + "]".repeat(20), "", 1, 23, "deeper than 20", "brackets"));
    }

    static Stream<Arguments> words() {
        return Stream.of(
                bad(
                        "an unknown word",
                        swap("superfat", "superfatt"),
                        "superfatt",
                        7,
                        1,
                        "'superfatt'",
                        "mean superfat?"),
                bad("a word like none", with("zzzzzzzz: 1\n"), "zzzzzzzz", 9, 1, "'zzzzzzzz'", "recipe, version"),
                bad(
                        "an unknown word in an addition",
                        addition("  - of: sea-salt\n    amont: 1 g\n    stage: trace\n"),
                        "additions.0.amont",
                        11,
                        5,
                        "'amont'",
                        "mean amount?"),
                bad(
                        "a word twice",
                        with("water: 30 % lye\n"),
                        "water",
                        9,
                        1,
                        "'water' stands twice, at line 8, column 1 and at line 9, column 1",
                        "take one"),
                bad(
                        "an oil twice",
                        swap("castor", "coconut"),
                        "oils.coconut",
                        5,
                        3,
                        "at line 3, column 3 and at line 5, column 3",
                        "take one"),
                bad("a value without a name", with("? \n: 5\n"), "", 1, 1, "without a name", "before the colon"),
                bad("no recipe", swap("recipe: Plain\n", ""), "recipe", 1, 1, "'recipe' is missing", "recipe:"),
                bad(
                        "an empty recipe",
                        swap("recipe: Plain", "recipe:"),
                        "recipe",
                        1,
                        1,
                        "has no value",
                        "take the line out"),
                bad("a recipe in quotes with nothing", swap("Plain", "\"\""), "recipe", 1, 9, "has no value", ""),
                bad("a recipe of two lines", swap("Plain", "\"a\\nb\""), "recipe", 1, 9, "line break", "one line"),
                bad(
                        "a recipe with a hidden control character",
                        swap("Plain", "\"a\\u0007b\""),
                        "recipe",
                        1,
                        9,
                        "control character",
                        "one line"),
                bad("a recipe with half a character", swap("Plain", "\"\\ud83d\""), "recipe", 1, 9, "control", ""),
                bad("a very long recipe", swap("Plain", "x".repeat(201)), "recipe", 1, 9, "longer than 200", ""),
                bad("a list for a recipe", swap("Plain", "[a]"), "recipe", 1, 1, "cannot be a list", "one value"),
                bad("a group for a recipe", swap("Plain", "{a: b}"), "recipe", 1, 1, "group of names", "one value"),
                bad("version 0", with("version: 0\n"), "version", 9, 10, "version 0", "from 1"),
                bad("a version in words", with("version: two\n"), "version", 9, 10, "'two'", "whole number"),
                bad("half a version", with("version: 1.5\n"), "version", 9, 10, "'1.5'", "whole number"),
                bad("a huge version", with("version: 9999999999\n"), "version", 9, 10, "'9999999999'", "whole number"),
                bad("an unknown use", with("use: gift\n"), "use", 9, 6, "'gift'", "own or sale"),
                bad("a yes for a use", with("use: no\n"), "use", 9, 6, "'no'", "own or sale"),
                bad(
                        "an unknown acid rule",
                        with("acids: ignore\n"),
                        "acids",
                        9,
                        8,
                        "'ignore'",
                        "compensate or as written"),
                bad(
                        "notes with a control character",
                        with("notes: \"a\\u0001\"\n"),
                        "notes",
                        9,
                        8,
                        "control",
                        "take it out"),
                bad("a list of notes", with("notes: [a, b]\n"), "notes", 9, 1, "cannot be a list", ""),
                bad("very long notes", with("notes: " + "x".repeat(20_001) + "\n"), "notes", 9, 8, "longer than", ""));
    }

    static Stream<Arguments> oilsAndAlkali() {
        return Stream.of(
                bad("oils short of 100", swap("65 %", "64.5 %"), "oils", 2, 1, "add up to 99.5 %", "100 %"),
                bad("oils over 100", swap("65 %", "65.0001 %"), "oils", 2, 1, "add up to 100.0001 %", "100 %"),
                bad("a negative oil", swap("65 %", "-65 %"), "oils.olive-virgin", 4, 17, "negative", "0 or more"),
                bad(
                        "no oils",
                        swap("  coconut: 30 %\n  olive-virgin: 65 %\n  castor: 5 %\n", ""),
                        "oils",
                        2,
                        1,
                        "there are no oils",
                        "at least one"),
                bad(
                        "oils in a list",
                        swap("oils:\n  coconut: 30 %\n  olive-virgin: 65 %\n  castor: 5 %", "oils: [coconut]"),
                        "oils",
                        2,
                        1,
                        "not a list",
                        "coconut: 80 %"),
                bad(
                        "oils in a word",
                        swap("oils:\n  coconut: 30 %\n  olive-virgin: 65 %\n  castor: 5 %", "oils: olive"),
                        "oils",
                        2,
                        7,
                        "not one value",
                        "coconut: 80 %"),
                bad(
                        "0 %",
                        swap("castor: 5 %", "castor: 0 %").replace("65", "70"),
                        "oils.castor",
                        5,
                        11,
                        "the amount of 'castor' is 0",
                        "leave it out"),
                bad(
                        "two rests",
                        swap("30 %", "rest").replace("65 %", "rest"),
                        "oils.olive-virgin",
                        4,
                        17,
                        "two oils are rest",
                        "share of one"),
                bad(
                        "nothing left for the rest",
                        swap("5 %\nalkali", "rest\nalkali").replace("30 %", "35 %"),
                        "oils.castor",
                        5,
                        11,
                        "nothing is left for 'castor': the others add up to 100 %",
                        "smaller"),
                bad(
                        "a mass among percent",
                        swap("65 %", "65 g"),
                        "oils.olive-virgin",
                        4,
                        17,
                        "a mass among percent",
                        "all"),
                bad(
                        "percent among masses",
                        NOTEBOOK.replace("350 g", "70 %"),
                        "oils.olive-virgin",
                        4,
                        17,
                        "percent among masses",
                        "all"),
                bad(
                        "rest among masses",
                        NOTEBOOK.replace("350 g", "rest"),
                        "oils.olive-virgin",
                        4,
                        17,
                        "rest among masses",
                        "all"),
                bad("an oil of 0 g", NOTEBOOK.replace("350 g", "0 g"), "oils.olive-virgin", 4, 17, "is 0", "leave"),
                bad("no unit", swap("65 %", "65"), "oils.olive-virgin", 4, 17, "no unit", "65 % or 65 g"),
                bad("no number", swap("65 %", "some"), "oils.olive-virgin", 4, 17, "'some'", "12.5"),
                bad("an oil without a value", swap("castor: 5 %", "castor:"), "oils.castor", 5, 3, "has no value", ""),
                bad("a comma", swap("5 %\na", "5,0 %\na"), "oils.castor", 5, 11, "comma", "write 5.0 %"),
                bad("infinity", swap("65 %", ".inf"), "oils.olive-virgin", 4, 17, "'.inf'", "plain decimal"),
                bad(
                        "powers of ten",
                        swap("65 %", "6.5e1 %"),
                        "oils.olive-virgin",
                        4,
                        17,
                        "powers of ten",
                        "write the number out"),
                bad("an unknown unit", swap("65 %", "65 st"), "oils.olive-virgin", 4, 17, "'st'", "oz"),
                bad(
                        "fluid ounces",
                        NOTEBOOK.replace("350 g", "12 fl oz"),
                        "oils.olive-virgin",
                        4,
                        17,
                        "is a volume",
                        "weigh it"),
                bad(
                        "a great many digits",
                        swap("65 %", "65.00000000000001 %"),
                        "oils.olive-virgin",
                        4,
                        17,
                        "15 digits",
                        "fewer"),
                bad("no alkali", swap("alkali: sodium\n", ""), "alkali", 1, 1, "'alkali' is missing", "sodium"),
                bad("an unknown alkali", swap("sodium", "sodum"), "alkali", 6, 9, "'sodum'", "mean sodium?"),
                bad("an alkali like none", swap("sodium", "strong"), "alkali", 6, 9, "'strong'", "kind: lye"),
                bad("alkali in a list", swap("sodium", "[sodium]"), "alkali", 6, 1, "cannot be a list", ""),
                bad(
                        "a mass of alkali beside percent",
                        swap("sodium", "{sodium: 71 g}"),
                        "alkali",
                        6,
                        1,
                        "the alkali is a mass, but the oils are percent",
                        "masses too"),
                bad(
                        "shares not 100",
                        swap("sodium", "{sodium: 40 %, potassium: 50 %, by: moles}"),
                        "alkali",
                        6,
                        1,
                        "add up to 90 %",
                        "100 %"),
                bad(
                        "a share of 0",
                        swap("sodium", "{sodium: 0 %, potassium: 100 %, by: moles}"),
                        "alkali",
                        6,
                        1,
                        "0 %",
                        "alkali: potassium"),
                bad(
                        "the other share of 0",
                        swap("sodium", "{sodium: 100 %, potassium: 0 %, by: moles}"),
                        "alkali",
                        6,
                        1,
                        "0 %",
                        "alkali: sodium"),
                bad(
                        "shares of nothing",
                        swap("sodium", "{sodium: 40 %, potassium: 60 %}"),
                        "alkali.by",
                        6,
                        1,
                        "'by' is missing",
                        "moles"),
                bad(
                        "shares of something else",
                        swap("sodium", "{sodium: 40 %, potassium: 60 %, by: volume}"),
                        "alkali.by",
                        6,
                        45,
                        "'volume'",
                        "pure mass"),
                bad(
                        "one share",
                        swap("sodium", "{sodium: 40 %, by: moles}"),
                        "alkali.potassium",
                        6,
                        1,
                        "is missing",
                        "rest"),
                bad(
                        "two rests of alkali",
                        swap("sodium", "{sodium: rest, potassium: rest, by: moles}"),
                        "alkali",
                        6,
                        1,
                        "both alkalis are rest",
                        "share of one"),
                bad(
                        "no rest of alkali",
                        swap("sodium", "{sodium: rest, potassium: 100 %, by: moles}"),
                        "alkali",
                        6,
                        1,
                        "leaves nothing",
                        "under 100 %"),
                bad(
                        "as beside shares",
                        swap("sodium", "{sodium: 40 %, potassium: rest, by: moles, as: pure}"),
                        "alkali.as",
                        6,
                        56,
                        "goes with masses",
                        "by: as weighed"),
                bad(
                        "by beside masses",
                        NOTEBOOK.replace("71 g", "71 g, by: moles"),
                        "alkali.by",
                        5,
                        28,
                        "goes with shares",
                        "as: weighed"),
                bad(
                        "an alkali as nothing known",
                        NOTEBOOK.replace("71 g", "71 g, as: is"),
                        "alkali.as",
                        5,
                        28,
                        "'is'",
                        "weighed or pure"),
                bad("an alkali of 0 g", NOTEBOOK.replace("71 g", "0 g"), "alkali", 5, 1, "is 0", "leave it out"),
                bad(
                        "one of two fixed",
                        NOTEBOOK.replace("71 g", "71 g fixed, potassium: 5 g"),
                        "alkali",
                        5,
                        1,
                        "one alkali is fixed",
                        "both or neither"),
                bad(
                        "a comma in braces",
                        NOTEBOOK.replace("71 g", "71,5 g"),
                        "alkali.sodium",
                        5,
                        18,
                        "'71,5 g' has a comma",
                        "write 71.5 g"),
                bad(
                        "a comma in braces before more",
                        NOTEBOOK.replace("71 g", "71,5 g, as: pure"),
                        "alkali.sodium",
                        5,
                        18,
                        "has a comma",
                        "write 71.5 g"),
                bad(
                        "an alkali group of neither",
                        swap("sodium", "{by: moles}"),
                        "alkali",
                        6,
                        1,
                        "names neither",
                        "of each"),
                bad(
                        "a third alkali",
                        swap("sodium", "{sodium: 40 %, lithium: 60 %, by: moles}"),
                        "alkali.lithium",
                        6,
                        33,
                        "'lithium'",
                        "sodium, potassium"),
                bad(
                        "a stock lye that is not described",
                        NOTEBOOK.replace("sodium: 71 g", "my-lye: 142 g"),
                        "alkali",
                        5,
                        1,
                        "'my-lye'",
                        "kind: lye"));
    }

    static Stream<Arguments> superfatAndWater() {
        return Stream.of(
                bad(
                        "superfat 150",
                        swap("6 %", "150 %"),
                        "superfat",
                        7,
                        11,
                        "superfat of 150 %",
                        "must be under 100 %"),
                bad(
                        "superfat 100",
                        swap("6 %", "100 %"),
                        "superfat",
                        7,
                        11,
                        "superfat of 100 %",
                        "must be under 100 %"),
                bad("a negative superfat", swap("6 %", "-6 %"), "superfat", 7, 11, "negative", "0 or more"),
                bad("a superfat without unit", swap("6 %", "6"), "superfat", 7, 11, "'6'", "6 %"),
                bad(
                        "no superfat",
                        swap("superfat: 6 %\n", ""),
                        "superfat",
                        1,
                        1,
                        "neither a superfat nor",
                        "superfat: 5 %"),
                bad("no water", swap("water: 33 % lye\n", ""), "water", 1, 1, "does not say its water", "33 % lye"),
                bad("water 0 g", swap("33 % lye", "0 g"), "water", 8, 8, "'0 g' has a 0", "more than 0"),
                bad("water 0 of oils", swap("33 % lye", "0 % of oils"), "water", 8, 8, "'0 % of oils'", "more than 0"),
                bad("a ratio of 0", swap("33 % lye", "0 to 1"), "water", 8, 8, "'0 to 1'", "more than 0"),
                bad("a ratio to 0", swap("33 % lye", "2 to 0"), "water", 8, 8, "'2 to 0'", "more than 0"),
                bad("a lye of 0 %", swap("33 % lye", "0 % lye"), "water", 8, 8, "'0 % lye'", "more than 0"),
                bad("a lye of 100 %", swap("33 % lye", "100 % lye"), "water", 8, 8, "leaves no water", "under 100 %"),
                bad(
                        "water in percent of nothing",
                        swap("33 % lye", "33 %"),
                        "water",
                        8,
                        8,
                        "'33 %' does not say",
                        "33 % lye"),
                bad(
                        "water in percent of batch",
                        swap("33 % lye", "33 % of batch"),
                        "water",
                        8,
                        8,
                        "of batch",
                        "33 % of oils"),
                bad("a bare number of water", swap("33 % lye", "33"), "water", 8, 8, "'33' does not say", "33 % lye"),
                bad("a ratio by colon", swap("33 % lye", "2:1"), "water", 8, 8, "not a ratio", "2 to 1"),
                bad(
                        "a ratio and more",
                        swap("33 % lye", "2 to 1 by volume"),
                        "water",
                        8,
                        8,
                        "'by volume'",
                        "as weighed"),
                bad("water in litres", swap("33 % lye", "0.3 l"), "water", 8, 8, "'l'", "250 g"),
                bad("a wet bar", with("cured water: 60 %\n"), "cured water", 9, 14, "60 % water", "less than 60 %"));
    }

    static Stream<Arguments> making() {
        return Stream.of(
                bad("a process in a word", with("process: cold\n"), "process", 9, 10, "not one value", "make: cold"),
                bad(
                        "an unknown way",
                        with("process: {make: hot}\n"),
                        "process.make",
                        9,
                        17,
                        "'hot'",
                        "cold, oven or cooked"),
                bad(
                        "a temperature without unit",
                        with("process: {oils: 38}\n"),
                        "process.oils",
                        9,
                        17,
                        "no unit",
                        "38 C"),
                bad(
                        "no temperature for soap",
                        with("process: {lye: 400 C}\n"),
                        "process.lye",
                        9,
                        16,
                        "'400 C'",
                        "250 C"),
                bad(
                        "an oven in minutes of nothing",
                        with("process: {oven: 55 C for 2}\n"),
                        "process.oven",
                        9,
                        17,
                        "no unit",
                        "1 h"),
                bad("an oven of words", with("process: {oven: warm}\n"), "process.oven", 9, 17, "'warm'", "decimal"),
                bad(
                        "another pour",
                        with("process: {pour: swirl}\n"),
                        "process.pour",
                        9,
                        17,
                        "'swirl'",
                        "fade plain into"),
                bad(
                        "a fade into nothing",
                        with("process: {pour: fade all in 7}\n"),
                        "process.pour",
                        9,
                        17,
                        "into which",
                        "fade plain into"),
                bad(
                        "a fade in words",
                        with("process: {pour: fade a into b in six}\nportions: {a: 50 %, b: 50 %}\n"),
                        "process.pour",
                        9,
                        17,
                        "'six'",
                        "decimal"),
                bad(
                        "a fade of nothing",
                        with("process: {pour: fade in 7}\n"),
                        "process.pour",
                        9,
                        17,
                        "not a way",
                        "fade plain"),
                bad(
                        "a fade into itself",
                        with("process: {pour: fade a into a in 7}\nportions: {a: 50 %, b: 50 %}\n"),
                        "process.pour",
                        9,
                        17,
                        "into itself",
                        "two portions"),
                bad(
                        "a fade in one layer",
                        with("process: {pour: fade a into b in 1}\nportions: {a: 50 %, b: 50 %}\n"),
                        "process.pour",
                        9,
                        17,
                        "in 1 layers",
                        "2 to 100"),
                bad(
                        "a fade in half layers",
                        with("process: {pour: fade a into b in 2.5}\nportions: {a: 50 %, b: 50 %}\n"),
                        "process.pour",
                        9,
                        17,
                        "in 2.5 layers",
                        "whole number"),
                bad(
                        "a fade in 101 layers",
                        with("process: {pour: fade a into b in 101}\nportions: {a: 50 %, b: 50 %}\n"),
                        "process.pour",
                        9,
                        17,
                        "in 101 layers",
                        "2 to 100"),
                bad(
                        "a fade of an unknown portion",
                        with("process: {pour: fade plan into kelp in 7}\nportions: {plain: 50 %, kelp: 50 %}\n"),
                        "process.pour",
                        9,
                        17,
                        "no portion 'plan'",
                        "mean plain?"),
                bad(
                        "portions of 60 and 60",
                        with("portions:\n  a: 60 %\n  b: 60 %\n"),
                        "portions",
                        9,
                        1,
                        "the portions add up to 120 %",
                        "100 %"),
                bad(
                        "two rests of batter",
                        with("portions:\n  a: rest\n  b: rest\n"),
                        "portions.b",
                        11,
                        6,
                        "two portions are rest",
                        "share of one"),
                bad(
                        "no batter left",
                        with("portions:\n  a: 100 %\n  b: rest\n"),
                        "portions.b",
                        11,
                        6,
                        "nothing is left",
                        "smaller"),
                bad(
                        "a portion of 0",
                        with("portions:\n  a: 100 %\n  b: 0 %\n"),
                        "portions.b",
                        11,
                        6,
                        "'b' is 0 %",
                        "leave"),
                bad(
                        "a portion by mass",
                        with("portions:\n  a: 500 g\n  b: rest\n"),
                        "portions.a",
                        10,
                        6,
                        "percentage",
                        "500 %"),
                bad("portions in a list", with("portions: [a, b]\n"), "portions", 9, 1, "not a list", "plain: 60 %"));
    }

    static Stream<Arguments> additions() {
        String salt = "  - of: sea-salt\n    amount: 5 g\n    stage: trace\n";
        return Stream.of(
                bad(
                        "a group of additions",
                        with("additions:\n  sea-salt: 5 g\n"),
                        "additions",
                        9,
                        1,
                        "must be a list",
                        "- of:"),
                bad(
                        "an addition of one word",
                        with("additions:\n  - sea-salt\n"),
                        "additions.0",
                        10,
                        5,
                        "needs its names",
                        "of:"),
                bad(
                        "an addition of nothing",
                        addition(salt.replace("of: sea-salt\n    ", "")),
                        "additions.0.of",
                        10,
                        5,
                        "'of' is missing",
                        "sea-salt"),
                bad(
                        "how much is missing",
                        addition(salt.replace("    amount: 5 g\n", "")),
                        "additions.0.amount",
                        10,
                        5,
                        "'amount' is missing",
                        "2 % of oils"),
                bad(
                        "when is missing",
                        addition(salt.replace("    stage: trace\n", "")),
                        "additions.0.stage",
                        10,
                        5,
                        "'stage' is missing",
                        "trace"),
                bad(
                        "a name that is empty",
                        addition(salt.replace("sea-salt", "''")),
                        "additions.0.of",
                        10,
                        9,
                        "no value",
                        ""),
                bad(
                        "a name of two lines",
                        addition(salt.replace("sea-salt", "\"a\\nb\"")),
                        "additions.0.of",
                        10,
                        9,
                        "line break",
                        "material's name"),
                bad(
                        "nothing of it",
                        addition(salt.replace("5 g", "0 g")),
                        "additions.0.amount",
                        11,
                        13,
                        "'0 g' is nothing",
                        "leave the addition out"),
                bad(
                        "0 %",
                        addition(salt.replace("5 g", "0 % of oils")), "additions.0.amount", 11, 13, "is nothing", ""),
                bad(
                        "0 for each",
                        addition(salt.replace("5 g", "0 g per kg oils")),
                        "additions.0.amount",
                        11,
                        13,
                        "is nothing",
                        ""),
                bad("no volume", addition(salt.replace("5 g", "0 ml")), "additions.0.amount", 11, 13, "is nothing", ""),
                bad(
                        "percent of nothing",
                        addition(salt.replace("5 g", "5 %")),
                        "additions.0.amount",
                        11,
                        13,
                        "'5 %' does not say",
                        "5 % of oils"),
                bad(
                        "percent of water",
                        addition(salt.replace("5 g", "5 % of water")),
                        "additions.0.amount",
                        11,
                        13,
                        "'5 % of water'",
                        "of portion oils or of batch"),
                bad(
                        "a bare number",
                        addition(salt.replace("5 g", "5")),
                        "additions.0.amount",
                        11,
                        13,
                        "no unit",
                        "5 % of oils"),
                bad(
                        "no number",
                        addition(salt.replace("5 g", "a pinch")),
                        "additions.0.amount",
                        11,
                        13,
                        "'a pinch'",
                        "decimal"),
                bad(
                        "an unknown unit",
                        addition(salt.replace("5 g", "5 tsp")),
                        "additions.0.amount",
                        11,
                        13,
                        "'tsp'",
                        "ml or l"),
                bad(
                        "fluid ounces",
                        addition(salt.replace("5 g", "5 fl oz")),
                        "additions.0.amount",
                        11,
                        13,
                        "volume",
                        "ml"),
                bad(
                        "the whole batch",
                        addition(salt.replace("5 g", "100 % of batch")),
                        "additions.0.amount",
                        11,
                        13,
                        "leaves nothing",
                        "less than 100 %"),
                bad(
                        "for each of the batch",
                        addition(salt.replace("5 g", "5 g per kg batch")),
                        "additions.0.amount",
                        11,
                        13,
                        "not a rate",
                        "per kg oils"),
                bad(
                        "for each milligram",
                        addition(salt.replace("5 g", "5 g per mg oils")),
                        "additions.0.amount",
                        11,
                        13,
                        "not a rate",
                        "per kg oils"),
                bad(
                        "litres for each",
                        addition(salt.replace("5 g", "5 ml per kg oils")),
                        "additions.0.amount",
                        11,
                        13,
                        "'ml'",
                        "250 g"),
                bad("a comma", addition(salt.replace("5 g", "2,5 g")), "additions.0.amount", 11, 13, "comma", "2.5 g"),
                bad(
                        "an unknown stage",
                        addition(salt.replace("trace", "trase")),
                        "additions.0.stage",
                        12,
                        12,
                        "'trase'",
                        "mean trace?"),
                bad(
                        "a portion without name",
                        addition(salt.replace("trace", "portion")),
                        "additions.0.stage",
                        12,
                        12,
                        "does not say which",
                        "name"),
                bad(
                        "a portion that does not exist",
                        addition(salt.replace("trace", "portion kelp")),
                        "additions.0.stage",
                        12,
                        12,
                        "no portion 'kelp'",
                        "under portions"),
                bad(
                        "a portion misspelt",
                        addition(salt.replace("trace", "portion klep")) + "portions:\n  plain: 50 %\n  kelp: rest\n",
                        "additions.0.stage",
                        12,
                        12,
                        "no portion 'klep'",
                        "mean kelp?"),
                bad(
                        "a portion's oils without portion",
                        addition(salt.replace("5 g", "5 % of portion oils")),
                        "additions.0.amount",
                        11,
                        13,
                        "needs a portion",
                        "of oils"),
                bad(
                        "a portion's oils, by rate, on top",
                        addition(salt.replace("5 g", "5 g per kg portion oils").replace("trace", "top")),
                        "additions.0.amount",
                        11,
                        13,
                        "needs a portion, but it goes in at stage 'top'",
                        "of oils"),
                bad(
                        "it replaces oil",
                        addition(salt + "    replaces: oil\n"),
                        "additions.0.replaces",
                        13,
                        15,
                        "'oil'",
                        "replaces: water"),
                bad(
                        "dispersed and replacing",
                        addition(salt + "    replaces: water\n    disperse: {in: water, ratio: 3 to 1}\n"),
                        "additions.0.disperse",
                        14,
                        5,
                        "not dispersed as well",
                        "leave"),
                bad(
                        "a wet topping",
                        addition(salt.replace("trace", "top") + "    disperse: {in: water, ratio: 3 to 1}\n"),
                        "additions.0.disperse",
                        13,
                        5,
                        "topping",
                        "another stage"),
                bad(
                        "dispersed in a word",
                        addition(salt + "    disperse: water\n"),
                        "additions.0.disperse",
                        13,
                        15,
                        "one value",
                        "ratio: 3 to 1"),
                bad(
                        "dispersed in nothing said",
                        addition(salt + "    disperse:\n"),
                        "additions.0.disperse",
                        13,
                        5,
                        "no value",
                        ""),
                bad(
                        "dispersed in what",
                        addition(salt + "    disperse: {ratio: 3 to 1}\n"),
                        "additions.0.disperse.in",
                        13,
                        5,
                        "'in' is missing",
                        "in: water"),
                bad(
                        "dispersed in how much",
                        addition(salt + "    disperse: {in: water}\n"),
                        "additions.0.disperse.ratio",
                        13,
                        5,
                        "'ratio' is missing",
                        "3 to 1"),
                bad(
                        "dispersed in beer",
                        addition(salt + "    disperse: {in: beer, ratio: 3 to 1}\n"),
                        "additions.0.disperse.in",
                        13,
                        20,
                        "'beer'",
                        "glycerin"),
                bad(
                        "dispersed in an oil that is not there",
                        addition(salt + "    disperse: {in: coconit, ratio: 3 to 1}\n"),
                        "additions.0.disperse.in",
                        13,
                        20,
                        "'coconit'",
                        "mean coconut?"),
                bad(
                        "a ratio of 0",
                        addition(salt + "    disperse: {in: water, ratio: 0 to 1}\n"),
                        "additions.0.disperse.ratio",
                        13,
                        34,
                        "'0 to 1'",
                        "3 to 1"),
                bad(
                        "a ratio to 0",
                        addition(salt + "    disperse: {in: water, ratio: 3 to 0}\n"),
                        "additions.0.disperse.ratio",
                        13,
                        34,
                        "'3 to 0'",
                        "3 to 1"),
                bad(
                        "a ratio as weighed",
                        addition(salt + "    disperse: {in: water, ratio: 3 to 1 as weighed}\n"),
                        "additions.0.disperse.ratio",
                        13,
                        34,
                        "not a ratio",
                        "3 to 1"),
                bad(
                        "a ratio of one",
                        addition(salt + "    disperse: {in: water, ratio: 3}\n"),
                        "additions.0.disperse.ratio",
                        13,
                        34,
                        "not a ratio",
                        "2 to 1"),
                bad(
                        "ahead in weeks",
                        addition(salt + "    disperse: {in: water, ratio: 3 to 1, ahead: 1 week}\n"),
                        "additions.0.disperse.ahead",
                        13,
                        49,
                        "'week'",
                        "1 h"));
    }

    private static String own(String lines) {
        return PLAIN + "materials:\n  house:\n" + lines;
    }

    static Stream<Arguments> materials() {
        String oil = "    kind: oil\n    saponification value: ";
        return Stream.of(
                bad("materials in a list", with("materials: [a]\n"), "materials", 9, 1, "not a list", "below"),
                bad(
                        "a material in a word",
                        with("materials:\n  house: oil\n"),
                        "materials.house",
                        10,
                        10,
                        "not one value",
                        "kind: oil"),
                bad(
                        "a material of nothing",
                        with("materials:\n  house:\n"),
                        "materials.house",
                        10,
                        3,
                        "nothing is said",
                        "kind"),
                bad(
                        "no kind",
                        own("    density: 0.9 g/ml\n"),
                        "materials.house.kind",
                        10,
                        3,
                        "has no kind",
                        "kind: oil"),
                bad("an unknown kind", own("    kind: oill\n"), "materials.house.kind", 11, 11, "'oill'", "mean oil?"),
                bad(
                        "a kind like none",
                        own("    kind: gadget\n"),
                        "materials.house.kind",
                        11,
                        11,
                        "'gadget'",
                        "fragrance"),
                bad(
                        "an oil without its value",
                        own("    kind: oil\n"),
                        "materials.house.saponification value",
                        10,
                        3,
                        "has no saponification value",
                        "certificate"),
                bad(
                        "a value in g KOH",
                        own(oil + "0.189 mg KOH/g\n"),
                        "materials.house.saponification value",
                        12,
                        27,
                        "0.189 mg KOH/g is not possible",
                        "189.0 (× 1000)"),
                bad(
                        "a value in g NaOH",
                        own(oil + "0.135\n"),
                        "materials.house.saponification value",
                        12,
                        27,
                        "not possible",
                        "as g NaOH for each g 189.4"),
                bad(
                        "a value of 0",
                        own(oil + "0\n"),
                        "materials.house.saponification value",
                        12,
                        27,
                        "not possible",
                        "20 and 400"),
                bad(
                        "a value too high",
                        own(oil + "390 to 410 mg KOH/g\n"),
                        "materials.house.saponification value",
                        12,
                        27,
                        "390 to 410",
                        "20 and 400"),
                bad(
                        "a value too uncertain",
                        own(oil + "30 ± 20 mg KOH/g\n"),
                        "materials.house.saponification value",
                        12,
                        27,
                        "30 ± 20",
                        "20 and 400"),
                bad(
                        "a value in another unit",
                        own(oil + "189 g/kg\n"),
                        "materials.house.saponification value",
                        12,
                        27,
                        "'g/kg'",
                        "189 mg KOH/g"),
                bad(
                        "a value as a dash",
                        own(oil + "184-196 mg KOH/g\n"),
                        "materials.house.saponification value",
                        12,
                        27,
                        "a dash",
                        "184 to 196 mg KOH/g"),
                bad(
                        "a value as a long dash",
                        own(oil + "184 – 196\n"),
                        "materials.house.saponification value",
                        12,
                        27,
                        "a dash",
                        "184 to 196"),
                bad(
                        "a range backwards",
                        own(oil + "196 to 184\n"),
                        "materials.house.saponification value",
                        12,
                        27,
                        "backwards",
                        "low end first"),
                bad(
                        "an acid value too high",
                        own(oil + "190\n    acid value: 500\n"),
                        "materials.house.acid value",
                        13,
                        17,
                        "500",
                        "at most 400"),
                bad(
                        "an acid value above the whole",
                        own(oil + "190\n    acid value: 195\n"),
                        "materials.house.acid value",
                        13,
                        17,
                        "above the saponification value",
                        "certificate"),
                bad(
                        "an iodine value too high",
                        own(oil + "190\n    iodine value: 401\n"),
                        "materials.house.iodine value",
                        13,
                        19,
                        "401",
                        "at most 400"),
                bad(
                        "a density in kg",
                        own("    kind: salt\n    density: 0.9 kg/l\n"),
                        "materials.house.density",
                        12,
                        14,
                        "kg/l",
                        "g/ml"),
                bad(
                        "water without unit",
                        own("    kind: liquid\n    water: 90\n"),
                        "materials.house.water",
                        12,
                        12,
                        "no unit",
                        "90 %"),
                bad(
                        "too much water",
                        own("    kind: liquid\n    water: 110 %\n"),
                        "materials.house.water",
                        12,
                        12,
                        "110 %",
                        "100 %"),
                bad(
                        "too much of everything",
                        own("    kind: milk\n    water: 90 %\n    fat: 8 to 14 %\n"),
                        "materials.house",
                        10,
                        3,
                        "more than 100 %",
                        "smaller"),
                bad(
                        "a fat's value too low",
                        own("    kind: milk\n    fat saponification value: 5\n"),
                        "materials.house.fat saponification value",
                        12,
                        31,
                        "not possible",
                        "20 and 400"),
                bad(
                        "an acid without name",
                        own("    kind: liquid\n    acid: 5 %\n"),
                        "materials.house.acid",
                        12,
                        11,
                        "of what",
                        "acetic acid"),
                bad(
                        "an acid without share",
                        own("    kind: liquid\n    acid: 5 acetic acid\n"),
                        "materials.house.acid",
                        12,
                        11,
                        "of what",
                        "acetic acid"),
                bad(
                        "a lye without strength",
                        own("    kind: lye\n"),
                        "materials.house.strength",
                        10,
                        3,
                        "no strength",
                        "50 % sodium"),
                bad(
                        "a lye of lime",
                        own("    kind: lye\n    strength: 50 % calcium\n"),
                        "materials.house.strength",
                        12,
                        15,
                        "'calcium'",
                        "50 % sodium"),
                bad(
                        "a lye of 0",
                        own("    kind: lye\n    strength: 0 % sodium\n"),
                        "materials.house.strength",
                        12,
                        15,
                        "0 %",
                        "above 0"),
                bad(
                        "a lye without water",
                        own("    kind: lye\n    strength: 99 to 100 % sodium\n"),
                        "materials.house.strength",
                        12,
                        15,
                        "99 to 100 %",
                        "under 100 %"),
                bad(
                        "strength of a salt",
                        own("    kind: salt\n    strength: 50 % sodium\n"),
                        "materials.house.strength",
                        12,
                        15,
                        "is no lye",
                        "kind: lye"),
                bad(
                        "a premix of nothing",
                        own("    kind: oils\n"),
                        "materials.house.oils",
                        10,
                        3,
                        "have no oils",
                        "oils:"),
                bad(
                        "a premix short of 100",
                        own("    kind: oils\n    oils: {coconut: 50 %, castor: 40 %}\n"),
                        "materials.house.oils",
                        12,
                        5,
                        "add up to 90 %",
                        "100 %"),
                bad(
                        "a premix with a hole",
                        own("    kind: oils\n    oils: {coconut: 100 %, castor: 0 %}\n"),
                        "materials.house.oils.castor",
                        12,
                        36,
                        "'castor' is 0 %",
                        "leave"),
                bad(
                        "a premix of two rests",
                        own("    kind: oils\n    oils: {coconut: rest, castor: rest}\n"),
                        "materials.house.oils.castor",
                        12,
                        35,
                        "two oils are rest",
                        "its share"),
                bad(
                        "a premix without rest",
                        own("    kind: oils\n    oils: {coconut: 100 %, castor: rest}\n"),
                        "materials.house.oils.castor",
                        12,
                        36,
                        "nothing is left",
                        "smaller"),
                bad(
                        "a premix of itself",
                        own("    kind: oils\n    oils: {house: 100 %}\n"),
                        "materials.house.oils.house",
                        12,
                        19,
                        "holds itself",
                        "mixed from"),
                bad(
                        "a premix in a word",
                        own("    kind: oils\n    oils: coconut\n"),
                        "materials.house.oils",
                        12,
                        11,
                        "one value",
                        "share"),
                bad(
                        "a premix's name of two lines",
                        own("    kind: oils\n    oils: {\"a\\nb\": 100 %}\n"),
                        "materials.house.oils.a\nb",
                        12,
                        20,
                        "line break",
                        "one line"),
                bad(
                        "oils of a salt",
                        own("    kind: salt\n    oils: {castor: 100 %}\n"),
                        "materials.house.oils",
                        12,
                        5,
                        "no premix",
                        "kind: oils"),
                bad(
                        "an oil under the key of a salt",
                        with("materials:\n  sea-salt:\n    kind: oil\n"),
                        "materials.sea-salt.saponification value",
                        10,
                        3,
                        "has no saponification value",
                        "certificate"),
                bad(
                        "a lye by the name of sodium",
                        with("materials:\n  by:\n    kind: lye\n    strength: 50 % sodium\n")
                                .replace("alkali: sodium", "alkali: by"),
                        "alkali",
                        6,
                        9,
                        "cannot be a stock lye's name",
                        "something else"),
                bad(
                        "a stock lye of 0 g",
                        NOTEBOOK.replace("sodium: 71 g", "jug: 0 g")
                                + "materials:\n  jug:\n    kind: lye\n    strength: 50 % sodium\n",
                        "alkali.jug",
                        5,
                        15,
                        "is 0",
                        "more than 0"),
                bad(
                        "a stock lye misspelt",
                        swap("sodium", "jag") + "materials:\n  jug:\n    kind: lye\n    strength: 50 % sodium\n",
                        "alkali",
                        6,
                        9,
                        "'jag'",
                        "mean jug?"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"notAFormula", "words", "oilsAndAlkali", "superfatAndWater", "making", "additions", "materials"})
    void is_refused_in_one_sentence_with_its_place_and_remedy(
            String name, String text, String path, int line, int column, String what, String remedy) {
        Instant start = Instant.now();
        FormulaFile.Read read = FormulaFile.read(text);
        assertThat(Duration.between(start, Instant.now())).isLessThan(QUICK);

        assertThat(read.formula()).isEmpty();
        assertThat(read.problems()).as(name).hasSize(1);
        Problem problem = read.problems().get(0);
        assertThat(problem.path()).isEqualTo(path);
        assertThat(problem.what()).contains(what);
        assertThat(problem.remedy()).contains(remedy).isNotBlank();
        assertThat(problem.sentence()).doesNotContain("\n");
        assertThat(read.places().of(path)).isEqualTo(new Place(line, column));
    }

    @Test
    void several_things_that_are_wrong_are_said_at_once_each_at_its_place() {
        String text = """
                recipe: Many
                oils:
                  coconut: 12,5 %
                  olive-virgin: 60 %
                alkali: sodum
                superfat: 150 %
                water: 0 g
                use: gift
                additions:
                  - of: sea-salt
                    amount: 5
                    stage: portion kelp
                portions:
                  a: 60 %
                  b: 60 %
                colour: blue
                """;
        FormulaFile.Read read = FormulaFile.read(text);
        assertThat(read.problems().stream()
                        .map(p -> p.path() + "@" + read.places().of(p.path()).line()))
                .containsExactlyInAnyOrder(
                        "colour@16",
                        "use@8",
                        "oils.coconut@3",
                        "additions.0.amount@11",
                        "alkali@5",
                        "superfat@6",
                        "water@7",
                        "additions.0.stage@12",
                        "portions@13");
    }

    @Test
    void one_mistake_brings_no_others_with_it() {
        assertThat(problem(PLAIN.replace("30 %", "30")).path()).isEqualTo("oils.coconut");
        assertThat(problem(PLAIN.replace("30 %", "30").replace("5 %\na", "rest\na"))
                        .path())
                .isEqualTo("oils.coconut");
        assertThat(problem(NOTEBOOK.replace("350 g", "350")).path()).isEqualTo("oils.olive-virgin");
        assertThat(problems(NOTEBOOK.replace("350 g", "350").replace("150 g", "150")).stream()
                        .map(Problem::path))
                .containsExactly("oils.coconut", "oils.olive-virgin");
        assertThat(problem(NOTEBOOK.replace("71 g", "71")).path()).isEqualTo("alkali.sodium");
        assertThat(problem(PLAIN.replace("oils:", "oil:")).path()).isEqualTo("oil");
        String salt = """
                additions:
                  - of: sea-salt
                    amount: 5 g
                    stage: portion kelp
                    disperse: {in: castor, ratio: 3 to 1}
                """;
        assertThat(problem(PLAIN + salt + "portions: kelp\nprocess: {pour: fade plain into kelp in 7}\n")
                        .path())
                .isEqualTo("portions");
        assertThat(problem(PLAIN + salt + "portions:\n  kelp: 60\n  plain: rest\n")
                        .path())
                .isEqualTo("portions.kelp");
        assertThat(problem(PLAIN.replace(
                                        "oils:\n  coconut: 30 %\n  olive-virgin: 65 %\n  castor: 5 %\n",
                                        "oils: castor\n")
                                + salt
                                + "portions: {kelp: 100 %}\n")
                        .path())
                .isEqualTo("oils");
        assertThat(problem(PLAIN.replace("sodium", "jug") + "materials:\n  jug: 50 %\n")
                        .path())
                .isEqualTo("materials.jug");
    }

    @Test
    void ten_megabytes_are_refused_unread() {
        byte[] much = new byte[10_000_000];
        java.util.Arrays.fill(much, (byte) '[');
        for (FormulaFile.Read read :
                List.of(FormulaFile.read(much), FormulaFile.read(new String(much, StandardCharsets.US_ASCII)))) {
            assertThat(read.problems()).hasSize(1);
            assertThat(read.problems().get(0).what()).contains("larger than 1 MB");
            assertThat(read.places().of("")).isEqualTo(new Place(1, 1));
        }
    }

    @Test
    void bytes_that_are_not_utf_8_are_refused_where_they_stand() {
        byte[] latin = "recipe: Tide\noils: s\u00e9same\n".getBytes(StandardCharsets.ISO_8859_1);
        FormulaFile.Read read = FormulaFile.read(latin);
        assertThat(read.problems()).hasSize(1);
        assertThat(read.problems().get(0).what()).contains("not UTF-8");
        assertThat(read.places().of("")).isEqualTo(new Place(2, 8));
        assertThat(FormulaFile.read("recipe: x".getBytes(StandardCharsets.UTF_16))
                        .problems())
                .hasSize(1);
        assertThat(FormulaFile.read(new byte[] {'a', (byte) 0xF0, (byte) 0x9F}).problems())
                .hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[",
                "{",
                "- ",
                "? ",
                "{a: ",
                "[[],",
                "a: [",
                "\n",
                "# c\n",
                "\"",
                "x ",
                "k: v\n",
                "- a\n",
                "a,",
                "a\n",
                "12,5 ",
                "\t",
                "1",
                "é",
                "🧼",
                "x: |\n \n",
                "#"
            })
    void twenty_thousand_of_anything_are_answered_within_a_second(String piece) {
        for (String before : List.of("", "recipe: ", "oils:\n  x: ", "a: \"")) {
            String text = before + piece.repeat(20_000);
            Instant start = Instant.now();
            assertThat(FormulaFile.read(text).problems()).isNotEmpty();
            assertThat(Duration.between(start, Instant.now()))
                    .as(before + piece)
                    .isLessThan(QUICK);
        }
    }

    @Test
    void a_megabyte_of_unknown_names_is_answered_with_a_hundred_problems_at_most() {
        StringBuilder text = new StringBuilder(PLAIN);
        for (int i = 0; i < 9000; i++) {
            text.append("superfat").append(i).append(": 1 %\n");
        }
        assertThat(problems(text.toString())).hasSize(100);
        StringBuilder oils = new StringBuilder("recipe: x\noils:\n");
        for (int i = 0; i < 501; i++) {
            oils.append("  oil").append(i).append(": 1 %\n");
        }
        assertThat(problem(oils + "alkali: sodium\nsuperfat: 5 %\nwater: 33 % lye\n")
                        .what())
                .isEqualTo("there are 501 oils");
    }

    @Test
    void aliases_that_explode_are_refused_at_the_first() {
        StringBuilder text = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 30; i++) {
            text.append("a%d: &a%d [*a%d, *a%d]%n".formatted(i, i, i - 1, i - 1));
        }
        FormulaFile.Read read = FormulaFile.read(text.toString());
        assertThat(read.problems()).hasSize(1);
        assertThat(read.places().of("")).isEqualTo(new Place(1, 5));
    }

    @Test
    void no_text_makes_reading_throw_and_what_reads_is_stable() throws IOException {
        Random random = new Random(20261125L);
        String signs = " \t\n:-#'\"{}[],&*!|>%@`.09ae~\\é🧼±\u0000\u2028";
        String base = Files.readString(Path.of("..", "examples", "tideline.yaml"));
        int read = 0;
        for (int i = 0; i < 4000; i++) {
            StringBuilder text = new StringBuilder(base);
            for (int changes = 1 + random.nextInt(3); changes > 0; changes--) {
                int at = random.nextInt(text.length());
                switch (random.nextInt(3)) {
                    case 0 -> text.deleteCharAt(at);
                    case 1 -> text.insert(at, signs.charAt(random.nextInt(signs.length())));
                    default -> text.setCharAt(at, signs.charAt(random.nextInt(signs.length())));
                }
            }
            FormulaFile.Read once = FormulaFile.read(text.toString());
            assertThat(once.formula().isPresent()).isEqualTo(once.problems().isEmpty());
            if (once.formula().isPresent()) {
                read++;
                String written = FormulaFile.write(once.formula().get());
                assertThat(FormulaFile.read(written).formula())
                        .as("case %d:%n%s", i, text)
                        .isEqualTo(once.formula());
            }
        }
        assertThat(read).as("texts that still are formulas").isGreaterThan(500);
    }

    @Test
    void a_mass_that_does_not_say_of_which_alkali_is_told_how_to_be_written() {
        String text = "recipe: T\noils:\n  coconut: 1000 g\nalkali: 140 g\nwater: 300 g\n";
        List<String> told = FormulaFile.read(text).problems().stream()
                .map(problem -> problem.what() + "; " + problem.remedy())
                .toList();
        assertThat(told)
                .containsExactly(
                        "'140 g' does not say which alkali it is of; write alkali: {sodium: 140 g}, or potassium in its place");
        String mended = text.replace("alkali: 140 g", "alkali: {sodium: 140 g}");
        assertThat(FormulaFile.read(mended).formula()).isPresent();
    }
}
