package lyewright.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lays a formula out in the normal form of its file. */
final class FormulaWriter {

    private final Formula formula;
    private final Comments comments;
    private final Page page = new Page();

    private FormulaWriter(Formula formula, Comments comments) {
        this.formula = formula;
        this.comments = comments;
        head();
        oils();
        alkali();
        making();
        additions();
        portions();
        materials();
    }

    static String write(Formula formula) {
        Comments settled = settle(formula);
        return new FormulaWriter(formula, settled).page.text(settled);
    }

    /** The formula's comments, each at an entry that is written. */
    static Comments settle(Formula formula) {
        if (formula.comments().equals(Comments.NONE)) {
            return Comments.NONE;
        }
        // a group is opened into lines for comments inside it; once they have moved out, it is not: hence twice
        Comments once = new FormulaWriter(formula, formula.comments()).page.settle(formula.comments());
        return new FormulaWriter(formula, once).page.settle(once);
    }

    /** Whether something inside an entry has a comment, so that it needs lines of its own. */
    private boolean isOpen(String path) {
        String inside = path + ".";
        return comments.before().keySet().stream().anyMatch(p -> p.startsWith(inside))
                || comments.beside().keySet().stream().anyMatch(p -> p.startsWith(inside));
    }

    private void line(String path, int depth, String name, Object value) {
        page.line(path, depth, YamlText.key(name) + ": " + YamlText.value(value.toString()));
    }

    private void top(String name, Object value) {
        line(name, 0, name, value);
    }

    private void opening(String path, int depth, String name) {
        page.line(path, depth, YamlText.key(name) + ":");
    }

    /** A name and value inside a group. */
    private record Pair(String name, String value) {}

    /** A group in braces on one line, or, where a comment needs it, on a line for each name. */
    private void group(String path, int depth, String name, List<Pair> pairs) {
        if (isOpen(path)) {
            opening(path, depth, name);
            pairs.forEach(pair -> line(Places.join(path, pair.name()), depth + 1, pair.name(), pair.value()));
            return;
        }
        List<String> texts = new ArrayList<>();
        for (Pair pair : pairs) {
            texts.add(YamlText.inFlow(pair.name()) + ": " + YamlText.inFlow(pair.value()));
        }
        page.line(path, depth, YamlText.key(name) + ": {" + String.join(", ", texts) + "}");
    }

    private void head() {
        top(FormulaReader.RECIPE, formula.recipe());
        top(FormulaReader.VERSION, formula.version());
        top(FormulaReader.USE, formula.use().word());
        String notes = formula.notes();
        if (YamlText.isBlock(notes)) {
            page.block(
                    FormulaReader.NOTES,
                    0,
                    FormulaReader.NOTES + ": " + YamlText.blockSign(notes),
                    YamlText.blockLines(notes));
        } else if (!notes.isEmpty()) {
            top(FormulaReader.NOTES, notes);
        }
    }

    private void oils() {
        opening(FormulaReader.OILS, 0, FormulaReader.OILS);
        for (OilLine line : formula.oils()) {
            line(Places.join(FormulaReader.OILS, line.key()), 1, line.key(), print(line.amount()));
        }
    }

    private static String print(OilLine.Amount amount) {
        if (amount instanceof OilLine.Percent percent) {
            return percent.share().toString();
        }
        return amount instanceof OilLine.Weight weight ? weight.mass().toString() : "rest";
    }

    private void alkali() {
        String name = FormulaReader.ALKALI;
        AlkaliChoice choice = formula.alkali();
        if (choice instanceof AlkaliChoice.Single single) {
            top(name, single.alkali().word());
        } else if (choice instanceof AlkaliChoice.Stock stock && stock.mass().isEmpty()) {
            top(name, stock.key());
        } else {
            group(name, 0, name, pairs(choice));
        }
    }

    private static List<Pair> pairs(AlkaliChoice choice) {
        List<Pair> pairs = new ArrayList<>();
        if (choice instanceof AlkaliChoice.Mix mix) {
            pairs.add(new Pair("sodium", mix.sodium().toString()));
            pairs.add(new Pair("potassium", mix.potassium().toString()));
            pairs.add(new Pair("by", mix.by().word()));
        } else if (choice instanceof AlkaliChoice.Given given) {
            String fixed = given.fixed() ? " fixed" : "";
            given.sodium().ifPresent(mass -> pairs.add(new Pair("sodium", mass + fixed)));
            given.potassium().ifPresent(mass -> pairs.add(new Pair("potassium", mass + fixed)));
            given.as().ifPresent(as -> pairs.add(new Pair("as", as.word())));
        } else if (choice instanceof AlkaliChoice.Stock stock) {
            stock.mass().ifPresent(mass -> pairs.add(new Pair(stock.key(), mass + (stock.fixed() ? " fixed" : ""))));
        }
        return pairs;
    }

    private void making() {
        formula.superfat().ifPresent(share -> top(FormulaReader.SUPERFAT, share));
        top(FormulaReader.WATER, WaterText.print(formula.water()));
        formula.acids().ifPresent(rule -> top(FormulaReader.ACIDS, rule.word()));
        formula.curedWater().ifPresent(share -> top(FormulaReader.CURED_WATER, share));
        if (!formula.process().equals(Process.COLD)) {
            process(formula.process());
        }
    }

    private void process(Process process) {
        List<Pair> pairs = new ArrayList<>();
        pairs.add(new Pair(FormulaReader.MAKE, process.make().word()));
        add(pairs, FormulaReader.OILS, process.oils());
        add(pairs, FormulaReader.LYE, process.lye());
        add(pairs, FormulaReader.OVEN, process.oven());
        add(pairs, FormulaReader.POUR, process.pour());
        group(FormulaReader.PROCESS, 0, FormulaReader.PROCESS, pairs);
    }

    private static void add(List<Pair> pairs, String name, Optional<?> value) {
        value.ifPresent(v -> pairs.add(new Pair(name, v.toString())));
    }

    private void additions() {
        if (formula.additions().isEmpty()) {
            return;
        }
        opening(FormulaReader.ADDITIONS, 0, FormulaReader.ADDITIONS);
        for (int i = 0; i < formula.additions().size(); i++) {
            addition(
                    Places.join(FormulaReader.ADDITIONS, Integer.toString(i)),
                    formula.additions().get(i));
        }
    }

    private void addition(String path, Addition addition) {
        page.item(
                path,
                Places.join(path, FormulaReader.OF),
                1,
                "- " + FormulaReader.OF + ": " + YamlText.value(addition.of()));
        line(Places.join(path, FormulaReader.AMOUNT), 2, FormulaReader.AMOUNT, addition.amount());
        line(Places.join(path, FormulaReader.STAGE), 2, FormulaReader.STAGE, addition.stage());
        addition.disperse().ifPresent(disperse -> disperse(path, disperse));
        if (addition.replacesWater()) {
            line(Places.join(path, FormulaReader.REPLACES), 2, FormulaReader.REPLACES, FormulaReader.WATER);
        }
    }

    private void disperse(String path, Disperse disperse) {
        List<Pair> pairs = new ArrayList<>();
        pairs.add(new Pair(FormulaReader.IN, disperse.in()));
        pairs.add(new Pair(FormulaReader.RATIO, disperse.ratioText()));
        add(pairs, FormulaReader.AHEAD, disperse.ahead());
        group(Places.join(path, FormulaReader.DISPERSE), 2, FormulaReader.DISPERSE, pairs);
    }

    private void portions() {
        if (formula.portions().isEmpty()) {
            return;
        }
        opening(FormulaReader.PORTIONS, 0, FormulaReader.PORTIONS);
        for (PortionLine portion : formula.portions()) {
            String share = portion.share().map(Object::toString).orElse("rest");
            line(Places.join(FormulaReader.PORTIONS, portion.name()), 1, portion.name(), share);
        }
    }

    private void materials() {
        if (formula.materials().isEmpty()) {
            return;
        }
        opening(FormulaReader.MATERIALS, 0, FormulaReader.MATERIALS);
        for (OwnMaterial own : formula.materials()) {
            material(Places.join(FormulaReader.MATERIALS, own.key()), own);
        }
    }

    private void material(String path, OwnMaterial own) {
        List<Pair> before = new ArrayList<>();
        word(before, MaterialReader.KIND, own.kind());
        figure(before, MaterialReader.SAPONIFICATION_VALUE, own.saponificationValue(), MaterialReader.MG_KOH);
        figure(before, MaterialReader.ACID_VALUE, own.acidValue(), MaterialReader.MG_KOH);
        figure(before, MaterialReader.IODINE_VALUE, own.iodineValue(), MaterialReader.G_IODINE);
        add(before, MaterialReader.DENSITY, own.density());
        figure(before, MaterialReader.WATER, own.water(), MaterialReader.PERCENT);
        figure(before, MaterialReader.FAT, own.fat(), MaterialReader.PERCENT);
        figure(before, MaterialReader.FAT_SAPONIFICATION_VALUE, own.fatSaponificationValue(), MaterialReader.MG_KOH);
        figure(before, MaterialReader.SUGAR, own.sugar(), MaterialReader.PERCENT);
        figure(before, MaterialReader.SALT, own.salt(), MaterialReader.PERCENT);
        add(before, MaterialReader.ACID, own.acid().map(acid -> acid.share() + " % " + acid.name()));
        add(
                before,
                MaterialReader.STRENGTH,
                own.strength()
                        .map(strength ->
                                strength.pure() + " % " + strength.alkali().word()));
        List<Pair> behind = new ArrayList<>();
        word(behind, MaterialReader.INCI, own.inci());
        word(behind, MaterialReader.CAS, own.cas());
        word(behind, MaterialReader.SUPPLIER, own.supplier());
        word(behind, MaterialReader.SOURCE, own.source());
        if (before.isEmpty() && behind.isEmpty() && own.oils().isEmpty()) {
            page.line(path, 1, YamlText.key(own.key()) + ": {}");
            return;
        }
        opening(path, 1, own.key());
        before.forEach(pair -> line(Places.join(path, pair.name()), 2, pair.name(), pair.value()));
        blend(Places.join(path, MaterialReader.OILS), own.oils());
        behind.forEach(pair -> line(Places.join(path, pair.name()), 2, pair.name(), pair.value()));
    }

    private void blend(String path, List<OwnMaterial.BlendPart> parts) {
        if (parts.isEmpty()) {
            return;
        }
        opening(path, 2, MaterialReader.OILS);
        parts.forEach(part -> line(Places.join(path, part.key()), 3, part.key(), part.amount()));
    }

    private static void word(List<Pair> pairs, String name, String value) {
        if (!value.isEmpty()) {
            pairs.add(new Pair(name, value));
        }
    }

    private static void figure(List<Pair> pairs, String name, Optional<WrittenFigure> figure, String unit) {
        add(pairs, name, figure.map(f -> f + " " + unit));
    }
}
