package lyewright.web.setting;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import lyewright.material.Alkali;
import lyewright.material.Figure;
import lyewright.material.Tables;
import lyewright.measure.Problem;
import lyewright.records.recipe.Search;
import lyewright.records.setting.Degrees;
import lyewright.records.setting.Market;
import lyewright.records.setting.Paper;
import lyewright.records.setting.Units;
import lyewright.web.Frame;
import lyewright.web.Shop;
import lyewright.web.TextField;
import lyewright.web.setting.SettingPage.About;
import lyewright.web.setting.SettingPage.Choice;
import lyewright.web.setting.SettingPage.Choices;
import lyewright.words.Dates;
import lyewright.words.Figures;
import lyewright.words.Sentences;

/** Lays the page of settings out. */
final class SettingView {

    private static final Set<String> FIELDS = Set.of(
            "name", "units", "degrees", "currency", "market", "paper", "sodiumPurity", "potassiumPurity", "holdBack");

    private final Shop shop;
    private final Path home;

    SettingView(Shop shop, Path home) {
        this.shop = shop;
        this.home = home;
    }

    SettingPage page(
            Frame frame, SettingForm form, String seen, List<Problem> problems, List<Problem> restoreProblems) {
        return new SettingPage(
                frame,
                seen,
                troubles(problems),
                TextField.of("name", "The workshop's name", "", form.name()).with(problems),
                TextField.of("currency", "Currency", "its code of three letters, as in GBP", form.currency())
                        .with(problems),
                purity("sodiumPurity", "Sodium hydroxide", Alkali.SODIUM, form.sodiumPurity())
                        .with(problems),
                purity("potassiumPurity", "Potassium hydroxide", Alkali.POTASSIUM, form.potassiumPurity())
                        .with(problems),
                TextField.of(
                                "holdBack",
                                "Held back, % of a batch",
                                "what stays in jugs and pots and never reaches a mould; usually about 1",
                                form.holdBack())
                        .with(problems),
                units(form).with(problems),
                degrees(form).with(problems),
                paper(form).with(problems),
                market(form).with(problems),
                shop.showsDemo(),
                shop.hasMine(),
                holds(),
                restoreProblems.stream().map(Sentences::two).toList(),
                about());
    }

    private static List<String> troubles(List<Problem> problems) {
        List<String> troubles = new ArrayList<>();
        problems.stream()
                .filter(p -> FIELDS.stream()
                        .noneMatch(f -> p.path().equals(f) || p.path().startsWith(f + ".")))
                .forEach(p -> troubles.add(Sentences.whole(p)));
        if (!problems.isEmpty() && troubles.isEmpty()) {
            troubles.add(
                    problems.size() == 1
                            ? "One thing to check before this can be saved."
                            : problems.size() + " things to check before this can be saved.");
        }
        return troubles;
    }

    private static TextField purity(String field, String label, Alkali alkali, String typed) {
        Figure assumed = alkali.assumedPurity();
        return TextField.of(
                field,
                label + ", % pure",
                "as its tub or certificate says, as in " + Figures.upTo(alkali.assumedPercent() + 0.5, 1)
                        + " ± 0.5; left empty, "
                        + Figures.upTo(alkali.assumedPercent(), 1) + " is taken, and that it lies between "
                        + Figures.upTo(assumed.low(), 1) + " and " + Figures.upTo(assumed.high(), 1),
                typed);
    }

    private static Choices units(SettingForm form) {
        return new Choices(
                "units",
                "Weights",
                List.of(
                        choice(Units.GRAMS, "Grams and kilograms", form.units()),
                        choice(Units.OUNCES, "Ounces and pounds, by weight", form.units())),
                List.of());
    }

    private static Choices degrees(SettingForm form) {
        return new Choices(
                "degrees",
                "Temperatures",
                List.of(
                        choice(Degrees.CELSIUS, "Celsius", form.degrees()),
                        choice(Degrees.FAHRENHEIT, "Fahrenheit", form.degrees())),
                List.of());
    }

    private static Choices paper(SettingForm form) {
        return new Choices(
                "paper",
                "Paper in the printer",
                List.of(choice(Paper.A4, "A4", form.paper()), choice(Paper.LETTER, "Letter", form.paper())),
                List.of());
    }

    private static Choices market(SettingForm form) {
        return new Choices(
                "market",
                "Where bars are sold",
                List.of(
                        choice(Market.GB, "Great Britain", form.market()),
                        choice(Market.EU, "The European Union", form.market()),
                        choice(Market.US, "The United States", form.market()),
                        choice(Market.OTHER, "Elsewhere", form.market())),
                List.of());
    }

    private static Choice choice(Enum<?> value, String label, String chosen) {
        String word = SettingForm.word(value);
        return new Choice(word, label, word.equals(chosen));
    }

    /** What is kept now, in words. */
    String holds() {
        long recipes = shop.records().recipes().list(Search.all(1, 1)).total();
        int moulds = shop.records().equipment().moulds().size();
        int materials = shop.records().materials().list().size();
        return count(recipes, "recipe") + ", " + count(moulds, "mould") + " and " + count(materials, "material")
                + " of its own";
    }

    static String count(long many, String what) {
        return many + " " + what + (many == 1 ? "" : "s");
    }

    private List<About> about() {
        String version = SettingView.class.getPackage().getImplementationVersion();
        return List.of(
                new About("Lyewright", version == null ? "not packaged" : "version " + version),
                new About(
                        "Tables",
                        "edition of "
                                + Dates.day(LocalDate.parse(Tables.bundled().edition()))),
                new About("Everything is kept in", home.toAbsolutePath().toString()),
                new About(
                        "The log",
                        home.toAbsolutePath().resolve("lyewright.log") + ": what went wrong, if anything did"));
    }
}
