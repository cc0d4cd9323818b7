package lyewright.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import lyewright.measure.Outcome;
import lyewright.records.recipe.Draft;
import lyewright.records.recipe.Kept;
import lyewright.records.recipe.RecipeVersion;
import lyewright.records.recipe.Search;
import org.junit.jupiter.api.Test;

/** Several at once: threads of one application, and applications beside each other. */
@OnBoth
class TogetherTest extends Workbench {

    private static final int THREADS = 8;
    private static final int EACH = 10;

    private interface Task {
        void run(int number) throws Exception;
    }

    private static void atOnce(Task task) throws InterruptedException, ExecutionException {
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        try {
            List<Future<?>> running = new ArrayList<>();
            for (int i = 0; i < THREADS; i++) {
                int number = i;
                running.add(threads.submit(() -> {
                    task.run(number);
                    return null;
                }));
            }
            for (Future<?> one : running) {
                one.get();
            }
        } finally {
            threads.shutdownNow();
        }
    }

    @Test
    void what_many_threads_write_at_once_all_lands_while_others_read() throws Exception {
        atOnce(number -> {
            for (int i = 0; i < EACH; i++) {
                String name = "Bar %d of %d".formatted(i, number);
                String id =
                        records.recipes().add(Formulas.named(name)).orThrow().recipeId();
                records.recipes().save(id, 1, Formulas.named(name), true, "").orThrow();
                assertThat(records.recipes().list(Search.all(1, 5)).total()).isPositive();
            }
        });

        assertThat(records.recipes().list(Search.all(1, 1)).total()).isEqualTo(THREADS * EACH);
        assertThat(Tinkering.texts(place, "SELECT count(*) FROM recipe_version"))
                .containsExactly(Integer.toString(2 * THREADS * EACH));
    }

    @Test
    void of_many_who_save_upon_the_same_version_one_succeeds() throws Exception {
        String id = records.recipes().add(Formulas.named("Tideline")).orThrow().recipeId();
        List<Outcome<RecipeVersion>> outcomes = Collections.synchronizedList(new ArrayList<>());

        atOnce(number -> outcomes.add(records.recipes().save(id, 1, Formulas.named("Tideline"), true, "" + number)));

        assertThat(outcomes.stream().filter(outcome -> outcome instanceof Outcome.Ok))
                .hasSize(1);
        assertThat(records.recipes().versions(id)).hasSize(2);
    }

    @Test
    void of_many_windows_that_keep_one_draft_one_succeeds_and_the_others_see_it() throws Exception {
        Draft draft = records.drafts().create(Optional.empty(), 0, "{}");
        List<Kept> kept = Collections.synchronizedList(new ArrayList<>());

        atOnce(number -> kept.add(records.drafts().keep(draft.id(), 1, "window " + number)));

        assertThat(kept.stream().filter(it -> it instanceof Kept.Saved)).hasSize(1);
        assertThat(kept.stream().filter(it -> it instanceof Kept.Conflict)).hasSize(THREADS - 1);
        assertThat(records.drafts().find(draft.id()).orElseThrow().revision()).isEqualTo(2);
    }

    /** A folder belongs to one application; a server serves many. */
    @Test
    void a_second_application_is_refused_on_a_folder_and_welcome_on_a_server()
            throws IOException, InterruptedException {
        try (Child child = Child.start(place)) {
            String said = child.next();
            if (kind == Kind.SQLITE) {
                assertThat(said)
                        .startsWith("another Lyewright is using the workshop in ")
                        .endsWith("use the pages of the one that runs, or end it first, or name another folder");
                assertThat(Records.open(place, clock).problems()).hasSize(1);
            } else {
                records.recipes().add(Formulas.named("From here")).orThrow();
                assertThat(records.recipes().find(said)).isPresent();
                child.kill();
                assertThat(records.recipes().list(new Search("from here", 1, 9)).total())
                        .isEqualTo(1);
            }
        }
    }

    @Test
    void a_folder_is_free_again_when_its_application_was_killed() throws IOException, InterruptedException {
        records.close();
        try (Child child = Child.start(place)) {
            String saved = child.next();
            if (kind == Kind.SQLITE) {
                assertThat(Records.open(place, clock).problems()).hasSize(1);
            }
            child.kill();
            records = Records.open(place, clock).orThrow();
            assertThat(records.recipes().find(saved)).isPresent();
        }
    }
}
