package lyewright.chain;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ChainTest {

    private static final String PERSON = "00000000-0000-7000-8000-000000000001";

    /** An entry with the seal that was kept with it. */
    private record Kept(Entry entry, String seal) {

        Kept telling(String text) {
            return new Kept(with(entry, entry.number(), text), seal);
        }
    }

    private static Entry entry(long number, String text) {
        return new Entry(number, 1_795_597_200_000L + number, PERSON, Optional.empty(), "stock move", text);
    }

    private static Entry with(Entry entry, long number, String text) {
        return new Entry(number, entry.atEpochMs(), entry.person(), entry.device(), entry.kind(), text);
    }

    private static List<Kept> chain(int length) {
        List<Kept> chain = new ArrayList<>();
        String before = Chain.BEFORE_ALL;
        for (int i = 1; i <= length; i++) {
            Entry entry = entry(i, "{\"milligrams\":" + i + "}");
            before = Chain.seal(before, entry);
            chain.add(new Kept(entry, before));
        }
        return chain;
    }

    private static List<Finding> verify(List<Kept> kept) {
        Chain chain = new Chain();
        List<Finding> findings = new ArrayList<>();
        kept.forEach(it -> chain.next(it.entry(), it.seal()).ifPresent(findings::add));
        return findings;
    }

    private static String sha256(String text) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void a_seal_is_the_digest_of_what_the_guide_says_written_out_by_hand() {
        Entry entry = new Entry(1, 1_795_597_200_000L, PERSON, Optional.empty(), "lot", "{\"code\":\"26-0001 é\"}");

        // é is two bytes
        String layout = "64\n" + "0".repeat(64) + "\n1\n1\n13\n1795597200000\n36\n" + PERSON
                + "\n0\n\n3\nlot\n21\n{\"code\":\"26-0001 é\"}\n";

        assertThat(Chain.seal(Chain.BEFORE_ALL, entry))
                .isEqualTo(sha256(layout))
                // the same text through sha256sum
                .isEqualTo("1cbc622d2c210c4025d9f0333e196ecbf1417a9d2c32b3e5ed73eff888912e07");
    }

    @Test
    void a_device_and_the_seal_before_are_sealed_with_it() {
        String device = "01a221b4-908b-73b2-ada9-c1ce46e5a425";
        Entry entry = new Entry(12, -1, PERSON, Optional.of(device), "lot", "{}");
        String before = "ab".repeat(32);

        assertThat(Chain.seal(before, entry))
                .isEqualTo(sha256(
                        "64\n" + before + "\n2\n12\n2\n-1\n36\n" + PERSON + "\n36\n" + device + "\n3\nlot\n2\n{}\n"));
    }

    @Test
    void no_two_entries_read_alike_though_their_words_run_together() {
        Entry one = new Entry(1, 1, "p", Optional.empty(), "ab", "c");
        Entry two = new Entry(1, 1, "p", Optional.empty(), "a", "bc");
        Entry line = new Entry(1, 1, "p", Optional.empty(), "a", "b\nc");

        assertThat(List.of(
                        Chain.seal(Chain.BEFORE_ALL, one),
                        Chain.seal(Chain.BEFORE_ALL, two),
                        Chain.seal(Chain.BEFORE_ALL, line)))
                .doesNotHaveDuplicates();
    }

    @Test
    void a_chain_that_nobody_touched_is_whole() {
        assertThat(verify(chain(50))).isEmpty();
        assertThat(verify(List.of())).isEmpty();
    }

    @Test
    void a_changed_entry_is_named_and_only_it() {
        for (int at = 0; at < 5; at++) {
            List<Kept> kept = chain(5);
            kept.set(at, kept.get(at).telling("{}"));

            assertThat(verify(kept)).extracting(Finding::number).containsExactly(at + 1L);
            assertThat(verify(kept).get(0).what()).contains("(stock move) is not as it was written");
        }
    }

    @Test
    void an_entry_that_was_changed_and_sealed_anew_is_shown_by_the_next() {
        List<Kept> kept = chain(5);
        Entry changed = entry(3, "{}");
        kept.set(2, new Kept(changed, Chain.seal(kept.get(1).seal(), changed)));

        assertThat(verify(kept)).extracting(Finding::number).containsExactly(4L);
    }

    @Test
    void every_part_of_an_entry_is_sealed() {
        Entry kept = entry(1, "{}");
        String seal = Chain.seal(Chain.BEFORE_ALL, kept);
        String other = "f".repeat(36);

        assertThat(List.of(
                        new Entry(1, kept.atEpochMs() + 1, PERSON, Optional.empty(), kept.kind(), "{}"),
                        new Entry(1, kept.atEpochMs(), other, Optional.empty(), kept.kind(), "{}"),
                        new Entry(1, kept.atEpochMs(), PERSON, Optional.of(other), kept.kind(), "{}"),
                        new Entry(1, kept.atEpochMs(), PERSON, Optional.empty(), "lot", "{}"),
                        new Entry(1, kept.atEpochMs(), PERSON, Optional.empty(), kept.kind(), "{ }")))
                .allSatisfy(
                        changed -> assertThat(new Chain().next(changed, seal)).isPresent());
    }

    @Test
    void a_gap_is_named_by_what_is_missing() {
        List<Kept> one = chain(5);
        one.remove(2);
        List<Kept> more = chain(5);
        more.subList(1, 4).clear();

        assertThat(verify(one))
                .extracting(Finding::what)
                .singleElement()
                .asString()
                .contains("entry 3 is missing");
        assertThat(verify(more))
                .extracting(Finding::what)
                .singleElement()
                .asString()
                .contains("entries 2 to 4 are missing");
    }

    @Test
    void entries_that_changed_places_are_named() {
        List<Kept> kept = chain(4);
        Kept second = kept.get(1);
        kept.set(
                1,
                new Kept(
                        with(kept.get(2).entry(), 2, kept.get(2).entry().text()),
                        kept.get(2).seal()));
        kept.set(2, new Kept(with(second.entry(), 3, second.entry().text()), second.seal()));

        assertThat(verify(kept)).extracting(Finding::number).contains(2L, 3L);
    }

    @Test
    void a_cut_off_tail_is_found_with_a_printed_head_and_not_without() {
        List<Kept> kept = chain(5);
        PrintedHead head =
                PrintedHead.parse(Chain.printed(5, kept.get(4).seal())).orThrow();
        kept.subList(3, 5).clear();

        assertThat(verify(kept)).isEmpty();
        assertThat(head.against(Optional.empty()))
                .get()
                .extracting(Finding::number, Finding::what)
                .containsExactly(
                        5L,
                        "There is no entry 5. You may have mistyped it: compare it letter by letter with the paper. If it stands there so, entry 5 is gone, and so is whatever came after it.");
    }

    @Test
    void a_chain_that_was_sealed_anew_throughout_is_found_with_a_printed_head_and_not_without() {
        List<Kept> kept = chain(5);
        PrintedHead head =
                PrintedHead.parse(Chain.printed(5, kept.get(4).seal())).orThrow();
        List<Kept> anew = new ArrayList<>();
        String before = Chain.BEFORE_ALL;
        for (Kept it : kept) {
            Entry entry = it.entry().number() == 2 ? entry(2, "{}") : it.entry();
            before = Chain.seal(before, entry);
            anew.add(new Kept(entry, before));
        }

        assertThat(verify(anew)).isEmpty();
        assertThat(head.against(Optional.of(anew.get(4).seal())))
                .get()
                .extracting(Finding::number)
                .isEqualTo(5L);
        assertThat(head.against(Optional.of(kept.get(4).seal()))).isEmpty();
    }

    @Test
    void the_head_is_the_last_entry_and_its_first_twelve_digits() {
        Chain chain = new Chain();
        assertThat(chain.length()).isZero();
        assertThat(chain.head()).isEqualTo(Chain.BEFORE_ALL);
        chain(3).forEach(it -> chain.next(it.entry(), it.seal()));

        assertThat(chain.length()).isEqualTo(3);
        assertThat(Chain.printed(chain.length(), chain.head()))
                .isEqualTo("3-" + chain(3).get(2).seal().substring(0, 12));
    }

    @ParameterizedTest
    @CsvSource({"214-3f09ab51c2d7", "' 214 - 3F09AB51C2D7 '", "214 -3f09ab51c2d7"})
    void a_printed_head_is_read_as_it_is_copied_from_paper(String typed) {
        assertThat(PrintedHead.parse(typed).orThrow()).isEqualTo(new PrintedHead(214, "3f09ab51c2d7"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "214",
                "214-",
                "0-3f09ab51c2d7",
                "-3-3f09ab51c2d7",
                "214-3f09ab51c2d",
                "214-3f09ab51c2d7a",
                "214-3f09ab51c2dg",
                "9999999999999999999-3f09ab51c2d7",
                "214–3f09ab51c2d7 and more"
            })
    void what_is_no_printed_head_is_refused_with_what_to_write(String typed) {
        assertThat(PrintedHead.parse(typed).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.remedy()).contains("twelve digits"));
    }
}
