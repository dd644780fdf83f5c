package dustwright.cli;

import dustwright.documents.answers.JsonAnswers;
import dustwright.plantfile.PlantSchema;
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
    /** What has a schema. */
    enum Subject {
        PLANT,
        VERIFY,
        SOLVE,
        COVER,
        SIZE,
        CHANGES,
        EXPLAIN,
        SHEET,
        FIGURE,
        CATALOGUE,
        REHEARSE,
        /** A file of a catalogue, not an answer. */
        CATALOGUE_FILE
    }

    @SuppressWarnings("NullAway.Init")
    @Spec
    private CommandLine.Model.CommandSpec spec;

    @Parameters(
            index = "0",
            paramLabel = "plant|verify|solve|cover|size|explain|sheet|figure|catalogue|rehearse|catalogue_file",
            arity = "0..1",
            description = "Default: plant.")
    private Subject subject = Subject.PLANT;

    @Override
    public Integer call() {
        String schema = switch (subject) {
            case PLANT -> PlantSchema.json();
            case VERIFY -> JsonAnswers.schema("verify");
            case SOLVE -> JsonAnswers.schema("solve");
            case COVER -> JsonAnswers.schema("cover");
            case SIZE -> JsonAnswers.schema("size");
            case CHANGES -> JsonAnswers.schema("changes");
            case EXPLAIN -> JsonAnswers.schema("explain");
            case SHEET -> JsonAnswers.schema("sheet");
            case FIGURE -> JsonAnswers.schema("figure");
            case CATALOGUE -> JsonAnswers.schema("catalogue");
            case REHEARSE -> JsonAnswers.schema("rehearse");
            case CATALOGUE_FILE -> PlantSchema.catalogueJson();
        };
        spec.commandLine().getOut().println(schema.stripTrailing());
        return ExitCode.HOLDS;
    }
}
