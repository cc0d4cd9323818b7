package lyewright.web.people;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lyewright.records.Records;
import lyewright.records.people.Deed;
import lyewright.records.people.Device;
import lyewright.records.people.Person;
import lyewright.records.people.Role;
import lyewright.records.people.SignedLine;
import lyewright.web.Doors;
import lyewright.web.Frame;
import lyewright.web.NetworkDoor;
import lyewright.web.Notice;
import lyewright.web.Section;
import lyewright.web.Shop;
import lyewright.words.Dates;

/** What the page of people and devices shows. */
final class PeopleView {

    private static final int LATELY = 20;

    private final Shop shop;
    private final Doors doors;
    private final NetworkDoor network;

    PeopleView(Shop shop, Doors doors, NetworkDoor network) {
        this.shop = shop;
        this.doors = doors;
        this.network = network;
    }

    PeoplePage page(Optional<Notice> notice, PeoplePage.Added added, List<String> troubles) {
        Records records = shop.records();
        Frame frame = shop.frame("People and devices", Section.SETTINGS).withStyle("people.css");
        List<Person> people = records.people().list();
        return new PeoplePage(
                notice.map(frame::telling).orElse(frame),
                door(),
                somebodies(records, people),
                lately(records, people),
                added,
                troubles);
    }

    PeoplePage.Door door() {
        return new PeoplePage.Door(doors.signIn(), network.isOpen(), network.isSecret(), network.addresses());
    }

    private List<PeoplePage.Somebody> somebodies(Records records, List<Person> people) {
        List<String> having = records.passwords().having();
        Map<String, List<Device>> devices = records.devices().list().stream()
                .collect(Collectors.groupingBy(device -> device.person().id()));
        return people.stream()
                .map(person -> new PeoplePage.Somebody(
                        person.id(),
                        person.name(),
                        person.role() == Role.HELPER,
                        Words.may(person.role()),
                        person.isFirst(),
                        having.contains(person.id()),
                        devices.getOrDefault(person.id(), List.of()).stream()
                                .map(this::theirs)
                                .toList()))
                .toList();
    }

    private PeoplePage.Theirs theirs(Device device) {
        String came = device.way() == Device.Way.CODE ? "let in " : "signed in ";
        String seen = device.seenAt()
                .map(at -> "last here " + Dates.minute(at, shop.clock()))
                .orElse("has to be let in anew");
        return new PeoplePage.Theirs(
                device.id(),
                device.name(),
                came + Dates.minute(device.addedAt(), shop.clock()) + ", " + seen,
                device.seenAt().isEmpty());
    }

    private List<PeoplePage.Done> lately(Records records, List<Person> people) {
        List<SignedLine> lines = records.signatures().last(LATELY);
        Map<String, String> recipes = records.recipes()
                .names(lines.stream()
                        .filter(line -> line.deed().thing() == Deed.Thing.RECIPE)
                        .map(SignedLine::thingId)
                        .distinct()
                        .toList());
        Map<String, String> things = records.signatures().names(lines);
        Map<String, String> devices = records.devices().names();
        Map<String, String> names = Stream.concat(
                        people.stream(),
                        lines.stream()
                                .flatMap(line -> Stream.of(line.author().person(), person(line)))
                                .filter(id -> !id.isEmpty())
                                .distinct()
                                .filter(id -> people.stream()
                                        .noneMatch(person -> person.id().equals(id)))
                                .flatMap(id -> records.people().find(id).stream()))
                .collect(Collectors.toMap(Person::id, Person::name));
        return lines.stream()
                .map(line -> new PeoplePage.Done(
                        Dates.minute(line.at(), shop.clock()),
                        names.getOrDefault(line.author().person(), "somebody who is not known")
                                + line.author()
                                        .device()
                                        .map(id -> ", " + devices.getOrDefault(id, "a device"))
                                        .orElse(""),
                        Words.deed(
                                line,
                                Optional.ofNullable(
                                        switch (line.deed().thing()) {
                                            case RECIPE -> recipes.get(line.thingId());
                                            case PERSON, PASSWORD -> names.get(line.thingId());
                                            case DEVICE -> devices.get(line.thingId());
                                            default -> things.get(line.thingId());
                                        })),
                        address(line)))
                .toList();
    }

    /** Whom it was done to. */
    private static String person(SignedLine line) {
        boolean toSomebody =
                line.deed().thing() == Deed.Thing.PERSON || line.deed().thing() == Deed.Thing.PASSWORD;
        return toSomebody ? line.thingId() : "";
    }

    private static Optional<String> address(SignedLine line) {
        return switch (line.deed().thing()) {
            case RECIPE -> Optional.of("/recipes/" + line.thingId());
            case MOULD -> Optional.of("/stores/moulds/" + line.thingId());
            case BALANCE -> Optional.of("/stores/balances/" + line.thingId());
            case JUG -> Optional.of("/stores/jugs/" + line.thingId());
            case MATERIAL -> Optional.of("/stores/materials/" + line.thingId());
            case SUPPLIER -> Optional.of("/stores/suppliers/" + line.thingId());
            case STOCKED_MATERIAL -> Optional.of("/stores/cupboard/" + line.thingId());
            case SETTINGS, PERSON, DEVICE, PASSWORD, NETWORK -> Optional.empty();
        };
    }
}
