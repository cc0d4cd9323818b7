package lyewright.records.people;

import static org.assertj.core.api.Assertions.assertThat;

import com.password4j.Argon2Function;
import com.password4j.types.Argon2;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Random;
import lyewright.records.OnBoth;
import lyewright.records.Tinkering;
import lyewright.records.Workbench;
import lyewright.records.store.Author;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;
import org.junit.jupiter.api.Test;

/** Passwords, and the function that they are kept by. */
@OnBoth
class PasswordsTest extends Workbench {

    private static final String GOOD = "mussel shells at low water";

    private String maker() {
        records.passwords().set(Author.DESK.person(), GOOD).orThrow();
        return Author.DESK.person();
    }

    @Test
    void who_types_their_password_is_who_they_say() {
        String maker = maker();

        assertThat(records.passwords().check("The maker", GOOD).map(Person::id)).contains(maker);
        assertThat(records.passwords().check(" the MAKER ", GOOD).map(Person::id))
                .contains(maker);
    }

    @Test
    void the_first_maker_comes_back_in_by_a_new_password_whatever_a_backup_said_of_them() {
        String maker = maker();
        Tinkering.with(place, "UPDATE person SET role = 'helper', removed_epoch_ms = 1 WHERE id = '" + maker + "'");
        assertThat(records.passwords().check("The maker", GOOD)).isEmpty();

        records.passwords().set(maker, GOOD).orThrow();

        assertThat(records.passwords().check("The maker", GOOD).map(Person::role))
                .contains(Role.MAKER);
    }

    @Test
    void nobody_else_is() {
        maker();
        records.people().add("Wenna", Role.HELPER).orThrow();

        assertThat(records.passwords().check("The maker", GOOD + " ")).isEmpty();
        assertThat(records.passwords().check("The maker", "")).isEmpty();
        assertThat(records.passwords().check("The maker", "x".repeat(100_000))).isEmpty();
        assertThat(records.passwords().check("Nobody", GOOD)).isEmpty();
        assertThat(records.passwords().check("Wenna", GOOD)).isEmpty();
        assertThat(records.passwords().check("Wenna", "")).isEmpty();
        assertThat(records.passwords().check("Nobody", "nobody has this one")).isEmpty();
    }

    @Test
    void one_letter_written_in_two_ways_is_one_letter() {
        records.passwords()
                .set(Author.DESK.person(), "caf\u00e9 by the lighthouse")
                .orThrow();

        assertThat(records.passwords().check("The maker", "cafe\u0301 by the lighthouse"))
                .isPresent();
    }

    @Test
    void a_short_password_and_one_that_is_no_text_are_refused() {
        assertThat(records.passwords().set(Author.DESK.person(), "soap soap 1").problems())
                .anyMatch(problem -> problem.path().equals("password"));
        assertThat(records.passwords()
                        .set(Author.DESK.person(), "x".repeat(201))
                        .problems())
                .isNotEmpty();
        assertThat(records.passwords()
                        .set(Author.DESK.person(), "mussel\u0000shells at low")
                        .problems())
                .isNotEmpty();
        assertThat(records.passwords().having()).isEmpty();
    }

    @Test
    void a_helper_changes_their_own_and_nobody_elses() {
        Person wenna = records.people().add("Wenna", Role.HELPER).orThrow();
        Author author = new Author(wenna.id(), Optional.empty());

        assertThat(records.as(author)
                        .passwords()
                        .set(Author.DESK.person(), GOOD)
                        .problems())
                .isNotEmpty();
        assertThat(records.as(author).passwords().set(wenna.id(), GOOD).problems())
                .isEmpty();
        assertThat(records.passwords().having()).containsExactly(wenna.id());
    }

    @Test
    void what_is_kept_is_a_digest_that_names_its_costs() {
        maker();

        // RFC 9106, section 4, second recommended option: t = 3, p = 4, m = 2^16 KiB, salt of 128 bits, tag of 256
        assertThat(Tinkering.texts(place, "SELECT argon2id FROM person_password"))
                .singleElement()
                .asString()
                .startsWith("$argon2id$v=19$m=65536,t=3,p=4$")
                .matches("[^$]*(\\$[^$]*){3}\\$[A-Za-z0-9+/]{22}\\$[A-Za-z0-9+/]{43}")
                .doesNotContain("mussel");
    }

    /** RFC 9106 (September 2021), section 5.3, the test vector of Argon2id; the tag is from memory, and this library confirms it. */
    @Test
    void the_library_that_judges_ours_gives_the_published_tag() {
        byte[] tag = judged(
                new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                        .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                        .withIterations(3)
                        .withMemoryAsKB(32)
                        .withParallelism(4)
                        .withSalt(filled(16, 2))
                        .withSecret(filled(8, 3))
                        .withAdditional(filled(12, 4))
                        .build(),
                filled(32, 1));

        assertThat(HexFormat.of().formatHex(tag))
                .isEqualTo("0d640df58d78766c08c037a34a8b53c9d01ef0452d75b65eb52520e96b01e659");
    }

    /** Our library takes no secret, so that it is held against the one that gives the published tag. */
    @Test
    void our_library_gives_the_same_tags_as_the_one_that_gives_the_published_tag() {
        Random random = new Random(9106);
        for (int i = 0; i < 20; i++) {
            int kibibytes = 64 << random.nextInt(5);
            int passes = 1 + random.nextInt(4);
            int lanes = 1 + random.nextInt(4);
            byte[] password = new byte[random.nextInt(80)];
            byte[] salt = new byte[8 + random.nextInt(24)];
            random.nextBytes(password);
            random.nextBytes(salt);

            byte[] ours = Argon2Function.getInstance(kibibytes, passes, lanes, 32, Argon2.ID)
                    .hash(password, salt)
                    .getBytes();
            byte[] theirs = judged(
                    new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                            .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                            .withIterations(passes)
                            .withMemoryAsKB(kibibytes)
                            .withParallelism(lanes)
                            .withSalt(salt)
                            .build(),
                    password);

            assertThat(ours)
                    .as("%d KiB, %d passes, %d lanes", kibibytes, passes, lanes)
                    .isEqualTo(theirs);
        }
    }

    @Test
    void the_digest_that_is_kept_is_what_the_other_library_gives_for_the_same_costs_and_salt() {
        String[] kept = PasswordDigest.of(GOOD).split("\\$", -1);
        byte[] salt = Base64.getDecoder().decode(kept[4]);

        byte[] theirs = judged(
                new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                        .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                        .withIterations(3)
                        .withMemoryAsKB(65_536)
                        .withParallelism(4)
                        .withSalt(salt)
                        .build(),
                GOOD.getBytes(StandardCharsets.UTF_8));

        assertThat(Base64.getDecoder().decode(kept[5])).isEqualTo(theirs);
    }

    private static byte[] judged(Argon2Parameters parameters, byte[] password) {
        Argon2BytesGenerator argon2 = new Argon2BytesGenerator();
        argon2.init(parameters);
        byte[] tag = new byte[32];
        argon2.generateBytes(password, tag);
        return tag;
    }

    private static byte[] filled(int length, int value) {
        byte[] bytes = new byte[length];
        Arrays.fill(bytes, (byte) value);
        return bytes;
    }
}
