package lyewright.web.why;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.SuperfatBand;
import lyewright.material.OilKind;
import lyewright.picture.Picture;
import lyewright.picture.SuperfatDrawnPicture;
import lyewright.why.Reason;

/** What is drawn beside a reason: of figures that came of draws, the draws. */
final class WhyPicture {

    private static final List<String> OF_DRAWS = List.of("low95Percent", "high95Percent", "freeAlkaliProbability");

    private static final Pattern PATH = Pattern.compile("(?:superfat|portions\\[([0-9]+)\\])\\.([A-Za-z0-9]+)");

    private WhyPicture() {}

    static Optional<Picture> of(Reason reason, MakingSheet sheet) {
        Matcher path = PATH.matcher(reason.path());
        return path.matches() && OF_DRAWS.contains(path.group(2))
                ? Optional.of(SuperfatDrawnPicture.of(band(sheet, Optional.ofNullable(path.group(1))), hasWax(sheet)))
                : Optional.empty();
    }

    private static SuperfatBand band(MakingSheet sheet, Optional<String> portion) {
        return portion.map(
                        place -> sheet.portions().get(Integer.parseInt(place)).band())
                .orElse(sheet.band());
    }

    private static boolean hasWax(MakingSheet sheet) {
        return sheet.formula().oils().stream()
                .flatMap(part -> part.parts().stream())
                .anyMatch(part -> part.oil().kind() == OilKind.WAX);
    }
}
