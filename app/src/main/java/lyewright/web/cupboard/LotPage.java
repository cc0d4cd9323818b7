package lyewright.web.cupboard;

import java.util.List;
import java.util.Optional;
import lyewright.web.Frame;
import lyewright.web.Notice;
import lyewright.web.TextField;

/**
 * A lot, and what came and went of it.
 *
 * @param frame around it
 * @param code its own code
 * @param item what it is a lot of
 * @param itemAddress the page of that
 * @param address where its forms are sent
 * @param token tells what is sent from here from anything sent before
 * @param left what it holds
 * @param level that as a share of what came, percent
 * @param state what keeps it from being used, or empty
 * @param misnamed under whose name it is kept though it is lye, or empty
 * @param facts what is said of it
 * @param take the form of taking from it
 * @param status what it is, and what it may become
 * @param edit what can be changed of it
 * @param far whether its last day is right though it is far off
 * @param certificate what its certificate says; empty where no figure of it would count
 * @param made what it was made of; empty where it was bought
 * @param documents what is kept with it
 * @param moves what came and went, the newest first
 * @param troubles what is wrong that belongs to no field
 */
public record LotPage(
        Frame frame,
        String code,
        String item,
        String itemAddress,
        String address,
        String token,
        String left,
        int level,
        String state,
        String misnamed,
        List<ItemPage.Fact> facts,
        Take take,
        Status status,
        List<TextField> edit,
        DeliveryPage.Ask far,
        Optional<Certificate> certificate,
        Optional<Made> made,
        DocumentsPart documents,
        List<Move> moves,
        List<String> troubles) {

    /** Copies its lists. */
    public LotPage {
        facts = List.copyOf(facts);
        edit = List.copyOf(edit);
        moves = List.copyOf(moves);
        troubles = List.copyOf(troubles);
    }

    /** Whether it is stock lye, which burns. */
    public boolean isLye() {
        return !misnamed.isEmpty() || made.filter(Made::lye).isPresent();
    }

    /** The same, telling something. */
    LotPage telling(Notice notice) {
        return with(frame.telling(notice), documents);
    }

    /** The same with another part of documents. */
    LotPage with(DocumentsPart part) {
        return with(frame, part);
    }

    private LotPage with(Frame around, DocumentsPart part) {
        return new LotPage(
                around,
                code,
                item,
                itemAddress,
                address,
                token,
                left,
                level,
                state,
                misnamed,
                facts,
                take,
                status,
                edit,
                far,
                certificate,
                made,
                part,
                moves,
                troubles);
    }

    /**
     * Taking from it.
     *
     * @param kind what is chosen
     * @param amount field
     * @param why field
     */
    public record Take(String kind, TextField amount, TextField why) {}

    /**
     * Whether it may be used.
     *
     * @param word what it is
     * @param quarantine whether it is in quarantine
     * @param usable whether it may be used
     * @param refused whether it is refused
     */
    public record Status(String word, boolean quarantine, boolean usable, boolean refused) {}

    /**
     * What its certificate says.
     *
     * @param told what is kept of it, or that there is none
     * @param figures what it says, figure by figure; none where there is none
     * @param gain where it is worked out what it would gain; empty where it could not gain anything
     * @param fields what can be typed
     * @param asks whether something unusual is asked about
     * @param open whether it is unfolded
     */
    public record Certificate(
            String told, List<ItemPage.Fact> figures, String gain, List<TextField> fields, boolean asks, boolean open) {
        /** Copies its lists. */
        public Certificate {
            figures = List.copyOf(figures);
            fields = List.copyOf(fields);
        }

        /** Of oils that were mixed here: what went in says it, and nothing is typed. */
        static Certificate ofMix(String told) {
            return new Certificate(told, List.of(), "", List.of(), false, false);
        }

        /** Whether it is what somebody certified, and not what follows from what went in. */
        public boolean typed() {
            return !fields.isEmpty();
        }
    }

    /**
     * What a lot that was made here is.
     *
     * @param strength of a stock lye, in words; empty where it is none
     * @param parts what went into it
     */
    public record Made(String strength, List<Part> parts) {
        /** Copies its list. */
        public Made {
            parts = List.copyOf(parts);
        }

        /** Whether it is stock lye, which burns. */
        public boolean lye() {
            return !strength.isEmpty();
        }
    }

    /**
     * So much of a lot that went into another.
     *
     * @param amount how much
     * @param of what, with its code
     * @param address the page of that lot
     * @param takenBack whether that was taken back
     */
    public record Part(String amount, String of, String address, boolean takenBack) {}

    /**
     * Something that came or went.
     *
     * @param number of the ledger
     * @param when day and time
     * @param amount with its sign
     * @param what why it came or went, and what for
     * @param who wrote it
     * @param back where it is taken back; empty where it cannot be
     * @param struck whether another took it back
     */
    public record Move(long number, String when, String amount, String what, String who, String back, boolean struck) {}
}
