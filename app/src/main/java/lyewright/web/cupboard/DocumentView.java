package lyewright.web.cupboard;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.measure.Problem;
import lyewright.records.people.Person;
import lyewright.records.stock.LotDocument;
import lyewright.web.Shop;
import lyewright.web.TextField;
import lyewright.words.Dates;
import lyewright.words.FileSizes;
import lyewright.words.Sentences;

/** Looks at the documents of one lot. */
final class DocumentView {

    static final String NAME = "name";

    private final Shop shop;

    DocumentView(Shop shop) {
        this.shop = shop;
    }

    /**
     * The part of the page.
     *
     * @param lotId of which lot
     * @param name what was typed for the name of a new one
     * @param problems what is wrong with what was sent
     */
    DocumentsPart part(String lotId, String name, List<Problem> problems) {
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
                problems.stream()
                        .filter(problem -> !problem.path().equals(NAME))
                        .map(Sentences::two)
                        .toList());
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
