package lyewright.records.backup;

import java.util.Map;
import java.util.Optional;
import lyewright.formula.OwnMaterial;
import lyewright.makingsheet.Balance;
import lyewright.measure.Length;
import lyewright.measure.WrittenMass;
import lyewright.records.Formulas;
import lyewright.records.Place;
import lyewright.records.Records;
import lyewright.records.Tinkering;
import lyewright.records.equipment.JugUse;
import lyewright.records.equipment.MouldMeasures;
import lyewright.records.equipment.MouldMeasures.Cut;
import lyewright.records.equipment.MouldMeasures.Loaf;
import lyewright.records.equipment.MouldMeasures.UsualMass;
import lyewright.records.people.Role;
import lyewright.records.setting.Degrees;
import lyewright.records.setting.Market;
import lyewright.records.setting.Paper;
import lyewright.records.setting.Units;
import lyewright.records.setting.Workshop;
import lyewright.records.stock.Stocked;

/** A workshop with something of everything in it, invented. */
public final class Filled {

    private static final byte[] PICTURE = {(byte) 0xff, (byte) 0xd8, (byte) 0xff, (byte) 0xe0, 7, 7, 7};

    private Filled() {}

    /** Fills records that are empty. */
    public static void fill(Records records) {
        records.settings()
                .save(new Workshop(
                        "Gannet Stair Soap",
                        Units.GRAMS,
                        Degrees.CELSIUS,
                        "GBP",
                        Market.GB,
                        Paper.A4,
                        Optional.of("98.5 ± 0.5"),
                        Optional.empty(),
                        "1 %"))
                .orThrow();
        String tideline = records.recipes()
                .add(Formulas.of("Tideline", 1, "5 %", "Sea-salt bar.\n'; DROP TABLE recipe; -- 石鹸 \\ \" \t end"))
                .orThrow()
                .recipeId();
        records.recipes().markMade(tideline, 1).orThrow();
        records.recipes()
                .save(tideline, 1, Formulas.of("Tideline", 1, "6 %", ""), false, "milder")
                .orThrow();
        String gone = records.recipes()
                .add(Formulas.named("Rope Walk Charcoal"))
                .orThrow()
                .recipeId();
        records.recipes().delete(gone).orThrow();
        String picture = records.photographs().keep(PICTURE);
        records.recipes().setPhotograph(tideline, Optional.of(picture)).orThrow();
        records.drafts().create(Optional.of(tideline), 2, "{\"superfat\":\"7,5\",\"x\":\"\\u0000 <script>\"}");
        records.drafts().create(Optional.empty(), 0, "{}");
        String helper = records.people().add("Wenna", Role.HELPER).orThrow().id();
        records.devices().letIn(helper, "telephone").orThrow();
        equip(records, tideline);
        OwnMaterial own = Formulas.read("""
                        recipe: holder
                        oils: {olive-virgin: 100 %}
                        alkali: sodium
                        superfat: 5 %
                        water: 33 % lye
                        materials:
                          house-olive:
                            kind: oil
                            saponification value: 189.5 ± 1.0 mg KOH/g
                            source: certificate L-204
                        """).materials().get(0);
        records.materials().add(own).orThrow();
        Stocked.fill(records);
    }

    private static void equip(Records records, String recipe) {
        Loaf loaf = new Loaf(length("12 in"), length("8 cm"), length("65 mm"));
        Cut cut = new Cut(
                length("25 mm"), Optional.empty(), Optional.of(length("1 mm")), Optional.empty(), Optional.empty());
        UsualMass usual = new UsualMass(WrittenMass.parse("1520 g").orThrow(), recipe, 1);
        records.equipment()
                .addMould(
                        "Long loaf",
                        new MouldMeasures(Optional.of(loaf), Optional.empty(), Optional.of(usual), Optional.of(cut)))
                .orThrow();
        records.equipment()
                .addBalance(Balance.parse("fine:200g:0.01g:II").orThrow())
                .orThrow();
        records.equipment()
                .addJug("white jug", WrittenMass.parse("11 oz").orThrow(), JugUse.LYE_JUG)
                .orThrow();
    }

    private static Length length(String text) {
        return Length.parse(text).orThrow();
    }

    /** Every row of every table, as text, the tables by name. */
    public static Map<String, String> everything(Place place) {
        return Tinkering.rows(place, TableOrder.TABLES);
    }
}
