package lyewright.web.start;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import lyewright.records.Records;

/** What lies with two lots of the demo cupboard: a certificate and a letter. Both are invented and say so. */
final class DemoDocuments {

    private final Records records;

    DemoDocuments(Records records) {
        this.records = records;
    }

    /** Puts them to their lots; a lot that has them keeps them as they are. */
    void fill() {
        put("olive-virgin", "Certificate NQ-0417", "olive-oil-certificate.pdf");
        put("cedarwood-virginia-oil", "Letter of Fell & Fen", "cedarwood-letter.txt");
    }

    private void put(String material, String name, String file) {
        records.items().findKey(material).stream()
                .flatMap(item -> records.lots().of(item.id()).stream())
                .limit(1)
                .forEach(lot -> {
                    try (InputStream in = DemoDocuments.class.getResourceAsStream("demo/" + file)) {
                        if (in == null) {
                            throw new IllegalStateException("the file " + file + " is missing from the application");
                        }
                        records.documents()
                                .add(records.author(), lot.id(), name, in)
                                .orThrow();
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                });
    }
}
