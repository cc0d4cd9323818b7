package lyewright.web.make;

import java.io.IOException;
import java.net.URI;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lyewright.formula.FormulaFile;
import lyewright.makingsheet.Balance;
import lyewright.measure.Length;
import lyewright.measure.Volume;
import lyewright.measure.WrittenMass;
import lyewright.records.Place;
import lyewright.records.Records;
import lyewright.records.equipment.JugUse;
import lyewright.records.equipment.MouldMeasures;
import lyewright.records.setting.Units;
import lyewright.web.Shop;
import lyewright.web.WebServer;
import lyewright.web.recipe.RecipePages;
import lyewright.web.why.WhyPages;

/** An invented workshop with recipes, moulds, balances and jugs, and its pages. */
public final class MakeShop implements AutoCloseable {

    /** Two oils in percent, nothing else. */
    public static final String PLAIN = """
            recipe: Harbour Plain
            version: 1
            use: own
            oils: {coconut: 25 %, olive-virgin: rest}
            alkali: sodium
            superfat: 5 %
            water: 33 % lye
            """;

    /** In masses, as in a notebook. */
    public static final String NOTEBOOK = """
            recipe: Notebook Bar
            version: 1
            use: own
            oils: {coconut: 250 g, olive-virgin: 650 g, castor: 100 g}
            alkali: sodium
            superfat: 6 %
            water: 280 g
            """;

    /** More alkali than the oils can take. */
    public static final String CAUSTIC = """
            recipe: Too Much
            version: 1
            use: own
            oils: {olive-virgin: 650 g, coconut: 250 g, castor: 100 g}
            alkali: {sodium: 190 g}
            water: 380 g
            """;

    private static final Pattern WHY = Pattern.compile("<a class=\"why\" href=\"([^\"]+)\">([^<]*)</a>");

    private final HttpClient client = HttpClient.newHttpClient();
    private final Map<String, String> recipes = new LinkedHashMap<>();
    private final Map<String, String> moulds = new LinkedHashMap<>();
    private final Shop shop;
    private final WebServer server;

    public MakeShop(Path home) throws IOException {
        shop = Shop.open(
                        new Place.Folder(home.resolve("mine")),
                        new Place.Folder(home.resolve("demo")),
                        Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC))
                .orThrow();
        shop.startMine(Shop.usual("Gannet Stair Soap", Units.GRAMS));
        add("tideline", Files.readString(Path.of("..", "examples", "tideline.yaml")));
        add("shave", Files.readString(Path.of("..", "examples", "harbour-shave.yaml")));
        add("plain", PLAIN);
        add("notebook", NOTEBOOK);
        add("caustic", CAUSTIC);
        addEquipment();
        server = WebServer.start(
                        "127.0.0.1", 0, List.of(new RecipePages(shop), new MakePages(shop), new WhyPages(shop)))
                .orThrow();
    }

    public String add(String name, String formula) {
        FormulaFile.Read read = FormulaFile.read(formula);
        String id = records()
                .recipes()
                .add(read.formula().orElseThrow(() -> new IllegalArgumentException(read.problems() + "")))
                .orThrow()
                .recipeId();
        recipes.put(name, id);
        return id;
    }

    private void addEquipment() {
        mould(
                "loaf",
                "Long loaf",
                new MouldMeasures(
                        Optional.of(new MouldMeasures.Loaf(length("300mm"), length("80mm"), length("65mm"))),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(cut("25mm", Optional.empty()))));
        mould(
                "slab",
                "Slab tray",
                new MouldMeasures(
                        Optional.of(new MouldMeasures.Slab(length("300mm"), length("240mm"), length("30mm"))),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(cut("60mm", Optional.of(length("80mm"))))));
        mould(
                "ovals",
                "Twelve ovals",
                new MouldMeasures(
                        Optional.of(new MouldMeasures.Cavities(
                                12, Volume.parse("95ml").orThrow())),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
        var equipment = records().equipment();
        equipment.addBalance(Balance.parse("kitchen:5kg:1g").orThrow()).orThrow();
        equipment.addBalance(Balance.parse("fine:500g:0.1g").orThrow()).orThrow();
        equipment
                .addJug("Blue jug", WrittenMass.parse("312 g").orThrow(), JugUse.LYE_JUG)
                .orThrow();
        equipment
                .addJug("Tall jug", WrittenMass.parse("210 g").orThrow(), JugUse.PORTION_JUG)
                .orThrow();
    }

    private void mould(String key, String name, MouldMeasures measures) {
        moulds.put(key, records().equipment().addMould(name, measures).orThrow().id());
    }

    private static MouldMeasures.Cut cut(String thickness, Optional<Length> across) {
        return new MouldMeasures.Cut(
                length(thickness), across, Optional.of(length("1mm")), Optional.empty(), Optional.empty());
    }

    private static Length length(String text) {
        return Length.parse(text).orThrow();
    }

    public Records records() {
        return shop.records();
    }

    public String recipe(String name) {
        return recipes.getOrDefault(name, name);
    }

    public String mould(String name) {
        return moulds.getOrDefault(name, name);
    }

    /** Without a slash at its end. */
    public String address() {
        return server.address().substring(0, server.address().length() - 1);
    }

    /** {@code /make} with names and texts after each other, recipes and moulds by their short names. */
    public String make(String recipe, String... texts) {
        return "/make?" + query(recipe, texts);
    }

    public String query(String recipe, String... texts) {
        List<String> all = new ArrayList<>(List.of("recipe=" + recipe(recipe)));
        for (int i = 0; i < texts.length; i += 2) {
            String text = texts[i].equals("mould") ? mould(texts[i + 1]) : texts[i + 1];
            all.add(encoded(texts[i]) + "=" + encoded(text));
        }
        return String.join("&", all);
    }

    public static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    public HttpResponse<String> get(String path) {
        return send(HttpRequest.newBuilder(URI.create(address() + path)).build());
    }

    /** As a script asks for a part of the page. */
    public HttpResponse<String> getInPlace(String path) {
        return send(HttpRequest.newBuilder(URI.create(address() + path))
                .header("HX-Request", "true")
                .build());
    }

    public HttpResponse<String> post(String path, String form) {
        return send(HttpRequest.newBuilder(URI.create(address() + path))
                .header("Origin", address())
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form))
                .build());
    }

    private HttpResponse<String> send(HttpRequest request) {
        try {
            return client.send(request, BodyHandlers.ofString());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    public byte[] bytes(String path) throws Exception {
        return client.send(HttpRequest.newBuilder(URI.create(address() + path)).build(), BodyHandlers.ofByteArray())
                .body();
    }

    /** A figure on a page and where it leads. */
    public record Link(String address, String text) {

        /** The figure's path. */
        public String figure() {
            return URLDecoder.decode(address.replaceFirst(".*&figure=", ""), StandardCharsets.UTF_8);
        }
    }

    public static List<Link> whys(String html) {
        Matcher link = WHY.matcher(html);
        List<Link> links = new ArrayList<>();
        while (link.find()) {
            links.add(new Link(link.group(1).replace("&amp;", "&"), link.group(2)));
        }
        return links;
    }

    /** What is wrong in a field. */
    public static List<String> troubles(String html, String field) {
        Matcher slot = Pattern.compile(
                        "<div id=\"f-" + Pattern.quote(field) + "-trouble\"[^>]*>(.*?)</div>", Pattern.DOTALL)
                .matcher(html);
        if (!slot.find()) {
            throw new AssertionError("no place for what is wrong in " + field);
        }
        Matcher trouble = Pattern.compile("<p class=\"trouble\">([^<]*)</p>").matcher(slot.group(1));
        return trouble.results().map(found -> found.group(1)).collect(Collectors.toList());
    }

    @Override
    public void close() {
        server.close();
        shop.close();
    }
}
