package lyewright.web.recipe;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import lyewright.records.recipe.Recipe;
import lyewright.records.recipe.RecipeVersion;
import lyewright.web.FileNames;

/** A version as its formula file. */
final class ExportFiles {

    private static final int LONGEST = 60;

    private final ShowPages show;

    ExportFiles(ShowPages show) {
        this.show = show;
    }

    void file(Context ctx) {
        Recipe recipe = show.recipe(ctx.pathParam("id"));
        RecipeVersion version = show.version(recipe, ctx.pathParam("n"));
        ctx.header("Content-Disposition", disposition(version.formula().recipe(), version.number()));
        ctx.contentType("application/yaml; charset=utf-8").result(version.text().getBytes(StandardCharsets.UTF_8));
    }

    /** A name in plain letters for every system, and the recipe's own for those that can (RFC 6266, RFC 5987). */
    static String disposition(String recipe, int version) {
        String safe = FileNames.plain(recipe, "recipe") + "-" + version + ".yaml";
        String own =
                cut(recipe.replaceAll("[\\p{Cntrl}\\p{Cf}/\\\\:*?\"<>|]+", " ").strip()) + " " + version + ".yaml";
        return "attachment; filename=\"" + safe + "\"; filename*=UTF-8''" + percentEncoded(own.strip());
    }

    private static String cut(String text) {
        return text.codePointCount(0, text.length()) <= LONGEST
                ? text
                : text.substring(0, text.offsetByCodePoints(0, LONGEST));
    }

    private static String percentEncoded(String text) {
        StringBuilder out = new StringBuilder();
        for (byte b : text.getBytes(StandardCharsets.UTF_8)) {
            char c = (char) (b & 0xFF);
            boolean plain = c < 128 && (Character.isLetterOrDigit(c) || "-._~".indexOf(c) >= 0);
            if (plain) {
                out.append(c);
            } else {
                out.append('%').append(String.format(Locale.ROOT, "%02X", b & 0xFF));
            }
        }
        return out.toString();
    }
}
