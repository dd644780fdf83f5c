package dustwright.cli;

import dustwright.documents.answers.JsonAnswers;
import dustwright.plantfile.PlantSchema;
import java.util.ArrayList;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints a JSON Schema. */
@Command(
        name = "schema",
        mixinStandardHelpOptions = true,
        header = "Print the JSON Schema of the plant file or of an answer.",
        description = {
            "",
            "An editor that knows the schema of the plant file completes and checks it while you type.",
            "",
            "  dustwright schema plant > plant.schema.json",
            ""
        })
final class SchemaCommand implements Callable<Integer> {
    private static final String PLANT = "plant";
    private static final String CATALOGUE_FILE = "catalogue-file";

    @SuppressWarnings("NullAway.Init")
    @Spec
    private CommandLine.Model.CommandSpec spec;

    @Parameters(
            index = "0",
            paramLabel = "SUBJECT",
            arity = "0..1",
            completionCandidates = Subjects.class,
            description =
                    "plant or catalogue-file for the files you write, else an answer: ${COMPLETION-CANDIDATES}. Default: plant.")
    private String subject = PLANT;

    /** What has a schema. */
    static final class Subjects extends ArrayList<String> {
        private static final long serialVersionUID = 1;

        Subjects() {
            super(JsonAnswers.ANSWERS);
            add(0, CATALOGUE_FILE);
            add(0, PLANT);
        }
    }

    @Override
    public Integer call() {
        spec.commandLine().getOut().println(schema().stripTrailing());
        return ExitCode.HOLDS;
    }

    private String schema() {
        String asked = subject.strip().toLowerCase(Locale.ROOT).replace('_', '-');
        if (asked.equals(PLANT)) {
            return PlantSchema.json();
        }
        if (asked.equals(CATALOGUE_FILE)) {
            return PlantSchema.catalogueJson();
        }
        if (!JsonAnswers.ANSWERS.contains(asked)) {
            throw new BadInput("Nothing called \"" + subject + "\" has a schema; these have: "
                    + String.join(", ", new Subjects()) + ".");
        }
        return JsonAnswers.schema(asked);
    }
}
