package dustwright.documents.answers;

import dustwright.engine.plant.Plant;
import dustwright.engine.sizing.Choice;
import dustwright.engine.sizing.Deadlock;
import dustwright.engine.sizing.Design;
import dustwright.engine.sizing.OpenSizes;
import dustwright.engine.sizing.Sizing;
import dustwright.engine.sizing.Sizing.Neighbour;
import java.util.stream.IntStream;

/** The sizes that were chosen: format {@code dustwright/size/2}. */
public final class SizeJson {
    private SizeJson() {}

    /** The cheapest covered design, the bound on any other, and its neighbours. */
    public static String of(Plant plant, OpenSizes open, Sizing sizing) {
        return JsonText.of(json -> {
            PlantJson.head(json, "size", plant);
            json.text("currency", open.currency());
            json.bool("found", sizing.best().isPresent());
            json.object("basis", () -> basis(json, sizing.basis()));
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
            json.list("learnt", sizing.learnt(), set -> json.texts("open", set));
            json.object("search", () -> {
                json.count("boxes", sizing.effort().boxes());
                json.count("states", sizing.effort().states());
                json.count("proofs", sizing.effort().proofs());
                json.count("counterexamples", sizing.effort().counterexamples());
            });
        });
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
