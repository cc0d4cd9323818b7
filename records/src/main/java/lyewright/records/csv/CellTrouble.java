package lyewright.records.csv;

import lyewright.measure.Problem;

/**
 * One thing that is wrong in a row.
 *
 * @param row which row of the file
 * @param column the name of the column; empty where it is about the whole row
 * @param cell what stands there, shortened
 * @param problem what is wrong and what to do
 */
public record CellTrouble(int row, String column, String cell, Problem problem) {}
