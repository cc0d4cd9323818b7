package lyewright.web.cupboard;

import java.util.Optional;
import lyewright.formula.MaterialNames;
import lyewright.formula.NameRules;
import lyewright.formula.OwnMaterial;
import lyewright.material.Alkali;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.StockedNames;

/** What recipes call something in the cupboard, or what they lack to name it. */
final class CalledInRecipes {

    private static final String YOUR_OWN = "Describe it under this name as a material of your own, with ";

    private final MaterialNames names;

    CalledInRecipes(MaterialNames names) {
        this.names = names;
    }

    /** In words; empty where nobody would name it in a recipe. */
    String of(ItemSaid said) {
        String called = StockedNames.called(said);
        return described(called)
                .or(() -> said.identity().materialKey().flatMap(this::known))
                .orElseGet(() -> unknown(said.kind(), called));
    }

    /** The name alone; empty where no recipe can name it. */
    Optional<String> name(ItemSaid said) {
        return own(StockedNames.called(said))
                .map(OwnMaterial::key)
                .or(() -> said.identity().materialKey().flatMap(this::known));
    }

    private Optional<String> known(String key) {
        return Alkali.ofKey(key)
                .map(alkali -> alkali == Alkali.SODIUM ? "Sodium hydroxide" : "Potassium hydroxide")
                .or(() -> names.name(key));
    }

    /** Among the maker's own; of what only came, no more than the kind is known there. */
    private Optional<String> described(String called) {
        return own(called).map(CalledInRecipes::told);
    }

    private Optional<OwnMaterial> own(String called) {
        return names.ofMaker().stream()
                .filter(own -> NameRules.areSame(own.key(), called))
                .filter(own -> names.name(own.key()).isEmpty())
                .findFirst();
    }

    private static String told(OwnMaterial own) {
        boolean bare = own.equals(OwnMaterial.of(own.key(), own.kind()));
        return own.key() + (bare ? ". They know nothing of it but its kind: " + kind(own) + "." : "");
    }

    private static String kind(OwnMaterial own) {
        return own.kind().equals("other") ? "an addition" : "a " + own.kind();
    }

    private static String unknown(ItemKind kind, String called) {
        return switch (kind) {
            case OIL ->
                "Nothing yet: an oil needs a saponification value. " + YOUR_OWN
                        + "the value of its certificate, or choose under Change it what recipes call it.";
            case ALKALI ->
                "Nothing yet: an alkali needs a strength. " + YOUR_OWN
                        + "its strength, or choose under Change it what recipes call it.";
            case PACKAGING -> "";
            default -> "Nothing by the name of " + called + ", which may mean something else. Choose under Change it.";
        };
    }
}
