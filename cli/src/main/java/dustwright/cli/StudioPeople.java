package dustwright.cli;

import dustwright.studio.People;
import dustwright.studio.People.Role;
import dustwright.studio.Store;
import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Who may sign in to a studio: set up, listed, taken out. */
final class StudioPeople {
    private final PrintWriter out;

    StudioPeople(CommandLine command) {
        this.out = command.getOut();
    }

    int call(Supplier<Store> database, @Nullable String person, @Nullable String role, boolean remove) {
        if (person != null && !remove && role == null) {
            throw new BadInput(
                    "--person " + person + ": say with --role what that person may do: viewer, designer or checker.");
        }
        Optional<Role> asked = Optional.ofNullable(role).map(StudioPeople::role);
        try (Store store = database.get()) {
            People people = new People(store);
            if (person == null) {
                list(people.all());
            } else if (remove) {
                if (!people.remove(person)) {
                    throw new BadInput("Nobody called " + person + " is set up.");
                }
                out.println(person + " may no longer sign in.");
            } else {
                setUp(people, person, asked.orElseThrow());
            }
            out.flush();
        }
        return ExitCode.HOLDS;
    }

    private static Role role(String word) {
        try {
            return Role.valueOf(word.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException none) {
            throw new BadInput("--role " + word + ": a role is viewer, designer or checker.");
        }
    }

    private void list(List<People.Person> people) {
        if (people.isEmpty()) {
            out.println("Nobody is set up, so the studio answers this machine alone and asks nobody to sign in.");
        }
        people.forEach(p -> out.println(p.role().name().toLowerCase(Locale.ROOT) + "  " + p.name()));
    }

    private void setUp(People people, String name, Role role) {
        char[] password = password(name);
        try {
            People.unfit(name, password).ifPresent(why -> {
                throw new BadInput(why);
            });
            people.put(name, role, password);
        } finally {
            Arrays.fill(password, ' ');
        }
        out.println(name + " may sign in as " + role.name().toLowerCase(Locale.ROOT) + ".");
    }

    private static char[] password(String name) {
        char[] first = asked("Password for " + name + ": ");
        if (terminal().isPresent() && !Arrays.equals(first, asked("The same again: "))) {
            throw new BadInput("The two passwords differ; nothing was set up.");
        }
        return first;
    }

    /** From the terminal, unseen; where there is none, the first line of standard input. */
    static char[] asked(String words) {
        Optional<Console> terminal = terminal();
        // Console.readPassword answers null at the end of its input
        Optional<char[]> given =
                terminal.isPresent() ? Optional.ofNullable(terminal.get().readPassword("%s", words)) : firstLine();
        return given.orElseThrow(
                () -> new BadInput(
                        "The input ended before a password was given. Give it on the first line of standard input, or at a terminal."));
    }

    /** From Java 22 on standard input is a console too, with an end after its first line. */
    @SuppressWarnings("SystemConsoleNull")
    private static Optional<Console> terminal() {
        return Optional.ofNullable(System.console());
    }

    private static Optional<char[]> firstLine() {
        try {
            BufferedReader in = new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset()));
            return Optional.ofNullable(in.readLine()).map(String::toCharArray);
        } catch (IOException fault) {
            throw new BadInput("The password could not be read: " + fault.getMessage());
        }
    }
}
