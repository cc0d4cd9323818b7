package lyewright.benchmarks;

import static lyewright.benchmarks.Figures.ADDITIONS;
import static lyewright.benchmarks.Figures.OILS;

import java.util.ArrayList;
import java.util.List;

/**
 * The making sheet of {@link TenItems} as cells of a workbook, as a careful maker might lay it out. Lines are numbered as
 * on the sheet: oils 0 to 4, clay 5, its water 6, fragrance 7 and 8, salt 9 and 10 (a portion each), water 11, sodium
 * hydroxide 12. Every formula is something that the engine computes too.
 */
final class SheetCells {

    private final NamedCells cells = new NamedCells();
    private final Figures figures;
    private final List<String> cautions = new ArrayList<>();

    private SheetCells(Figures figures) {
        this.figures = figures;
    }

    static NamedCells of(Figures figures) {
        SheetCells sheet = new SheetCells(figures);
        sheet.typeIn();
        sheet.typeInMaterials();
        sheet.typeInTables();
        sheet.perGramOfOils();
        sheet.exactMasses();
        sheet.balances();
        sheet.weighedMasses();
        sheet.readings();
        sheet.totals();
        sheet.lye();
        sheet.density();
        sheet.portions();
        sheet.cautionsOfLyeAndSuperfat();
        sheet.cautionsOfMaterials();
        sheet.cautionsOfWeighing();
        sheet.countCautions();
        return sheet.cells;
    }

    private void typeIn() {
        cells.number("target", 1500);
        cells.number("holdBack", 0);
        cells.number("fixed", 0);
        cells.number("perBatch", 0);
        cells.numbers("percent", figures.oilPercent);
        cells.formula("percent4", "100-SUM({percent0}:{percent3})");
        cells.number("superfat", figures.superfat);
        cells.number("strength", figures.lyeStrength);
        cells.number("purity", figures.purity);
        cells.number("naoh", Figures.NAOH);
        cells.number("koh", Figures.MILLIGRAMS_KOH_PER_MOLE);
        cells.number("clayRate", figures.clayGramsPerKilogram);
        cells.number("clayLiquid", figures.clayLiquid);
        cells.number("clayAhead", figures.clayHoursAhead);
        cells.number("fragranceRate", figures.fragrancePercent);
        cells.number("saltRate", figures.saltPercent);
        cells.number("plain", figures.plainPercent);
        cells.formula("kelp", "100-{plain}");
        cells.number("oilsAt", Figures.BLENDED_AT);
        cells.number("lyeAt", Figures.BLENDED_AT);
        cells.number("cooledTo", Figures.COOLED_TO);
        cells.numbers("capacity", figures.capacity);
        cells.numbers("step", figures.step);
    }

    private void typeInMaterials() {
        cells.numbers("sv", figures.saponificationValue);
        cells.numbers("oilDensity", figures.oilDensity);
        cells.numbers("oilDensityAt", figures.oilDensityAt);
        cells.numbers("oilSlope", figures.oilDensitySlope);
        cells.numbers("lathers", figures.lathers);
        cells.numbers("wide", figures.wide);
        cells.numbers("remembered", figures.remembered);
        cells.numbers("density", figures.density);
        cells.numbers("fat", figures.fat);
        cells.numbers("fatSv", figures.fatSaponificationValue);
        cells.numbers("acid", figures.acid);
        cells.numbers("moist", figures.water);
        cells.numbers("salty", figures.salt);
        cells.numbers("sweet", figures.sugar);
        cells.number("waterDensity", Figures.WATER_DENSITY);
        cells.number("restDensity", Figures.REST_DENSITY);
    }

    private void typeInTables() {
        cells.column("lyePercents", figures.lyePercents);
        cells.table("lyeCelsius", new double[][] {figures.lyeCelsius});
        cells.table("lyeDensities", figures.lyeDensities);
        cells.column("solubleAt", figures.solubility[0]);
        cells.column("soluble", figures.solubility[1]);
        cells.column("saltAt", figures.saltInLye[0]);
        cells.column("saltHeld", figures.saltInLye[1]);
    }

    private void perGramOfOils() {
        cells.formulas("eq", 0, OILS, "{sv#}/{koh}");
        cells.formulas("fatEq", 0, ADDITIONS, "{fat#}*{fatSv#}/{koh}");
        cells.formulas("k", 0, OILS, "{percent#}/100");
        cells.formula("k5", "{clayRate}/1000*{kelp}/100");
        cells.formula("k6", "{k5}*{clayLiquid}");
        cells.formula("k7", "{fragranceRate}/100*{plain}/100");
        cells.formula("k8", "{fragranceRate}/100*{kelp}/100");
        cells.formula("k9", "{saltRate}/100*{plain}/100");
        cells.formula("k10", "{saltRate}/100*{kelp}/100");
        cells.formula(
                "moles",
                "(SUMPRODUCT({k0}:{k4},{eq0}:{eq4})+{k5}*{fatEq0}+({k7}+{k8})*{fatEq1}+({k9}+{k10})*{fatEq2})"
                        + "*(1-{superfat})+{k5}*{acid0}+({k7}+{k8})*{acid1}+({k9}+{k10})*{acid2}");
        cells.formula("rule", "{moles}*{naoh}*(1-{strength})/{strength}");
        cells.formula("k11", "{rule}-{k6}");
        cells.formula("k12", "{moles}*{naoh}/{purity}");
    }

    private void exactMasses() {
        cells.formula("a", "SUM({k0}:{k10})+{k11}+{k12}");
        cells.formula("oilsAsked", "({target}/(1-{holdBack})*(1-{perBatch})-{fixed})/{a}");
        cells.formulas("exact", 0, 13, "{k#}*{oilsAsked}");
        cells.formula("possible", "IF(AND(MIN({exact0}:{exact12})>=-0.000000001,SUM({exact0}:{exact4})>0),1,0)");
        cells.formulas("share", 0, 13, "100*{exact#}/SUM({exact0}:{exact4})");
    }

    /** The step of the finest balance that carries a load. */
    private static String finest(String load) {
        return "IF(" + load + "<={capacity0},{step0},{step1})";
    }

    private void balances() {
        cells.formula("jugFirst", finest("{exact11}+{exact12}"));
        cells.formula("potFirst", finest("SUM({exact0}:{exact4})"));
        cells.formula("alkaliFirst", "IF({exact12}/{jugFirst}<200," + finest("{exact12}") + ",{jugFirst})");
        cells.formula("alkaliApart", "IF({alkaliFirst}<{jugFirst},1,0)");
        cells.formulas("apart", 0, OILS, "IF(AND({exact#}/{potFirst}<20," + finest("{exact#}") + "<{potFirst}),1,0)");
        cells.formula("pot", finest("SUMIF({apart0}:{apart4},0,{exact0}:{exact4})"));
        cells.formula("jug", finest("{exact11}+(1-{alkaliApart})*{exact12}"));
        cells.formulas("by", 0, OILS, "IF({apart#}=1," + finest("{exact#}") + ",{pot})");
        cells.formula("by5", finest("{exact5}+{exact6}"));
        cells.formula("by6", "{by5}");
        cells.formulas("by", 7, 11, finest("{exact#}"));
        cells.formula("by11", "{jug}");
        cells.formula("by12", "IF({alkaliApart}=1,{alkaliFirst},{jug})");
    }

    private void weighedMasses() {
        cells.formulas("weigh", 0, 12, "ROUND({exact#}/{by#},0)*{by#}");
        cells.formula("oilEquivalents", "SUMPRODUCT({weigh0}:{weigh4},{eq0}:{eq4})");
        cells.formula(
                "equivalents",
                "{oilEquivalents}+{weigh5}*{fatEq0}+({weigh7}+{weigh8})*{fatEq1}" + "+({weigh9}+{weigh10})*{fatEq2}");
        cells.formula("taken", "{weigh5}*{acid0}+({weigh7}+{weigh8})*{acid1}+({weigh9}+{weigh10})*{acid2}");
        cells.formula(
                "weigh12", "INT(((1-{superfat})*{equivalents}+{taken})*{naoh}/{purity}/{by12}+0.000000001)*{by12}");
        cells.formula("alkaliMoles", "{weigh12}*{purity}/{naoh}");
        cells.formula("sheetSuperfat", "100*(1-MAX(0,{alkaliMoles}-{taken})/{equivalents})");
    }

    private void readings() {
        cells.formula("reading0", "{weigh0}");
        for (int i = 1; i < OILS; i++) {
            String before = "SUMIF({apart0}:{apart" + (i - 1) + "},0,{weigh0}:{weigh" + (i - 1) + "})";
            cells.formula("reading" + i, "{weigh" + i + "}+IF({apart" + i + "}=1,0," + before + ")");
        }
        cells.formula("reading5", "{weigh5}");
        cells.formula("reading6", "{weigh5}+{weigh6}");
        cells.formulas("reading", 7, 12, "{weigh#}");
        cells.formula("reading12", "{weigh12}+IF({alkaliApart}=1,0,{weigh11})");
    }

    private void totals() {
        cells.formula("oils", "SUM({weigh0}:{weigh4})");
        cells.formula("batch", "SUM({weigh0}:{weigh11})+{weigh12}");
        cells.formula("mould", "{batch}*(1-{holdBack})");
        cells.formula("water", "{weigh6}+{weigh11}");
        cells.formula("brought", "{weigh5}*{moist0}+({weigh7}+{weigh8})*{moist1}+({weigh9}+{weigh10})*{moist2}");
        cells.formula("saltGrams", "{weigh5}*{salty0}+({weigh7}+{weigh8})*{salty1}+({weigh9}+{weigh10})*{salty2}");
    }

    /** On the straight line through the points around a value of a table. */
    private void lookUp(String name, String value, String known, String sought) {
        cells.formula(name + "Place", "MIN(MATCH(" + value + "," + known + ",1),ROWS(" + known + ")-1)");
        String at = "INDEX(" + known + ",{" + name + "Place})";
        String next = "INDEX(" + known + ",{" + name + "Place}+1)";
        String low = "INDEX(" + sought + ",{" + name + "Place})";
        String high = "INDEX(" + sought + ",{" + name + "Place}+1)";
        cells.formula(name, low + "+(" + high + "-" + low + ")*(" + value + "-" + at + ")/(" + next + "-" + at + ")");
    }

    private void lye() {
        cells.formula("pure", "{weigh12}*{purity}");
        cells.formula("concentration", "100*{pure}/({pure}+{weigh11})");
        cells.formula("pureStrength", "100*{pure}/({pure}+{water})");
        cells.formula("weighedStrength", "100*{weigh12}/({weigh12}+{water})");
        lookUp("saturated", "{cooledTo}", "{solubleAt}", "{soluble}");
        cells.formula("waterLeft", "{weigh11}-{pure}*(100-{saturated})/{saturated}");
        cells.formula("saltPerWater", "100*{saltGrams}/({water}+{brought})");
        cells.formula("alkaliPerWater", "MIN(100*{pure}/({water}+{brought}),MAX({saltAt}))");
        lookUp("held", "{alkaliPerWater}", "{saltAt}", "{saltHeld}");
    }

    private void density() {
        cells.formulas("warm", 0, OILS, "{oilDensity#}+{oilSlope#}*({oilsAt}-{oilDensityAt#})");
        cells.formulas("volume", 0, OILS, "{weigh#}/{warm#}");
        cells.formula("volume5", "{weigh5}/{density0}");
        cells.formula("volume6", "{weigh6}/{waterDensity}");
        cells.formula("volume7", "{weigh7}/{density1}");
        cells.formula("volume8", "{weigh8}/{density1}");
        cells.formula("volume9", "{weigh9}/{density2}");
        cells.formula("volume10", "{weigh10}/{density2}");
        cells.formula("row", "MIN(MATCH({concentration},{lyePercents},1),ROWS({lyePercents})-1)");
        cells.formula("column", "MIN(MATCH({lyeAt},{lyeCelsius},1),COLUMNS({lyeCelsius})-1)");
        cells.formula(
                "along",
                "({lyeAt}-INDEX({lyeCelsius},1,{column}))"
                        + "/(INDEX({lyeCelsius},1,{column}+1)-INDEX({lyeCelsius},1,{column}))");
        cells.formula(
                "across",
                "({concentration}-INDEX({lyePercents},{row}))"
                        + "/(INDEX({lyePercents},{row}+1)-INDEX({lyePercents},{row}))");
        cells.formula("weaker", between("{row}"));
        cells.formula("stronger", between("{row}+1"));
        cells.formula("lyeDensity", "{weaker}+{across}*({stronger}-{weaker})");
        cells.formula("lyeVolume", "({pure}+{weigh11})/{lyeDensity}");
        cells.formula("restVolume", "MAX(0,{weigh12}-{pure})/{restDensity}");
        cells.formula("batterDensity", "{batch}/(SUM({volume0}:{volume10})+{lyeVolume}+{restVolume})");
    }

    private static String between(String row) {
        String left = "INDEX({lyeDensities}," + row + ",{column})";
        return left + "+{along}*(INDEX({lyeDensities}," + row + ",{column}+1)-" + left + ")";
    }

    private void portions() {
        cells.formula("base", "{oils}+{weigh11}+{weigh12}");
        cells.formula("base0", "{base}*{plain}/100");
        cells.formula("base1", "{base}*{kelp}/100");
        cells.formula("portionOils0", "{oils}*{plain}/100");
        cells.formula("portionOils1", "{oils}*{kelp}/100");
        cells.formula("portionWater0", "{weigh11}*{plain}/100+{weigh7}*{moist1}+{weigh9}*{moist2}");
        cells.formula(
                "portionWater1",
                "{weigh11}*{kelp}/100+{weigh6}+{weigh5}*{moist0}+{weigh8}*{moist1}+{weigh10}*{moist2}");
        cells.formula("portion0", "{base0}+{weigh7}+{weigh9}");
        cells.formula("portion1", "{base1}+{weigh5}+{weigh6}+{weigh8}+{weigh10}");
        portionSuperfat(0, "{plain}", "({weigh7}*{#1}+{weigh9}*{#2})");
        portionSuperfat(1, "{kelp}", "({weigh5}*{#0}+{weigh8}*{#1}+{weigh10}*{#2})");
        addition(7, 0, "{base0}+{weigh7}");
        addition(9, 0, "{jugReading7}+{weigh9}");
        addition(5, 1, "{base1}+{weigh5}+{weigh6}");
        addition(8, 1, "{jugReading5}+{weigh8}");
        addition(10, 1, "{jugReading8}+{weigh10}");
    }

    /** The base batter's share of oils and alkali, and what the portion's own additions bring and take. */
    private void portionSuperfat(int portion, String share, String additions) {
        cells.formula(
                "portionSuperfat" + portion,
                "100*(1-MAX(0,{alkaliMoles}*" + share + "/100-" + additions.replace("#", "acid")
                        + ")/({oilEquivalents}*" + share + "/100+" + additions.replace("#", "fatEq") + "))");
    }

    private void addition(int line, int portion, String reading) {
        cells.formula("ofAll" + line, "1000*{weigh" + line + "}/{oils}");
        cells.formula("ofPortion" + line, "1000*{weigh" + line + "}/{portionOils" + portion + "}");
        cells.formula("jugReading" + line, reading);
    }

    /** A test that gives 0 for nothing, 1 for a note, 2 for care, 3 for stop. All stand below each other at the end. */
    private void caution(String test) {
        cautions.add(test);
    }

    private void cautionsOfLyeAndSuperfat() {
        cells.numbers("usualSuperfat", figures.superfatLow, figures.superfatHigh);
        cells.numbers("usualSaltBar", figures.saltBarSuperfatLow, figures.saltBarSuperfatHigh);
        cells.number("purityGiven", 0);
        cells.number("purityLeast", figures.purityLeast);
        cells.formula("saltShare", "100*({weigh9}+{weigh10})/{oils}");
        cells.formula("saltBar", "IF({saltShare}>=25,1,0)");
        cells.formula("low", "IF({saltBar}=1,{usualSaltBar0},{usualSuperfat0})");
        cells.formula("high", "IF({saltBar}=1,{usualSaltBar1},{usualSuperfat1})");
        caution("IF({weigh11}<{pure},3,IF({concentration}>40,2,0))");
        caution("IF({concentration}<22,1,0)");
        caution("IF(AND({weigh12}>0,{purityGiven}=0),1,0)");
        caution("IF(AND({weigh12}>0,100*{purity}<{purityLeast}),2,0)");
        caution("IF(ABS({oilsAt}-{lyeAt})>10.01,1,0)");
        caution("IF({sheetSuperfat}<-0.000000001,3,0)");
        caution("IF(OR({sheetSuperfat}<-0.000000001,AND({sheetSuperfat}>{low}-0.05,{sheetSuperfat}<{high}+0.05)),0,"
                + "IF(OR({sheetSuperfat}<{low}-3,{sheetSuperfat}>{high}+7),2,1))");
        for (int p = 0; p < 2; p++) {
            String own = "{portionSuperfat" + p + "}";
            caution("IF(" + own + ">{sheetSuperfat}-0.5,0,IF(" + own + "<-0.000000001,3,IF(" + own + "<{low}-3,2,1)))");
        }
        caution("IF(100*MIN({taken},{alkaliMoles})/{equivalents}<0.05,0,1)");
    }

    private void cautionsOfMaterials() {
        cells.number("latherLeast", figures.latherFatLeast);
        cells.number("clayMost", figures.clayUsualMost);
        cells.number("fragranceMost", figures.fragranceUsualMost);
        cells.number("clayLiquidLeast", figures.clayLiquidLeast);
        cells.number("clayHoursLeast", figures.clayHoursLeast);
        caution("IF(SUM({wide0}:{wide4})>0,1,0)");
        caution("IF(SUM({remembered0}:{remembered4})>0,1,0)");
        caution("IF({saltShare}>=150,3,IF({saltShare}>100.05,2,IF(AND({saltShare}>5,{saltBar}=0),1,0)))");
        caution("IF(AND({saltShare}>=49.95,100*SUMPRODUCT({k0}:{k4},{lathers0}:{lathers4})<{latherLeast}-0.05),2,0)");
        caution("IF(AND({saltBar}=1,{saltPerWater}>{held}),1,0)");
        cells.formula("clayShare", "100*{weigh5}/({oils}*{kelp}/100)");
        caution("IF(AND({clayShare}>{clayMost}*1.005,{clayShare}>{clayMost}+0.005),2,0)");
        cells.formula("fragranceShare", "100*({weigh7}+{weigh8})/{oils}");
        caution("IF(AND({fragranceShare}>{fragranceMost}*1.005,{fragranceShare}>{fragranceMost}+0.005),2,0)");
        caution("IF({clayAhead}>24,2,0)");
        caution("IF({clayLiquid}<{clayLiquidLeast}-0.000000001,2,0)");
        caution("IF({clayAhead}<{clayHoursLeast}-0.000000001,1,0)");
        caution("IF(1000*({weigh5}*{sweet0}+({weigh7}+{weigh8})*{sweet1}+({weigh9}+{weigh10})*{sweet2})/{oils}<5,0,1)");
    }

    private void cautionsOfWeighing() {
        cells.formulas("coarse", 0, 13, "IF({exact#}/{by#}<20,IF({weigh#}=0,2,1),0)");
        String fragrance = "IF({exact7}/{by7}<50,2,0),IF({exact8}/{by8}<50,2,0)";
        caution("MAX({coarse0}:{coarse12}," + fragrance + ",IF({exact12}/{by12}<200,2,0))");
        tooHeavy("SUMIF({apart0}:{apart4},0,{weigh0}:{weigh4})", "pot");
        for (int i = 0; i < OILS; i++) {
            tooHeavy("{apart" + i + "}*{weigh" + i + "}", "by" + i);
        }
        tooHeavy("{weigh11}+(1-{alkaliApart})*{weigh12}", "jug");
        tooHeavy("{alkaliApart}*{weigh12}", "by12");
        tooHeavy("{weigh5}+{weigh6}", "by5");
        for (int i = 7; i < 11; i++) {
            tooHeavy("{weigh" + i + "}", "by" + i);
        }
    }

    private void tooHeavy(String load, String balance) {
        caution("IF(" + load + ">IF({" + balance + "}={step0},{capacity0},{capacity1}),2,0)");
    }

    private void countCautions() {
        for (int i = 0; i < cautions.size(); i++) {
            cells.formula("caution" + i, cautions.get(i));
        }
        String all = "{caution0}:{caution" + (cautions.size() - 1) + "}";
        cells.formula("notes", "COUNTIF(" + all + ",1)");
        cells.formula("cares", "COUNTIF(" + all + ",2)");
        cells.formula("stops", "COUNTIF(" + all + ",3)");
    }
}
