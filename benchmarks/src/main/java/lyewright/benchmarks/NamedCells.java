package lyewright.benchmarks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;

/**
 * A workbook of one sheet that is written by names: labels in the first column, what they stand for in the second, tables to
 * the right. {@code {name}} in a formula becomes an ordinary cell reference, so that evaluating does not go by names.
 */
final class NamedCells {

    private static final Pattern NAME = Pattern.compile("\\{([A-Za-z0-9.]+)}");
    private static final int TABLES_FROM = 4;

    private final HSSFWorkbook workbook = new HSSFWorkbook();
    private final HSSFSheet sheet = workbook.createSheet("sheet");
    private final Map<String, HSSFCell> cells = new HashMap<>();
    private final Map<String, String> references = new HashMap<>();
    private final List<HSSFCell> formulas = new ArrayList<>();
    private int rows;
    private int tableRows;

    HSSFWorkbook workbook() {
        return workbook;
    }

    /** A number that is typed in. */
    void number(String name, double value) {
        next(name).setCellValue(value);
    }

    /** Several, below each other, counted from 0 behind the name. */
    void numbers(String name, double... values) {
        for (int i = 0; i < values.length; i++) {
            number(name + i, values[i]);
        }
    }

    /** A formula. */
    void formula(String name, String text) {
        HSSFCell cell = next(name);
        cell.setCellFormula(withReferences(text));
        formulas.add(cell);
    }

    /** A formula for each number from {@code from} and below {@code to}, which stands where the text has {@code #}. */
    void formulas(String name, int from, int to, String text) {
        for (int i = from; i < to; i++) {
            formula(name + i, text.replace("#", String.valueOf(i)));
        }
    }

    private HSSFCell next(String name) {
        var row = row(rows++);
        row.createCell(0).setCellValue(name);
        HSSFCell cell = row.createCell(1);
        if (cells.put(name, cell) != null) {
            throw new IllegalArgumentException("two cells are called " + name);
        }
        references.put(name, new CellReference(cell.getRowIndex(), 1).formatAsString());
        return cell;
    }

    private org.apache.poi.hssf.usermodel.HSSFRow row(int index) {
        var row = sheet.getRow(index);
        return row == null ? sheet.createRow(index) : row;
    }

    /** A column of a table, to the right; {@code name} stands for all of it. */
    void column(String name, double... values) {
        double[][] table = new double[values.length][];
        for (int i = 0; i < values.length; i++) {
            table[i] = new double[] {values[i]};
        }
        table(name, table);
    }

    /** A table, to the right; {@code name} stands for all of it. */
    void table(String name, double[][] values) {
        int first = tableRows;
        for (double[] line : values) {
            for (int i = 0; i < line.length; i++) {
                row(tableRows).createCell(TABLES_FROM + i).setCellValue(line[i]);
            }
            tableRows++;
        }
        references.put(
                name,
                new CellRangeAddress(first, tableRows - 1, TABLES_FROM, TABLES_FROM + values[0].length - 1)
                        .formatAsString());
    }

    private String withReferences(String text) {
        Matcher names = NAME.matcher(text);
        StringBuilder formula = new StringBuilder();
        while (names.find()) {
            String reference = references.get(names.group(1));
            if (reference == null) {
                throw new IllegalArgumentException("nothing is called " + names.group(1) + " in " + text);
            }
            names.appendReplacement(formula, reference);
        }
        return names.appendTail(formula).toString();
    }

    HSSFCell cell(String name) {
        HSSFCell cell = cells.get(name);
        if (cell == null) {
            throw new IllegalArgumentException("no cell is called " + name);
        }
        return cell;
    }

    /** All cells with a formula, from the top. */
    List<HSSFCell> formulas() {
        return formulas;
    }
}
