package dustwright.documents.answers;

import dustwright.engine.plant.Plant;
import dustwright.engine.sizing.Choice;
import dustwright.engine.sizing.Deadlock;
import dustwright.engine.sizing.Design;
import dustwright.engine.sizing.OpenSizes;
import dustwright.engine.sizing.Sizing;
import dustwright.engine.sizing.Sizing.Neighbour;
import java.util.List;
import java.util.stream.IntStream;

/** The sizes that were chosen: format {@code dustwright/size/2}. */
public final class SizeJson {
    private SizeJson() {}

    /** The cheapest covered design, the bound on any other, and its neighbours. */
    public static String of(Plant plant, OpenSizes open, Sizing sizing, SizeBesides besides) {
        return JsonText.of(json -> {
            PlantJson.head(json, "size", plant);
            json.text("currency", open.currency());
            json.bool("found", sizing.best().isPresent());
            json.list("openInSheets", besides.openInSheets(), finding -> FindingJson.brief(json, finding));
            json.object("basis", () -> basis(json, sizing.basis()));
            json.bool("partial", sizing.partial() || besides.partial());
            json.text("stopped", sizing.stopped());
            if (Double.isFinite(sizing.bound())) {
                json.number("noneBelow", sizing.bound());
            }
            sizing.gap().ifPresent(gap -> json.number("gap", gap));
            sizing.best().ifPresent(best -> json.object("best", () -> design(json, sizing, best)));
            json.list("runnersUp", sizing.runnersUp(), other -> design(json, sizing, other));
            json.list("neighbours", sizing.neighbours(), neighbour -> neighbour(json, sizing, neighbour));
            json.list("undecided", sizing.undecided(), other -> design(json, sizing, other));
            sizing.deadlock().ifPresent(deadlock -> json.object("deadlock", () -> deadlock(json, sizing, deadlock)));
            besides.curve()
                    .ifPresent(curve -> json.list("curve", curve.points(), point -> {
                        json.count("users", point.users());
                        brief(json, point.sizing());
                    }));
            json.list("remedies", besides.escapes(), escape -> {
                json.text("what", escape.what());
                brief(json, escape.sizing());
                if (Double.isFinite(escape.misses())) {
                    json.number("misses", escape.misses());
                }
            });
            json.list("learnt", sizing.learnt(), set -> json.texts("open", set));
            json.object("search", () -> {
                json.count("boxes", sizing.effort().boxes());
                json.count("states", sizing.effort().states());
                json.count("proofs", sizing.effort().proofs());
                json.count("counterexamples", sizing.effort().counterexamples());
            });
        });
    }

    private static void brief(JsonText json, Sizing sizing) {
        json.bool("partial", sizing.partial());
        json.text("stopped", sizing.stopped());
        if (Double.isFinite(sizing.bound())) {
            json.number("noneBelow", sizing.bound());
        }
        sizing.best().ifPresent(best -> json.object("best", () -> design(json, sizing, best)));
        SizeBesides.leastMargin(sizing).ifPresent(margin -> json.number("leastMargin", margin));
    }

    /** What an earlier answer of the command holds for a search that takes it up. */
    public record Begun(List<List<String>> learnt, List<String> options) {
        public Begun {
            learnt = List.copyOf(learnt);
            options = List.copyOf(options);
        }
    }

    /**
     * Reads an earlier answer. Nothing in it is taken as shown: its design is proven anew, its sets are only asked first.
     *
     * @throws IllegalArgumentException in words, if it is no answer of this command or about another plant
     */
    public static Begun begun(String text, Plant plant, OpenSizes open) {
        JsonTree answer = JsonTree.read(text, "size");
        if (!answer.of("plant").text("name").equals(plant.name())) {
            throw new IllegalArgumentException("it is about another plant");
        }
        List<String> ids = plant.inlets().stream().map(inlet -> inlet.id()).toList();
        List<List<String>> learnt = answer.list("learnt").stream()
                .map(one -> one.texts("open"))
                .filter(ids::containsAll)
                .toList();
        List<String> options = answer.has("best")
                ? answer.of("best").list("chosen").stream()
                        .map(one -> one.text("option"))
                        .toList()
                : List.of();
        return new Begun(learnt, options.size() == open.choices().size() ? options : List.of());
    }

    private static void basis(JsonText json, Sizing.Basis basis) {
        json.bool("tree", basis.tree());
        json.bool("wyes", basis.wyes());
        json.bool("dust", basis.dust());
        json.bool("proven", basis.proven());
        json.count("compared", basis.compared());
        json.number("departure", basis.departure());
        json.number("widened", basis.pad());
        json.bool("energy", basis.energy());
        json.count("pieces", basis.pieces());
    }

    private static void deadlock(JsonText json, Sizing sizing, Deadlock deadlock) {
        json.list("excludeEachOther", deadlock.clash(), clash -> {
            json.text("condition", clash.condition());
            json.object("atBest", () -> {
                FindingJson.brief(json, clash.best().finding());
                json.texts("open", clash.best().open());
            });
            json.list("leaves", clash.leaves(), left -> {
                json.text("of", of(sizing.choices().get(left.choice())));
                json.text("choice", sizing.choices().get(left.choice()).id());
                json.texts("options", left.options());
            });
        });
        deadlock.nearest()
                .ifPresent(nearest -> json.object("nearest", () -> {
                    design(json, sizing, nearest.design());
                    json.number("misses", nearest.miss());
                    json.number("everyDesignMisses", nearest.least());
                }));
    }

    private static void design(JsonText json, Sizing sizing, Design design) {
        json.number("cost", design.cost());
        json.number("first", design.first());
        design.running().ifPresent(running -> json.number("energy", running));
        json.list(
                "chosen",
                IntStream.range(0, sizing.choices().size()).boxed().toList(),
                v -> option(json, sizing.choices().get(v), design.options().get(v)));
    }

    private static void option(JsonText json, Choice choice, String option) {
        json.text("of", of(choice));
        json.text("choice", choice.id());
        json.text("option", option);
    }

    private static String of(Choice choice) {
        if (choice instanceof Choice.Tubes) {
            return "tubes";
        }
        if (choice instanceof Choice.Hoses) {
            return "hoses";
        }
        return choice instanceof Choice.Producers ? "producers" : "cloth";
    }

    private static void neighbour(JsonText json, Sizing sizing, Neighbour neighbour) {
        option(json, sizing.choices().get(neighbour.choice()), neighbour.option());
        json.number("difference", neighbour.difference());
        json.text("said", neighbour.said());
        neighbour
                .fails()
                .ifPresent(worst -> json.object("fails", () -> {
                    FindingJson.brief(json, worst.finding());
                    json.texts("open", worst.open());
                }));
    }
}
