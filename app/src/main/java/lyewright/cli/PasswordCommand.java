package lyewright.cli;

import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import lyewright.formula.NameRules;
import lyewright.measure.Outcome;
import lyewright.records.Records;
import lyewright.records.RecordsTrouble;
import lyewright.records.people.Person;
import lyewright.records.store.Author;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** {@code password}: gives somebody a password to sign in with, whoever forgot theirs too. */
final class PasswordCommand implements Command {

    private static final String NAME = "password";

    /** Where a password comes from. */
    @FunctionalInterface
    interface Typed {

        /** What was typed, without showing it where that can be; empty where nothing was. */
        Optional<String> password(String prompt) throws IOException;
    }

    private final Typed keyboard;

    PasswordCommand(Typed keyboard) {
        this.keyboard = keyboard;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec =
                Specs.command(NAME, "Give somebody a password to sign in with, for pages shown with --sign-in.");
        spec.addPositional(PositionalParamSpec.builder()
                .index("0")
                .arity("0..1")
                .paramLabel("NAME")
                .type(String.class)
                .description(
                        "Whose, as Settings, People and devices calls them; the first maker's where it is left out.")
                .build());
        WorkshopFolder.addTo(spec);
        Specs.footer(
                spec,
                "",
                "The password is asked for, or read as one line from the standard input. 12 characters or more.",
                "With everything in a folder, end Lyewright first; beside a PostgreSQL server it may run.",
                "",
                "Examples:",
                "  lyewright password",
                "  lyewright password Wenna <secret.txt");
        return spec;
    }

    @Override
    public Answer answer(ParseResult typed, Path folder) {
        Outcome<Records> opened =
                WorkshopFolder.place(typed, folder).then(place -> Records.open(place, Clock.systemUTC()));
        if (!(opened instanceof Outcome.Ok<Records> ok)) {
            return WorkshopFolder.refused(NAME, opened.problems());
        }
        try (Records records = ok.value()) {
            String name = typed.matchedPositionalValue(0, "");
            Optional<Person> person = person(records, name);
            return person.isEmpty()
                    ? Answer.refuse(
                            NAME, "'" + name + "' does not work here", "write a name as People and devices has it")
                    : set(records, person.get());
        } catch (RecordsTrouble e) {
            return Answer.refuse(NAME, e.problem().what(), e.problem().remedy());
        } catch (IOException e) {
            return Answer.refuse(NAME, "nothing could be read", "type the password, or send it as one line");
        }
    }

    private static Optional<Person> person(Records records, String name) {
        return records.people().list().stream()
                .filter(one ->
                        name.isEmpty() ? one.id().equals(Author.DESK.person()) : NameRules.areSame(one.name(), name))
                .findFirst();
    }

    private Answer set(Records records, Person person) throws IOException {
        Optional<String> password = keyboard.password("Password for " + person.name() + ": ");
        Outcome<Person> set = records.passwords().set(person.id(), password.orElse(""));
        return set instanceof Outcome.Ok
                ? Answer.print(person.name() + " can sign in with this password now.\n")
                : WorkshopFolder.refused(NAME, set.problems());
    }

    /** The terminal without echo, or a line of what is sent. */
    static Optional<String> typed(String prompt) throws IOException {
        Console console = System.console();
        if (console != null) {
            char[] typed = console.readPassword("%s", prompt);
            return Optional.ofNullable(typed).map(String::new);
        }
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        return Optional.ofNullable(in.readLine());
    }
}
