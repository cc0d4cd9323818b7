package lyewright.why;

import java.util.List;
import java.util.function.Function;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.chemistry.Stoichiometry;
import lyewright.material.Alkali;
import lyewright.why.Term.Given;

/**
 * Who takes alkali and who brings it, for some lines of a batch.
 *
 * @param ledger the sheet
 * @param mass the mass of a line that is meant: as weighed, or before rounding
 * @param which word put before the steps' names, empty or such as {@code "exact "}
 */
record Reacting(Ledger ledger, Function<Line, Term> mass, String which) {

    static Reacting asWeighed(Ledger ledger) {
        return new Reacting(ledger, ledger::weighed, "");
    }

    static Reacting exact(Ledger ledger) {
        return new Reacting(ledger, Line::exact, "exact ");
    }

    /** The same with another word before its steps' names. */
    Reacting named(String word) {
        return new Reacting(ledger, mass, word);
    }

    static Given milligramsPerMole() {
        return new Given(
                "mg KOH in a mol",
                Stoichiometry.MILLIGRAMS_KOH_PER_MOLE,
                "mg/mol",
                "turns mg KOH into mol; molar mass of potassium hydroxide",
                Sources.ATOMIC_WEIGHTS);
    }

    /** What the oil phase can take, the fat of additions with it. */
    Term equivalents(List<Line> lines) {
        return equivalents(lines, which + "equivalents", "alkali that the oils, waxes and fats can take");
    }

    Term equivalents(List<Line> lines, String name, String meaning) {
        List<Line> takers = lines.stream()
                .filter(line -> ledger.isOil(line) || line.line().equivalents() > 0)
                .toList();
        return Ledger.sum(takers, this::milligramsTaken)
                .over(milligramsPerMole())
                .as(name, "mol", meaning);
    }

    private Term milligramsTaken(Line line) {
        return mass.apply(line)
                .times(
                        ledger.isOil(line)
                                ? Contents.saponificationValue(Contents.oil(ledger, line))
                                : Contents.fat(ledger, line));
    }

    static boolean takesFirst(Line line) {
        return line.line().taken() > 0;
    }

    /** What acids among the additions take first. */
    Term taken(List<Line> lines) {
        return Ledger.sum(
                        lines.stream().filter(Reacting::takesFirst).toList(),
                        line -> mass.apply(line).times(Contents.acidOf(ledger, line)))
                .as(which + "taken", "mol", "alkali that acids and bicarbonate among the additions take first");
    }

    /** All alkali in it. */
    Term alkali(List<Line> lines) {
        return alkali(lines, "alkali");
    }

    Term alkali(List<Line> lines, String name) {
        return Ledger.sum(lines.stream().filter(line -> line.is(Kind.ALKALI)).toList(), this::moles)
                .as(which + name, "mol", name + " weighed");
    }

    private Term moles(Line line) {
        Alkali alkali = Alkalis.of(ledger, line);
        return mass.apply(line).times(Alkalis.strength(ledger, line)).over(Alkalis.molarMass(alkali));
    }

    /** Free acid of the oils. */
    Term freeAcid(List<Line> lines) {
        List<Line> acid =
                lines.stream().filter(line -> line.line().freeAcid() > 0).toList();
        return Ledger.sum(acid, line -> mass.apply(line).times(Contents.freeAcid(Contents.oil(ledger, line))))
                .over(milligramsPerMole())
                .as(which + "free acid", "mol", "free acid of the oils");
    }

    /** Alkali that reaches the oils. */
    Term reaching(List<Line> lines) {
        return lines.stream().noneMatch(Reacting::takesFirst)
                ? alkali(lines)
                : Term.call(
                                lyewright.why.Function.MAX,
                                Term.number(0),
                                alkali(lines).minus(taken(lines)))
                        .as(which + "reaching", "mol", "alkali that reaches the oils");
    }
}
