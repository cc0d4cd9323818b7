package lyewright.records.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.records.Formulas;
import lyewright.records.OnBoth;
import lyewright.records.Records;
import lyewright.records.Tinkering;
import lyewright.records.Workbench;
import lyewright.records.store.Author;
import org.junit.jupiter.api.Test;

/** Who is let in, for how long, and what they may write. */
@OnBoth
class DevicesTest extends Workbench {

    private Person helper() {
        return records.people().add("Wenna", Role.HELPER).orThrow();
    }

    private LetIn telephone(Person person) {
        return records.devices().letIn(person.id(), "telephone").orThrow();
    }

    private Records at(LetIn letIn) {
        return records.as(new Author(
                letIn.device().person().id(), Optional.of(letIn.device().id())));
    }

    @Test
    void a_device_is_known_by_its_token_and_by_nothing_else() {
        LetIn letIn = telephone(helper());

        assertThat(records.devices().known(letIn.token()).map(Device::name)).contains("telephone");
        assertThat(records.devices()
                        .known(letIn.token())
                        .map(device -> device.person().name()))
                .contains("Wenna");
        assertThat(records.devices().known("")).isEmpty();
        assertThat(records.devices().known(letIn.device().id())).isEmpty();
        assertThat(records.devices().known(letIn.token().toLowerCase(java.util.Locale.ROOT)))
                .isEmpty();
    }

    @Test
    void two_tokens_are_never_the_same_and_none_is_kept() {
        Person wenna = helper();
        LetIn one = telephone(wenna);
        LetIn two = telephone(wenna);

        assertThat(one.token()).hasSizeGreaterThanOrEqualTo(43).isNotEqualTo(two.token());
        assertThat(Tinkering.texts(place, "SELECT token_sha256 FROM device_session"))
                .hasSize(2)
                .doesNotContain(one.token(), two.token())
                .allMatch(kept -> kept.matches("[0-9a-f]{64}"));
        assertThat(one).hasToString("LetIn[" + one.device() + "]");
    }

    @Test
    void who_is_shown_the_door_is_out_at_once() {
        LetIn letIn = telephone(helper());

        records.devices().remove(letIn.device().id()).orThrow();

        assertThat(records.devices().known(letIn.token())).isEmpty();
        assertThat(records.devices().list()).isEmpty();
        assertThat(records.devices().names()).containsEntry(letIn.device().id(), "telephone");
        assertThat(records.devices().remove(letIn.device().id()).problems()).isNotEmpty();
    }

    @Test
    void a_request_of_a_device_that_was_shown_the_door_meanwhile_writes_nothing() {
        LetIn letIn = telephone(records.people().add("Ruth", Role.MAKER).orThrow());
        Records hers = at(letIn);
        records.devices().remove(letIn.device().id()).orThrow();

        assertThat(hers.recipes().add(Formulas.named("Tideline")).problems())
                .anyMatch(problem -> problem.what().contains("not let in any more"));
        assertThat(records.signatures().last(10)).noneMatch(line -> line.deed().thing() == Deed.Thing.RECIPE);
    }

    @Test
    void a_device_that_was_silent_for_three_months_has_to_be_let_in_anew() {
        LetIn letIn = telephone(helper());
        clock.goOn(Devices.LONGEST_SILENCE.minusMinutes(1));
        assertThat(records.devices().known(letIn.token())).isPresent();

        clock.goOn(Devices.LONGEST_SILENCE.minusMinutes(1));
        assertThat(records.devices().known(letIn.token())).isPresent();

        assertThat(records.devices().list()).hasSize(1);
        clock.goOn(Devices.LONGEST_SILENCE.plusMinutes(1));
        assertThat(records.devices().known(letIn.token())).isEmpty();
        assertThat(records.devices().list()).isEmpty();
    }

    @Test
    void when_a_device_was_seen_is_noted_to_the_hour() {
        LetIn letIn = telephone(helper());
        clock.goOn(Duration.ofMinutes(5));
        records.devices().known(letIn.token());
        assertThat(records.devices().list().get(0).seenAt())
                .contains(letIn.device().addedAt());

        clock.goOn(Duration.ofHours(2));
        records.devices().known(letIn.token());
        assertThat(records.devices().list().get(0).seenAt().orElseThrow())
                .isAfter(letIn.device().addedAt().plus(Duration.ofHours(2)));
    }

    @Test
    void when_somebody_leaves_none_of_their_devices_is_let_in_and_their_password_is_gone() {
        Person wenna = helper();
        LetIn letIn = telephone(wenna);
        records.passwords().set(wenna.id(), "mussel shells at low water").orThrow();

        records.people().remove(wenna.id()).orThrow();

        assertThat(records.devices().known(letIn.token())).isEmpty();
        assertThat(records.passwords().having()).isEmpty();
        assertThat(records.people().find(wenna.id()).map(Person::name)).contains("Wenna");
        assertThat(records.devices().letIn(wenna.id(), "tablet").problems()).isNotEmpty();

        records.people().putBack(wenna.id()).orThrow();
        assertThat(records.devices().known(letIn.token())).isEmpty();
    }

    @Test
    void the_door_to_the_network_is_shut_unless_a_maker_opens_it() {
        assertThat(records.devices().mayKnock()).isFalse();

        records.devices().letKnock(true).orThrow();
        restart();
        assertThat(records.devices().mayKnock()).isTrue();

        assertThat(at(telephone(helper())).devices().letKnock(false).problems()).isNotEmpty();
        records.devices().letKnock(false).orThrow();
        assertThat(records.devices().mayKnock()).isFalse();
    }

    @Test
    void somebody_who_works_here_no_longer_can_let_nobody_in() {
        Person ruth = records.people().add("Ruth", Role.MAKER).orThrow();
        Records hers = at(telephone(ruth));
        Person wenna = helper();
        records.people().remove(ruth.id()).orThrow();

        Outcome<LetIn> tried = hers.devices().letIn(wenna.id(), "tablet");

        assertThat(tried.problems()).isNotEmpty();
    }

    @Test
    void a_helper_may_leave_but_show_nobody_else_the_door() {
        Person wenna = helper();
        LetIn own = telephone(wenna);
        LetIn other = telephone(records.people().add("Ruth", Role.MAKER).orThrow());

        assertThat(at(own).devices().remove(other.device().id()).problems()).isNotEmpty();
        assertThat(at(own).devices().remove(own.device().id()).problems()).isEmpty();
    }

    @Test
    void a_restore_brings_nobody_back_who_was_shown_out_and_knows_nobody_who_came_later() throws Exception {
        LetIn stays = telephone(helper());
        LetIn out = telephone(records.people().list().get(1));
        Path backup = folder.resolve("before.lyewright");
        records.backups().write(backup).orThrow();
        records.devices().remove(out.device().id()).orThrow();
        LetIn later = telephone(records.people().list().get(1));

        records.backups().restore(backup).orThrow();

        assertThat(records.devices().known(stays.token())).isPresent();
        assertThat(records.devices().known(out.token())).isEmpty();
        assertThat(records.devices().known(later.token())).isEmpty();
        assertThat(records.devices().list()).hasSize(2);
    }
}
