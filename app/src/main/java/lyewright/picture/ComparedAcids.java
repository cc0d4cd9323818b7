package lyewright.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.chemistry.OilPhaseAcids.Share;
import lyewright.material.FattyAcid;
import lyewright.picture.Mark.Anchor;
import lyewright.words.Figures;

/** The fatty acids of two versions, pair by pair over one scale. */
final class ComparedAcids {

    private static final int WIDTH = 360;
    private static final double NAME = 116;
    private static final double PLOT = 190;
    private static final double ROW = 30;
    private static final double BAR = 10;
    private static final String UNKNOWN = "?";

    private final String nameA;
    private final OilPhaseAcids a;
    private final String nameB;
    private final OilPhaseAcids b;
    private final Canvas canvas = new Canvas();

    ComparedAcids(String nameA, OilPhaseAcids a, String nameB, OilPhaseAcids b) {
        this.nameA = nameA;
        this.a = a;
        this.nameB = nameB;
        this.b = b;
    }

    /** One acid of both: 0 of oils that do not list it, nothing where no oil's acids are known. */
    private record Pair(FattyAcid acid, Optional<Share> a, Optional<Share> b) {

        double most() {
            return shares().mapToDouble(s -> Math.max(s.percent(), s.highPercent()))
                    .max()
                    .orElse(0);
        }

        boolean large() {
            return shares().anyMatch(s -> s.percent() >= AcidRows.SMALL);
        }

        private Stream<Share> shares() {
            return Stream.of(a, b).flatMap(Optional::stream);
        }
    }

    private List<Pair> pairs() {
        return Stream.of(a, b)
                .flatMap(acids -> acids.acids().stream())
                .map(Share::acid)
                .distinct()
                .sorted(OilPhaseAcids.BY_SIZE)
                .map(acid -> new Pair(acid, of(a, acid), of(b, acid)))
                .filter(pair -> pair.most() > 0)
                .toList();
    }

    private static Optional<Share> of(OilPhaseAcids acids, FattyAcid acid) {
        if (!acids.known()) {
            return Optional.empty();
        }
        return Optional.of(acids.acids().stream()
                .filter(share -> share.acid().equals(acid))
                .findFirst()
                .orElse(new Share(acid, 0, 0, 0)));
    }

    Picture picture() {
        List<Pair> all = pairs();
        List<Pair> large = all.stream().filter(Pair::large).toList();
        double foot = large.isEmpty() ? nothing(legend()) : plot(large, legend());
        return new Picture(
                canvas.drawing("pic-acids", "Fatty acids of both", described(large), WIDTH, foot),
                "",
                notes(all.size() - large.size()),
                table(all));
    }

    private double legend() {
        canvas.box("f-full o", 1, 4, 14, BAR);
        canvas.small("t", 21, 13, Anchor.START, TextWidth.fit(nameA, Canvas.SMALL, WIDTH - 24.0));
        canvas.textured("f-none o", Texture.CLIMBING, 1, 22, 14, BAR);
        canvas.small("t", 21, 31, Anchor.START, TextWidth.fit(nameB, Canvas.SMALL, WIDTH - 24.0));
        return 48;
    }

    private double nothing(double y) {
        canvas.text("t", 1, y + 10, Anchor.START, "Not known of either.");
        return y + 18;
    }

    private double plot(List<Pair> large, double top) {
        double most = large.stream()
                .max(Comparator.comparingDouble(Pair::most))
                .orElseThrow()
                .most();
        double full = Math.max(10, 10 * Math.ceil(most / 10));
        double foot = top + ROW * large.size();
        for (int tick = 0; tick <= 2; tick++) {
            double x = NAME + PLOT * tick / 2;
            canvas.line(tick == 0 ? "axis" : "grid", x, top - 4, x, foot);
            String unit = tick == 2 ? " %" : "";
            canvas.small("t t-muted", x, foot + 14, Anchor.MIDDLE, Figures.upTo(full * tick / 2, 0) + unit);
        }
        double y = top;
        for (Pair pair : large) {
            AcidRows.name(canvas, pair.acid, NAME, y + 14);
            bar(pair.a, "f-full o", Texture.PLAIN, full, y);
            bar(pair.b, "f-none o", Texture.CLIMBING, full, y + BAR + 1);
            canvas.small("t", WIDTH - 1.0, y + 10, Anchor.END, figure(pair.a));
            canvas.small("t t-strong", WIDTH - 1.0, y + 23, Anchor.END, figure(pair.b));
            y += ROW;
        }
        return foot + 19;
    }

    private void bar(Optional<Share> share, String style, Texture texture, double full, double y) {
        share.ifPresent(s -> canvas.textured(style, texture, NAME, y, PLOT * s.percent() / full, BAR));
    }

    private static String figure(Optional<Share> share) {
        return share.map(s -> Figures.fixed(s.percent(), 1)).orElse(UNKNOWN);
    }

    private List<String> notes(int small) {
        List<String> notes = new ArrayList<>();
        notes.add("Middles of published ranges, scaled so that all come to 100 %."
                + (small > 0 ? " " + small + " under 0.5 % in both are in the table only." : ""));
        unknown(notes, nameA, a);
        unknown(notes, nameB, b);
        return notes;
    }

    private static void unknown(List<String> notes, String name, OilPhaseAcids acids) {
        if (!acids.known()) {
            notes.add(name + ": acids not known of any oil.");
        } else if (acids.unknownPercent() > 0) {
            notes.add(name + ": acids not known of " + Figures.percent(acids.unknownPercent(), 1)
                    + " of the oils, which count in none of this.");
        }
    }

    private String described(List<Pair> large) {
        return large.isEmpty()
                ? "No acid is known."
                : large.stream().map(this::described).collect(Collectors.joining("; ")) + ".";
    }

    private String described(Pair pair) {
        return AcidRows.name(pair.acid) + " " + figure(pair.a) + " % in " + nameA + ", " + figure(pair.b) + " % in "
                + nameB;
    }

    private FigureTable table(List<Pair> all) {
        return new FigureTable(
                "Fatty acids, percent of all that are known",
                List.of(FigureTable.words("Acid"), FigureTable.figures(nameA), FigureTable.figures(nameB)),
                all.stream()
                        .map(pair -> List.of(
                                AcidRows.name(pair.acid) + " " + pair.acid.code(), figure(pair.a), figure(pair.b)))
                        .toList());
    }
}
