package lyewright.records.stock;

import java.time.LocalDate;
import java.util.Optional;
import lyewright.formula.OwnMaterial;
import lyewright.stock.LotStatus;

/**
 * What is said of a lot.
 *
 * @param ownCode the workshop's own code, which no two lots share
 * @param supplierId who sold it; empty for what was made here
 * @param supplierLot their lot code, or empty
 * @param received the day it came or was made
 * @param opened the day it was opened
 * @param bestBefore the last day it is good on
 * @param price what was paid for all of it
 * @param status whether it may be used
 * @param certificate what its certificate says
 * @param notes the maker's own
 */
public record LotSaid(
        String ownCode,
        Optional<String> supplierId,
        String supplierLot,
        LocalDate received,
        Optional<LocalDate> opened,
        Optional<LocalDate> bestBefore,
        Optional<Price> price,
        LotStatus status,
        Optional<OwnMaterial> certificate,
        String notes) {

    /** A lot that came or was made on a day, may be used, and of which nothing else is said. */
    public static LotSaid of(LocalDate received) {
        return new LotSaid(
                "",
                Optional.empty(),
                "",
                received,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                LotStatus.USABLE,
                Optional.empty(),
                "");
    }

    /** With another code. */
    public LotSaid withCode(String other) {
        return new LotSaid(
                other, supplierId, supplierLot, received, opened, bestBefore, price, status, certificate, notes);
    }

    /** From another supplier. */
    public LotSaid withSupplier(Optional<String> other) {
        return new LotSaid(
                ownCode, other, supplierLot, received, opened, bestBefore, price, status, certificate, notes);
    }

    /** With the supplier's code of it. */
    public LotSaid withSupplierLot(String other) {
        return new LotSaid(ownCode, supplierId, other, received, opened, bestBefore, price, status, certificate, notes);
    }

    /** With another last day, or none. */
    public LotSaid withBestBefore(Optional<LocalDate> other) {
        return new LotSaid(
                ownCode, supplierId, supplierLot, received, opened, other, price, status, certificate, notes);
    }

    /** With another price, or none. */
    public LotSaid withPrice(Optional<Price> other) {
        return new LotSaid(
                ownCode, supplierId, supplierLot, received, opened, bestBefore, other, status, certificate, notes);
    }

    /** With another status. */
    public LotSaid withStatus(LotStatus other) {
        return new LotSaid(
                ownCode, supplierId, supplierLot, received, opened, bestBefore, price, other, certificate, notes);
    }

    /** With another certificate, or none. */
    public LotSaid withCertificate(Optional<OwnMaterial> other) {
        return new LotSaid(ownCode, supplierId, supplierLot, received, opened, bestBefore, price, status, other, notes);
    }
}
