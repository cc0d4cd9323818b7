package lyewright.formula;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.NotebookLine.Quantity;
import lyewright.formula.NotebookReader.Spot;
import lyewright.material.Additive;
import lyewright.material.AdditiveKind;
import lyewright.material.Oil;
import lyewright.measure.MassUnit;

/**
 * Spoons, cups, fluid ounces and millilitres where something is weighed. What they hold is never taken for granted: it is
 * offered, with what it weighs, for water, oils and whatever else pours. A heap of powder is not offered: it has air in it.
 */
final class NotebookVolumes {

    /** Where oils are measured; what is solid there is measured melted, which weighs nearly the same. */
    private static final double ROOM_CELSIUS = 20;

    private static final double COARSE_FROM = 10;

    /** Fluid ounce, pint, quart and gallon: 231 cubic inches, and 4.54609 l (Weights and Measures Act 1985), to the gallon. */
    private static final List<Measure> FLUID =
            List.of(new Measure("US fluid ounces", 29.5735295625), new Measure("imperial fluid ounces", 28.4130625));

    private static final List<Measure> PINTS =
            List.of(new Measure("US pints", 473.176473), new Measure("imperial pints", 568.26125));
    private static final List<Measure> QUARTS =
            List.of(new Measure("US quarts", 946.352946), new Measure("imperial quarts", 1136.5225));
    private static final List<Measure> GALLONS =
            List.of(new Measure("US gallons", 3785.411784), new Measure("imperial gallons", 4546.09));

    /** Cups and spoons are common practice. */
    private static final List<Measure> CUPS =
            List.of(new Measure("US cups", 236.5882365), new Measure("metric cups", 250));

    private static final List<Measure> TABLESPOONS = List.of(new Measure("spoons of 15 ml", 15));
    private static final List<Measure> TEASPOONS = List.of(new Measure("spoons of 5 ml", 5));

    private static final Map<String, List<Measure>> MEASURES = Map.ofEntries(
            Map.entry("ml", List.of(new Measure("ml", 1))),
            Map.entry("l", List.of(new Measure("l", 1000))),
            Map.entry("pint", PINTS),
            Map.entry("pints", PINTS),
            Map.entry("quart", QUARTS),
            Map.entry("quarts", QUARTS),
            Map.entry("gal", GALLONS),
            Map.entry("gallon", GALLONS),
            Map.entry("gallons", GALLONS),
            Map.entry("cup", CUPS),
            Map.entry("cups", CUPS),
            Map.entry("tbsp", TABLESPOONS),
            Map.entry("tsp", TEASPOONS));

    private final MaterialNames materials;
    private final NotebookOffers offers;
    private final boolean ounces;

    /**
     * For one notebook.
     *
     * @param materials what may be named
     * @param offers where the offers go
     * @param ounces whether the notebook weighs in ounces
     */
    NotebookVolumes(MaterialNames materials, NotebookOffers offers, boolean ounces) {
        this.materials = materials;
        this.offers = offers;
        this.ounces = ounces;
    }

    /** One way of understanding a measure. */
    private record Measure(String called, double millilitres) {}

    private static List<Measure> measures(String unit) {
        return NotebookUnits.isFluid(unit) ? FLUID : MEASURES.getOrDefault(unit, List.of());
    }

    /** Offers what so much of something may weigh or hold, where that is known. */
    void offer(NotebookLine line, Quantity amount, Spot spot) {
        Optional<Double> many = amount.of().isEmpty() ? number(amount) : Optional.empty();
        String typed = line.nameWithout(amount);
        if (many.isEmpty() || TradeWords.alkali(typed).isPresent()) {
            return;
        }
        boolean poured = false;
        for (Measure measure : measures(amount.unit())) {
            Optional<String> becomes = becomes(typed, many.get() * measure.millilitres(), amount.unit());
            String how = NotebookUnits.isVolume(amount.unit()) ? ", by its density" : ", in " + measure.called();
            becomes.ifPresent(text -> offers.amount(spot, amount, text + how, text));
            poured |= becomes.isPresent();
        }
        if (poured && NotebookUnits.isFluid(amount.unit())) {
            String weighed = amount.number() + " oz";
            offers.amount(spot, amount, weighed + ", on a balance", weighed);
        }
    }

    private static Optional<Double> number(Quantity amount) {
        return amount.number().matches("[0-9]{0,6}(?:\\.[0-9]{1,6})?")
                        && !amount.number().isEmpty()
                ? Optional.of(new BigDecimal(amount.number()).doubleValue())
                : Optional.empty();
    }

    /** So many millilitres of something as a notebook takes them: a mass, or a volume where that is enough. */
    private Optional<String> becomes(String typed, double millilitres, String unit) {
        if (TradeWords.isWater(typed) && materials.own(typed).isEmpty()) {
            return Optional.of(mass(millilitres));
        }
        Meant meant = materials.names().find(typed, any -> true);
        if (!meant.isOne()) {
            return Optional.empty();
        }
        String key = meant.key();
        if (materials.belongs(key, MaterialNames.Place.OILS)) {
            return materials.own(key).isPresent()
                    ? Optional.empty()
                    : materials.tables().oil(key).map(oil -> mass(millilitres * density(oil)));
        }
        return pours(key) && !NotebookUnits.isVolume(unit)
                ? Optional.of(rounded(millilitres) + " ml")
                : Optional.empty();
    }

    private static double density(Oil oil) {
        return oil.density().at(Math.max(ROOM_CELSIUS, oil.density().atCelsius()));
    }

    private boolean pours(String key) {
        return materials
                .own(key)
                .map(OwnMaterial::kind)
                .filter(kind -> !kind.isEmpty())
                .map(kind -> kind.equals(AdditiveKind.LIQUID.word()) || kind.equals(AdditiveKind.FRAGRANCE.word()))
                .orElseGet(() ->
                        materials.tables().additive(key).filter(Additive::pours).isPresent());
    }

    private String mass(double grams) {
        return ounces ? plain(grams / MassUnit.OUNCE.grams().doubleValue(), 2) + " oz" : rounded(grams) + " g";
    }

    private static String rounded(double figure) {
        return plain(figure, figure < COARSE_FROM ? 1 : 0);
    }

    private static String plain(double figure, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", figure);
        return decimals == 0 ? text : new BigDecimal(text).stripTrailingZeros().toPlainString();
    }
}
