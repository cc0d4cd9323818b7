package lyewright.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.openscience.cdk.exception.InvalidSmilesException;
import org.openscience.cdk.interfaces.IMolecularFormula;
import org.openscience.cdk.silent.SilentChemObjectBuilder;
import org.openscience.cdk.smiles.SmilesParser;
import org.openscience.cdk.tools.manipulator.MolecularFormulaManipulator;

/**
 * Formulas and molar masses against the Chemistry Development Kit (CDK 2.12), which counts atoms of drawn structures and has
 * natural isotope masses of its own (Blue Obelisk data). Those differ from the IUPAC abridged weights behind the tables in the
 * fourth digit after the point.
 */
@Tag("validation")
class MolarMassTest {

    private static final double TOLERANCE_ACID = 0.012; // g/mol; two sets of atomic weights over up to 74 atoms
    private static final double TOLERANCE_GLYCERIDE = 0.035; // g/mol; the same over three acids
    private static final double TOLERANCE_SMALL = 0.01; // g/mol
    private static final double TOLERANCE_SV = 0.02; // mg KOH/g

    static List<CSVRecord> structures() {
        return Outside.rows("fatty_acid_smiles.csv");
    }

    static List<CSVRecord> triglycerides() {
        return Outside.rows("triglycerides.csv");
    }

    private static IMolecularFormula formula(String smiles) {
        try {
            SmilesParser parser = new SmilesParser(SilentChemObjectBuilder.getInstance());
            return MolecularFormulaManipulator.getMolecularFormula(parser.parseSmiles(smiles));
        } catch (InvalidSmilesException e) {
            throw new IllegalArgumentException(smiles, e);
        }
    }

    private static double molarMass(IMolecularFormula formula) {
        return MolecularFormulaManipulator.getMass(formula, MolecularFormulaManipulator.MolWeight);
    }

    private static FattyAcid acid(String code) {
        return Tables.bundled().fattyAcids().stream()
                .filter(acid -> acid.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("structures")
    void a_fatty_acids_formula_and_molar_mass_are_its_structures(CSVRecord row) {
        FattyAcid acid = acid(row.get("code"));
        IMolecularFormula drawn = formula(row.get("smiles"));
        assertThat(acid.formula()).isEqualTo(MolecularFormulaManipulator.getString(drawn));
        assertThat(acid.molarMass()).isCloseTo(molarMass(drawn), within(TOLERANCE_ACID));
        assertThat(acid.carbons()).isEqualTo(MolecularFormulaManipulator.getElementCount(drawn, "C"));
        int hydrogens = MolecularFormulaManipulator.getElementCount(drawn, "H");
        assertThat(acid.doubleBonds()).isEqualTo((2 * acid.carbons() - hydrogens) / 2);
    }

    @Test
    void every_fatty_acid_of_the_table_has_a_structure_here() {
        Set<String> drawn = structures().stream().map(row -> row.get("code")).collect(Collectors.toSet());
        assertThat(Tables.bundled().fattyAcids())
                .hasSize(28)
                .extracting(FattyAcid::code)
                .containsExactlyInAnyOrderElementsOf(drawn);
    }

    /** The ester of glycerol with three of the acid, drawn and weighed, beside the engine's value for that acid alone. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("triglycerides")
    void a_triglycerides_saponification_value_is_three_times_potash_over_its_molar_mass(CSVRecord row) {
        FattyAcid acid = acid(row.get("acid"));
        String chain = structures().stream()
                .filter(structure -> structure.get("code").equals(acid.code()))
                .findFirst()
                .orElseThrow()
                .get("smiles");
        // the acid's last oxygen becomes the ester's
        String ester = chain + "CC(O" + reversed(chain) + ")CO" + reversed(chain);
        double drawn = molarMass(formula(ester));
        assertThat(Outside.number(row, "molar_mass")).isCloseTo(drawn, within(TOLERANCE_GLYCERIDE));
        FattyAcidProfile alone = new FattyAcidProfile(List.of(new AcidShare(acid, Figure.exact(100, "the test"))));
        assertThat(alone.saponificationValue()).isCloseTo(3 * 56_105.3 / drawn, within(TOLERANCE_SV));
        assertThat(alone.saponificationValue())
                .isCloseTo(Outside.number(row, "saponification_value"), within(TOLERANCE_SV));
    }

    /** An acid written chain first, C…C(=O)O, as a branch that begins at its acid carbon: C(=O)C…C. */
    private static String reversed(String acid) {
        String chain = acid.substring(0, acid.length() - "C(=O)O".length());
        StringBuilder turned = new StringBuilder("C(=O)");
        for (int i = chain.length() - 1; i >= 0; i--) {
            if (chain.charAt(i) == ')') {
                // the hydroxyl of ricinoleic acid stays behind its carbon
                turned.append(chain.charAt(i - 3)).append("(O)");
                i -= 3;
            } else {
                turned.append(chain.charAt(i));
            }
        }
        return turned.toString();
    }

    @Test
    void triolein_is_drawn_right() {
        String oleic = "CCCCCCCCC=CCCCCCCCC(=O)O";
        String ester = oleic + "CC(O" + reversed(oleic) + ")CO" + reversed(oleic);
        assertThat(MolecularFormulaManipulator.getString(formula(ester))).isEqualTo("C57H104O6");
    }

    /** Alkalis, and what the engine's factors are made of. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"O[Na], 39.997", "O[K], 56.105", "O, 18.015", "OCC(O)CO, 92.094"})
    void small_molecules(String smiles, double molarMass) {
        assertThat(molarMass(formula(smiles))).isCloseTo(molarMass, within(TOLERANCE_SMALL));
    }

    @Test
    void the_alkalis_molar_masses_are_those_of_their_structures() {
        assertThat(Alkali.SODIUM.molarMass()).isCloseTo(molarMass(formula("O[Na]")), within(TOLERANCE_SMALL));
        assertThat(Alkali.POTASSIUM.molarMass()).isCloseTo(molarMass(formula("O[K]")), within(TOLERANCE_SMALL));
    }

    /** Acids that are weighed as such, by formula. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "citric acid anhydrous, C6H8O7",
        "citric acid monohydrate, C6H10O8",
        "lactic acid pure basis, C3H6O3",
        "acetic acid pure, C2H4O2",
        "L-tartaric acid, C4H6O6",
        "ascorbic acid (first proton), C6H8O6",
        "malic acid, C4H6O5",
        "glycolic acid, C2H4O3",
        "sodium bicarbonate, CHNaO3",
        "benzoic acid, C7H6O2",
        "sorbic acid, C6H8O2",
        "salicylic acid (carboxyl), C7H6O3",
        "disodium EDTA dihydrate, C10H18N2Na2O10",
        "EDTA acid, C10H16N2O8"
    })
    void acids_that_are_weighed(String name, String formula) {
        IMolecularFormula parsed =
                MolecularFormulaManipulator.getMolecularFormula(formula, SilentChemObjectBuilder.getInstance());
        assertThat(Tables.bundled().acid(name).orElseThrow().molarMass())
                .isCloseTo(molarMass(parsed), within(TOLERANCE_SMALL));
    }

    /** Purity assumed where none is given: INRS sheet 20 has NaOH of 97 to 99 %, a handbook of 1908 KOH of 88 to 92 %. */
    @ParameterizedTest(name = "{0}: {1} to {2} %")
    @CsvSource({"SODIUM, 97, 99, 98, 0, naoh, sodium", "POTASSIUM, 88, 92, 90, 1, koh, potassium"})
    void purities_assumed(
            Alkali alkali, double low, double high, double middle, double water, String key, String word) {
        assertThat(alkali.assumedPurity().low()).isEqualTo(low);
        assertThat(alkali.assumedPurity().high()).isEqualTo(high);
        assertThat(alkali.assumedPercent())
                .isEqualTo(middle)
                .isEqualTo(alkali.assumedPurity().middle());
        assertThat(alkali.waterInRest()).isEqualTo(water);
        assertThat(alkali.key()).isEqualTo(key);
        assertThat(alkali.word()).isEqualTo(word);
    }
}
