package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import lyewright.fill.Fill;
import lyewright.measure.Outcome;
import lyewright.uncertainty.Distribution;
import lyewright.uncertainty.Model;
import org.junit.jupiter.api.Test;

class SuperfatModelColumnsTest {

    private static final int MOST = 16;

    @Test
    void many_sets_at_once_give_the_digits_of_one_after_the_other() {
        int sheets = 0;
        for (long seed = 0; seed < 400; seed++) {
            if (SomeFormulas.of(seed).trySheet(Fill.mouldMass(1500), Equipment.USUAL)
                    instanceof Outcome.Ok<MakingSheet> ok) {
                MakingSheet sheet = ok.value();
                for (int portion = -1; portion < sheet.portions().size(); portion++) {
                    assertSameDigits(new SuperfatModel(sheet.batch(), sheet.vessels(), portion), new Random(seed));
                }
                sheets++;
            }
        }
        assertThat(sheets).isGreaterThan(200);
    }

    /** Twice in the same room, the second time with fewer sets. */
    private static void assertSameDigits(SuperfatModel model, Random random) {
        Model.Columns columns = model.columns(MOST);
        for (int sets : new int[] {MOST, MOST - 5}) {
            double[][] x = new double[model.inputs().size()][MOST];
            for (int i = 0; i < x.length; i++) {
                Distribution d = model.inputs().get(i).distribution();
                x[i] = random.doubles(MOST, 0.5, 1.5)
                        .map(f -> f * (d.mean() + 1))
                        .toArray();
            }
            double[] outputs = new double[MOST];

            columns.at(x, sets, outputs);

            for (int set = 0; set < MOST; set++) {
                double expected = set < sets ? model.at(row(x, set)) : 0;
                assertThat(outputs[set]).as("set %d of %d", set, sets).isEqualTo(expected);
            }
        }
    }

    private static double[] row(double[][] x, int set) {
        double[] row = new double[x.length];
        for (int i = 0; i < row.length; i++) {
            row[i] = x[i][set];
        }
        return row;
    }
}
