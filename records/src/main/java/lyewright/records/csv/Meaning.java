package lyewright.records.csv;

import static lyewright.records.csv.CsvKind.LOTS;
import static lyewright.records.csv.CsvKind.MATERIALS;
import static lyewright.records.csv.CsvKind.SUPPLIERS;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a column says. Its path is that of problems; its names are those that a header may have, folded. */
@SuppressWarnings("ImmutableEnumChecker") // its list and set are never changed
public enum Meaning {
    NAME(
            "name",
            "what it is called",
            "name",
            "name|material|material name|product|item|ingredient|supplier name",
            MATERIALS,
            LOTS,
            SUPPLIERS),
    KIND("kind", "what kind of thing it is", "kind", "kind|type|category", MATERIALS, LOTS),
    COUNTING("counting", "weighed or counted", "counting", "counting|measure|weighed or counted", MATERIALS, LOTS),
    RECIPE_NAME("material", "what recipes call it", "recipe_name", "recipe name|key|material key", MATERIALS, LOTS),
    INCI("inci", "INCI name", "inci", "inci|inci name", MATERIALS, LOTS),
    CAS("cas", "CAS number", "cas", "cas|cas number|cas no", MATERIALS, LOTS),
    SPECIES("species", "the plant's botanical name", "species", "species|botanical name", MATERIALS, LOTS),
    PART("part", "part of the plant", "plant_part", "plant part|part", MATERIALS, LOTS),
    PRODUCT_CODE(
            "productCode",
            "supplier's product code",
            "product_code",
            "product code|article|article number|sku",
            MATERIALS,
            LOTS),
    CERTIFICATE_VERSION(
            "certificateVersion",
            "version of its certificate",
            "certificate_version",
            "certificate version",
            MATERIALS,
            LOTS),
    REORDER(
            "reorder",
            "buy more under, with its unit",
            "reorder",
            "reorder|reorder level|minimum|buy more under",
            MATERIALS),
    REORDER_G("reorder", "buy more under, in grams", "reorder_g", "reorder g|minimum g", MATERIALS),
    REORDER_PIECES(
            "reorder", "buy more under, in pieces", "reorder_pieces", "reorder pieces|minimum pieces", MATERIALS),
    SPOONS("spoons", "what spoons hold of it", "spoons", "spoons|spoon", MATERIALS),
    SUPPLIER("supplier", "supplier", "supplier", "supplier|vendor|bought from|from", MATERIALS, LOTS),
    CONTACT("contact", "how they are reached", "contact", "contact|address|email|e mail|phone|telephone", SUPPLIERS),
    OWN_CODE("ownCode", "our own lot code", "own_code", "own code|own lot|own lot code|lot code|code|our lot", LOTS),
    SUPPLIER_LOT(
            "supplierLot",
            "supplier's lot",
            "supplier_lot",
            "supplier lot|supplier s lot|suppliers lot|lot|lot number|lot no|batch|batch number|batch no",
            LOTS),
    AMOUNT(
            "amount",
            "how much came, with its unit",
            "amount",
            "amount|quantity|qty|stock|opening stock|received amount",
            LOTS),
    AMOUNT_G("amount", "how much came, in grams", "amount_g", "amount g|quantity g|grams|g|weight g|stock g", LOTS),
    AMOUNT_KG(
            "amount",
            "how much came, in kilograms",
            "amount_kg",
            "amount kg|quantity kg|kilograms|kg|weight kg|stock kg",
            LOTS),
    AMOUNT_PIECES(
            "amount", "how much came, in pieces", "amount_pieces", "amount pieces|quantity pieces|pieces|pcs", LOTS),
    RECEIVED(
            "received",
            "day it came",
            "received",
            "received|received on|date received|date|day|delivered|bought|purchased|purchase date",
            LOTS),
    OPENED("opened", "day it was opened", "opened", "opened|opened on|date opened", LOTS),
    BEST_BEFORE(
            "bestBefore",
            "best before",
            "best_before",
            "best before|best before date|bbe|bbd|expiry|expiry date|expires|use by",
            LOTS),
    PRICE("price", "price of all of it", "price", "price|cost|paid|price paid|total price", LOTS),
    CURRENCY("price", "currency", "currency", "currency", LOTS),
    STATUS("status", "quarantine, usable or refused", "status", "status|state", LOTS),
    SV(
            "certificate.saponification value",
            "saponification value, mg KOH/g",
            "sv_mg_koh_g",
            "sv mg koh g|sv|saponification value|saponification value mg koh g|saponification number",
            LOTS),
    SV_UNCERTAINTY(SV.path, "± of the saponification value", "sv_uncertainty", "sv uncertainty", LOTS),
    AV("certificate.acid value", "acid value, mg KOH/g", "av_mg_koh_g", "av mg koh g|av|acid value|acid number", LOTS),
    AV_UNCERTAINTY(AV.path, "± of the acid value", "av_uncertainty", "av uncertainty", LOTS),
    IODINE(
            "certificate.iodine value",
            "iodine value, g/100 g",
            "iodine_g_100g",
            "iodine g 100g|iodine|iodine value|iv|iodine number",
            LOTS),
    IODINE_UNCERTAINTY(IODINE.path, "± of the iodine value", "iodine_uncertainty", "iodine uncertainty", LOTS),
    WATER("certificate.water", "water in it, percent", "water_percent", "water percent|water|moisture", LOTS),
    WATER_UNCERTAINTY(WATER.path, "± of the water in it", "water_uncertainty", "water uncertainty", LOTS),
    PURITY("certificate.strength", "pure alkali, percent", "purity_percent", "purity percent|purity|assay", LOTS),
    PURITY_UNCERTAINTY(PURITY.path, "± of the purity", "purity_uncertainty", "purity uncertainty", LOTS),
    PURITY_OF(PURITY.path, "which alkali the purity is of", "purity_of", "purity of|alkali", LOTS),
    CERTIFICATE_SOURCE(
            "certificate.source",
            "which certificate",
            "certificate_source",
            "certificate source|certificate number|certificate no",
            LOTS),
    MADE_OF("certificate.oils", "oils of a premix made here", "made_of", "made of", LOTS),
    CERTIFICATE("certificate", "its certificate, as a formula's text", "certificate", "certificate", LOTS),
    NOTES("notes", "notes", "notes", "notes|note|remarks|remark|comment|comments", MATERIALS, LOTS, SUPPLIERS),
    /** Written out for reading; worked out from the moves, so it is not read in. */
    TOLD("", "leave out", "", "left g|left pieces|what is wrong", MATERIALS, LOTS, SUPPLIERS);

    private static final Set<Meaning> FIGURES = EnumSet.range(SV, PURITY_UNCERTAINTY);

    private static final Map<String, Meaning> BY_NAME = byName();

    private final String path;
    private final String label;
    private final String header;
    private final List<String> names;
    private final Set<CsvKind> kinds;

    Meaning(String path, String label, String header, String names, CsvKind... kinds) {
        this.path = path;
        this.label = label;
        this.header = header;
        this.names = List.of(names.split("\\|", -1));
        this.kinds = EnumSet.copyOf(Arrays.asList(kinds));
    }

    /** As a choice shows it. */
    public String label() {
        return label;
    }

    /** The path of what is wrong with it. */
    String path() {
        return path;
    }

    /** The name of its column where we write it. */
    String header() {
        return header;
    }

    /** The word that stands for it in a form. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether rows of a kind may say it. */
    public boolean isOf(CsvKind kind) {
        return kinds.contains(kind);
    }

    /** Whether it says how much came. */
    boolean isAmount() {
        return this == AMOUNT || this == AMOUNT_G || this == AMOUNT_KG || this == AMOUNT_PIECES;
    }

    /** Whether it is a figure of a certificate. */
    boolean isFigure() {
        return FIGURES.contains(this);
    }

    /** The meaning of a word of a form. */
    public static Optional<Meaning> ofWord(String word) {
        return Arrays.stream(values()).filter(it -> it.word().equals(word)).findFirst();
    }

    /** The meaning of a column by its name. */
    static Optional<Meaning> ofHeader(String name) {
        return Optional.ofNullable(BY_NAME.get(folded(name)));
    }

    private static Map<String, Meaning> byName() {
        Map<String, Meaning> all = new HashMap<>();
        for (Meaning meaning : values()) {
            meaning.names.forEach(name -> all.put(name, meaning));
        }
        return all;
    }

    /** Small letters and figures, a space between words: {@code Amount (g)} and {@code amount_g} are one. */
    private static String folded(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFKD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^a-z0-9]+", " ")
                .strip();
    }
}
