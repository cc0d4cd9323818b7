package lyewright.records.stock;

import java.time.Instant;
import java.util.Optional;
import lyewright.records.file.DocumentKind;

/**
 * A document of a lot: a certificate, a delivery note.
 *
 * @param lotId of which lot
 * @param sha256 the digest of its bytes, hexadecimal, by which its file is found
 * @param kind what it is
 * @param bytes how long it is
 * @param name what it is called on this lot
 * @param number the entry that says last what became of it
 * @param at when that was
 * @param person who wrote it
 * @param takenOff why it was taken off the lot; empty where it is on it
 */
public record LotDocument(
        String lotId,
        String sha256,
        DocumentKind kind,
        long bytes,
        String name,
        long number,
        Instant at,
        String person,
        Optional<String> takenOff) {}
