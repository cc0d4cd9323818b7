package lyewright.formula;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.NotebookLine.Quantity;
import lyewright.formula.NotebookReader.Spot;
import lyewright.material.Alkali;
import lyewright.measure.MassUnit;
import lyewright.measure.WrittenMass;
import org.jspecify.annotations.Nullable;

/**
 * The percentages of a notebook. Where the alkali is one, it is a table in percent, of everything or of the oils: either way
 * each is so many grams in the same mass. Without the alkali they are shares of the oils, and nothing else may be a bare share.
 */
final class NotebookShares {

    /** How far a rounded table may be from 100 %. */
    private static final BigDecimal ROUNDING = new BigDecimal("0.5");

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private final List<Place> additions = new ArrayList<>();
    private @Nullable Place water;
    private @Nullable WrittenMass waterMass;
    private boolean alkali;

    /** An addition's place in the recipe, and where its share stands. */
    private record Place(int addition, Quantity amount, Spot spot) {}

    /** How a mass is read. */
    interface Weigh {
        @Nullable
        WrittenMass mass(Quantity amount, String of, Spot spot);
    }

    void water(Quantity share, Spot spot, Weigh weigh) {
        water = new Place(-1, share, spot);
        waterMass = weigh.mass(share.in("g"), "water", spot);
    }

    @Nullable
    WrittenMass alkali(Quantity share, Spot spot, Weigh weigh) {
        alkali = true;
        return weigh.mass(share.in("g"), "alkali", spot);
    }

    void addition(int place, Quantity share, Spot spot) {
        additions.add(new Place(place, share, spot));
    }

    /** Notes that the alkali is a share that cannot be read: what the others are of need not be said. */
    void missAlkali() {
        alkali = true;
    }

    boolean areOfTheWhole() {
        return alkali;
    }

    Optional<WrittenMass> water() {
        return Optional.ofNullable(waterMass);
    }

    /** Shares that nobody knows what they are of. */
    void sayOfWhat(Findings findings, NotebookOffers offers) {
        if (water != null) {
            String share = water.amount().toString();
            say(
                    findings,
                    water,
                    "write water " + share + " of oils, or water " + share + " lye for the lye's strength");
            offers.add(water.spot(), share + " of the oils", "water " + share + " of oils");
            offers.add(water.spot(), "the lye is to be " + share + " strong", "water " + share + " lye");
        }
        for (Place place : additions) {
            String share = place.amount().toString();
            say(findings, place, "write " + share + " of oils, or " + share + " of batch");
            offers.amount(place.spot(), place.amount(), share + " of the oils", share + " of oils");
            offers.amount(place.spot(), place.amount(), share + " of the batch", share + " of batch");
        }
    }

    private static void say(Findings findings, Place place, String remedy) {
        place.spot().at(place.amount()).say(findings, "'" + place.amount() + "' does not say of what", remedy);
    }

    /** Turns the oils' shares into grams, if the whole is a table in percent and nothing in it a mass. */
    void becomeMasses(
            Map<String, OilLine> oils,
            List<Addition> more,
            Map<Alkali, WrittenMass> alkalis,
            Map<String, List<String>> remarks,
            Findings findings) {
        boolean readSoFar = findings.problems().isEmpty();
        if (readSoFar && isMixed(oils, more)) {
            findings.expect("alkali");
            findings.add(
                    "oils",
                    "some of the recipe is in percent and some is not",
                    "write everything in percent, water and additions too, or everything as masses");
            return;
        }
        BigDecimal ofOils = BigDecimal.ZERO;
        for (Map.Entry<String, OilLine> entry : oils.entrySet()) {
            if (entry.getValue().amount() instanceof OilLine.Percent percent) {
                BigDecimal grams = percent.share().percent();
                ofOils = ofOils.add(grams);
                entry.setValue(new OilLine(entry.getKey(), new OilLine.Weight(new WrittenMass(grams, MassUnit.GRAM))));
            }
        }
        BigDecimal all = alkalis.values().stream().map(WrittenMass::value).reduce(ofOils, BigDecimal::add);
        all = waterMass == null ? all : all.add(waterMass.value());
        for (Addition addition : more) {
            all = addition.amount() instanceof Amount.Weight weight
                    ? all.add(weight.mass().value())
                    : all;
        }
        if (readSoFar) {
            checkSum(all, ofOils, findings);
        }
        remarks.computeIfAbsent("oils", at -> new ArrayList<>()).add(" typed in percent; read as so many grams");
    }

    private boolean isMixed(Map<String, OilLine> oils, List<Addition> more) {
        return waterMass == null
                || additions.size() < more.size()
                || oils.values().stream().anyMatch(line -> line.amount() instanceof OilLine.Weight);
    }

    private static void checkSum(BigDecimal all, BigDecimal ofOils, Findings findings) {
        if (!isHundred(all) && !isHundred(ofOils)) {
            findings.add(
                    "oils",
                    "the percentages add up to " + all.toPlainString() + " %, and those of the oils to "
                            + ofOils.toPlainString() + " %",
                    "write all that goes in, so that either adds up to 100 %");
        }
    }

    private static boolean isHundred(BigDecimal sum) {
        return sum.subtract(HUNDRED).abs().compareTo(ROUNDING) <= 0;
    }
}
