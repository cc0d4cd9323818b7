package lyewright.web.cupboard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.measure.Problem;
import lyewright.records.people.Person;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.LotDocument;
import lyewright.web.Shop;
import lyewright.web.TextField;
import lyewright.words.Dates;
import lyewright.words.FileSizes;
import lyewright.words.Sentences;

/** Looks at the documents of one lot. */
final class DocumentView {

    static final String NAME = "name";

    /** So many other lots of a delivery are named. */
    private static final int NAMED = 5;

    private final Shop shop;

    DocumentView(Shop shop) {
        this.shop = shop;
    }

    /**
     * The part of the page.
     *
     * @param lotId of which lot
     * @param name what was typed for the name of a new one
     * @param forAll whether the box was ticked that puts a new one to all lots of the delivery
     * @param problems what is wrong with what was sent
     */
    DocumentsPart part(String lotId, String name, boolean forAll, List<Problem> problems) {
        List<LotDocument> all = shop.records().documents().of(lotId);
        Map<String, String> people =
                shop.records().people().list().stream().collect(Collectors.toMap(Person::id, Person::name));
        String address = addressOf(lotId);
        return new DocumentsPart(
                address,
                all.stream()
                        .filter(document -> document.takenOff().isEmpty())
                        .map(document -> line(document, address, people))
                        .toList(),
                all.stream()
                        .filter(document -> document.takenOff().isPresent())
                        .map(document -> line(document, address, people))
                        .toList(),
                TextField.of(NAME, "What it is", "such as certificate NQ-0417; left empty, the file's own name", name)
                        .with(problems),
                others(shop.records().lots().cameWith(lotId)),
                forAll,
                problems.stream()
                        .filter(problem -> !problem.path().equals(NAME))
                        .map(Sentences::two)
                        .toList());
    }

    /** Which they are, the first of them by their codes. */
    private static String others(List<KeptLot> lots) {
        List<String> named = new ArrayList<>(
                lots.stream().limit(NAMED).map(lot -> lot.said().ownCode()).toList());
        int more = lots.size() - named.size();
        if (more > 0) {
            named.add(more + " more");
        }
        return Sentences.row(named);
    }

    static String addressOf(String lotId) {
        return "/stores/lots/" + lotId + "/documents";
    }

    private DocumentsPart.Line line(LotDocument document, String address, Map<String, String> people) {
        boolean opens = shop.records().documents().file(document).isPresent();
        return new DocumentsPart.Line(
                document.name(),
                document.kind().words() + ", " + FileSizes.said(document.bytes()),
                Dates.minute(document.at(), shop.clock()),
                Optional.ofNullable(people.get(document.person())).orElse("somebody who is no longer here"),
                document.number(),
                opens ? address + "/" + document.sha256() : "",
                document.sha256(),
                document.takenOff().orElse(""));
    }
}
