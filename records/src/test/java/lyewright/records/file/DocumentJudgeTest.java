package lyewright.records.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What a file is, whatever it is called. */
class DocumentJudgeTest {

    @TempDir
    private Path folder;

    private Outcome<DocumentKind> judged(byte[] content) throws IOException {
        return DocumentJudge.judge(Files.write(folder.resolve("certificate.pdf"), content));
    }

    private static byte[] bytes(String signs) {
        return signs.getBytes(StandardCharsets.ISO_8859_1);
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }

    /** A photograph with a smaller one in its head, as cameras write it. */
    private static byte[] withASmallOneInside(byte[] jpeg) {
        byte[] small = SomeDocument.jpeg();
        int length = small.length + 2;
        byte[] head = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE1, (byte) (length >> 8), (byte) length};
        return joined(head, small, Arrays.copyOfRange(jpeg, 2, jpeg.length));
    }

    static Stream<Arguments> kept() {
        byte[] pdf = SomeDocument.pdf("Certificate of analysis, invented");
        byte[] jpeg = SomeDocument.jpeg();
        return Stream.of(
                Arguments.of("a PDF", pdf, DocumentKind.PDF),
                Arguments.of("a PDF after an empty line", joined(bytes("\r\n"), pdf), DocumentKind.PDF),
                Arguments.of(
                        "a PDF that was written on: two ends",
                        joined(pdf, bytes("7 0 obj\nnull\nendobj\nxref\nstartxref\n12\n%%EOF\n")),
                        DocumentKind.PDF),
                Arguments.of("a photograph", jpeg, DocumentKind.JPEG),
                Arguments.of("a photograph with a small one inside", withASmallOneInside(jpeg), DocumentKind.JPEG),
                Arguments.of(
                        "a photograph with a telephone's own after its end",
                        joined(jpeg, new byte[200]),
                        DocumentKind.JPEG),
                Arguments.of("a letter", bytes("Dear maker,\r\n\tthe lot is sound.\f\n"), DocumentKind.TEXT),
                Arguments.of(
                        "a letter with marks and another script",
                        "\uFEFFSäurezahl 0,4 – 石鹸 \uD83E\uDDFC".getBytes(StandardCharsets.UTF_8),
                        DocumentKind.TEXT),
                Arguments.of("a letter that begins as a program does", bytes("MZ 12 is the lot."), DocumentKind.TEXT));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource
    void kept(String what, byte[] content, DocumentKind kind) throws IOException {
        assertThat(judged(content).orThrow()).as(what).isEqualTo(kind);
    }

    static Stream<Arguments> refused() {
        byte[] pdf = SomeDocument.pdf("Certificate of analysis, invented");
        byte[] jpeg = SomeDocument.jpeg();
        return Stream.of(
                Arguments.of("nothing", new byte[0], "the file is empty"),
                Arguments.of("half a PDF", Arrays.copyOf(pdf, pdf.length / 2), "the PDF is damaged or cut off"),
                Arguments.of("a PDF without its last line", Arrays.copyOf(pdf, pdf.length - 7), "cut off"),
                Arguments.of(
                        "the first part of a PDF made to be shown as it comes",
                        bytes("%PDF-1.5\n1 0 obj\nnull\nendobj\ntrailer\nstartxref\n0\n%%EOF\n2 0 obj\nnul"),
                        "cut off"),
                Arguments.of(
                        "a PDF whose table lies beyond its end",
                        bytes("%PDF-1.4\nstartxref\n90000\n%%EOF\n"),
                        "cut off"),
                Arguments.of("half a photograph", Arrays.copyOf(jpeg, jpeg.length / 2), "the photograph is damaged"),
                Arguments.of(
                        "half a photograph with a small whole one inside",
                        Arrays.copyOf(withASmallOneInside(jpeg), jpeg.length + jpeg.length / 2),
                        "the photograph is damaged"),
                Arguments.of("a PNG", bytes("\u0089PNG\r\n\u001A\n"), "a PNG picture"),
                Arguments.of("a telephone's picture", bytes("\0\0\0\u0018ftypheic"), "a HEIC picture"),
                Arguments.of("a program for Windows", bytes("MZ\u0090\0\u0003\0\0\0"), "a program"),
                Arguments.of("a program", bytes("\u007FELF\u0002\u0001\u0001\0"), "a program"),
                Arguments.of("a script", bytes("#!/bin/sh\nrm -rf .\n"), "a program"),
                Arguments.of("a program with a PDF after it", joined(bytes("MZ\u0090\0\u0003\0"), pdf), "a program"),
                Arguments.of("a letter of an office", bytes("PK\u0003\u0004"), "an office document"),
                Arguments.of("a web page", bytes("<!DOCTYPE html><p>Log in first"), "a web page"),
                Arguments.of("a drawing", bytes("<?xml version='1.0'?><svg onload='alert(1)'/>"), "a web page or"),
                Arguments.of("a word processor's file", bytes("{\\rtf1 hello}"), "a word processor's file"),
                Arguments.of("letters of another code", bytes("S\u00E4urezahl 0,4"), "not in UTF-8"),
                Arguments.of("spaces", bytes(" \r\n\t"), "nothing in it but spaces"),
                Arguments.of("anything", bytes("\u0001\u0002\u0003\0abc"), "neither a PDF, a JPEG nor a text"),
                Arguments.of("a sign that no text has", bytes("sound\0"), "neither a PDF"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource
    void refused(String what, byte[] content, String says) throws IOException {
        assertThat(judged(content).problems()).as(what).singleElement().satisfies(problem -> {
            assertThat(problem.what()).contains(says);
            assertThat(problem.remedy()).isNotEmpty();
        });
    }

    @Test
    void a_photograph_that_ends_anywhere_else_is_not_whole() throws IOException {
        byte[] jpeg = SomeDocument.jpeg();
        for (int length = 3; length < jpeg.length; length += 7) {
            assertThat(judged(Arrays.copyOf(jpeg, length)).problems())
                    .as("%d bytes", length)
                    .hasSize(1);
        }
    }
}
