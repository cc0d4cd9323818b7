package lyewright.web.recipe;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.formula.MaterialNames;
import lyewright.records.people.Person;
import lyewright.records.recipe.Draft;
import lyewright.records.recipe.Recipe;
import lyewright.records.store.Author;
import lyewright.web.Frame;
import lyewright.web.Hints;
import lyewright.web.Section;
import lyewright.web.Shop;
import lyewright.web.Visitor;
import lyewright.web.recipe.DraftKeeper.Result;
import lyewright.web.recipe.EditorPage.Note;
import lyewright.web.recipe.EditorPage.Of;
import lyewright.web.recipe.EditorPage.Unfinished;
import lyewright.words.Dates;

/** The editor's page as it is shown, whoever asked for it and whatever came of that. */
final class EditorView {

    static final String PAGE = "recipe/editor.jte";
    static final String NEW = "/recipes/new";

    private static final int MOST_UNFINISHED = 5;

    private final Shop shop;
    private final Workbench workbench;

    EditorView(Shop shop, Workbench workbench) {
        this.shop = shop;
        this.workbench = workbench;
    }

    static String address(Draft draft) {
        return NEW + "?draft=" + draft.id();
    }

    static String leave(Optional<Recipe> recipe) {
        return recipe.map(r -> "/recipes/" + r.id()).orElse("/recipes");
    }

    static boolean isMade(Recipe recipe) {
        return recipe.newest().madeAt().isPresent();
    }

    /** What the maker has to decide after keeping, if anything. */
    Optional<Note> note(Result result) {
        if (result instanceof Result.Others others) {
            return Optional.of(new Note(
                    by(others.theirs(), names())
                                    .map(name -> name + ", in another window,")
                                    .orElse("Another window")
                            + " changed this recipe at "
                            + Dates.minute(others.theirs().changedAt(), shop.clock())
                            + ". What you type here is not kept until you choose one of the two.",
                    "Take the other's",
                    "Keep mine"));
        }
        if (result instanceof Result.Gone) {
            return Optional.of(new Note(
                    "Another window saved what was typed, or threw it away. What you type here is not kept until you choose.",
                    "Look at what is saved",
                    "Keep mine"));
        }
        return result instanceof Result.TooLong
                ? Optional.of(new Note("This is more than can be kept while you type. Shorten it, or save it.", "", ""))
                : Optional.empty();
    }

    EditorPage page(Optional<Recipe> recipe, Typed typed, Optional<Note> note, String focus) {
        Drafted drafted = typed.drafted();
        FormRead read = workbench.read(drafted);
        Workbench.Reckoned reckoned = workbench.reckon(read, drafted);
        Of of = recipe.map(r ->
                        new Of(r.name(), typed.basedOn(), isMade(r), r.newest().why()))
                .orElse(Of.NEW);
        MaterialNames workshop = workbench.names();
        Map<String, String> fields = drafted.form().fields();
        return new EditorPage(
                frame(of, typed),
                recipe.map(r -> "/recipes/" + r.id() + "/edit").orElse(NEW),
                leave(recipe),
                of,
                drafted.form(),
                fields,
                drafted.isFile() ? Optional.of(drafted.file()) : Optional.empty(),
                reckoned.read(),
                reckoned.figures(),
                reckoned.read()
                        .formula()
                        .map(formula -> NewerFigures.of(formula, workshop))
                        .orElse(NewerFigures.NONE),
                new EditorPage.Kept(
                        typed.draftId(),
                        typed.revision(),
                        drafted.window(),
                        drafted.serial(),
                        drafted.why(),
                        typed.asNext()),
                note,
                workshop,
                focus,
                false,
                recipe.isEmpty() && typed.draftId().isEmpty() ? unfinished() : List.of(),
                Hints.of(shop.workshop().units()));
    }

    private Frame frame(Of of, Typed typed) {
        String title = of.isNew()
                ? typed.name().isEmpty() ? "A new recipe" : typed.name() + ", a new recipe"
                : "Change " + of.name();
        return shop.frame(title, Section.RECIPES)
                .with(List.of("editor.css", "why.css"), List.of("editor.js", "why.js"));
    }

    private List<Unfinished> unfinished() {
        Map<String, String> names = names();
        return shop.records().drafts().ofNewRecipes(MOST_UNFINISHED).stream()
                .flatMap(draft -> Drafted.read(draft.form()).stream()
                        .map(kept -> new Unfinished(
                                kept.form().recipe().isBlank()
                                        ? "A recipe without a name"
                                        : kept.form().recipe(),
                                address(draft),
                                Dates.minute(draft.changedAt(), shop.clock())
                                        + by(draft, names)
                                                .map(name -> ", " + name)
                                                .orElse(""))))
                .toList();
    }

    /** Who typed last in a draft, where that is somebody other than who looks at it. */
    private static Optional<String> by(Draft draft, Map<String, String> names) {
        return draft.by()
                .map(Author::person)
                .filter(person -> !person.equals(Visitor.now().author().person()))
                .flatMap(person -> Optional.ofNullable(names.get(person)));
    }

    private Map<String, String> names() {
        return shop.records().people().list().stream().collect(Collectors.toMap(Person::id, Person::name));
    }
}
