package dustwright.documents.answers;

import dustwright.documents.hazard.HazardLists;
import dustwright.documents.writing.Wording;
import dustwright.engine.air.Air;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.FreeAirFlow;
import java.util.Set;

/** What stands at the head of every answer: format, plant, reference state, site, what the answer rests on. */
final class PlantJson {
    private static final double REFERENCE_PRESSURE_Pa = 101_325;
    private static final double REFERENCE_TEMPERATURE_K = 293.15;

    private static final Set<String> SECOND_VERSION = Set.of("size", "verify", "solve", "cover", "explain", "sheet");

    private PlantJson() {}

    /** Name and version of an answer: the second version of those with findings says null where no figure is known, that of size what its bound rests on. */
    static String format(String answer) {
        return "dustwright/" + answer + (SECOND_VERSION.contains(answer) ? "/2" : "/1");
    }

    static void head(JsonText json, String answer, Plant plant) {
        json.text("format", format(answer));
        json.text("caution", caution(plant));
        json.object("plant", () -> {
            json.text("name", plant.name());
            json.text("note", plant.note());
        });
        air(json, plant.site().air());
        json.list("assumptions", plant.assumptions(), assumption -> {
            place(json, assumption.place());
            json.text("what", assumption.what());
            source(json, "basis", assumption.basis());
        });
        json.list("overrides", plant.overrides(), override -> {
            place(json, override.place());
            json.text("what", override.what());
            json.text("reason", override.reason());
            json.text("by", override.by());
        });
    }

    private static String caution(Plant plant) {
        boolean burns = plant.dusts().stream().anyMatch(d -> d.burns());
        return burns ? Wording.SCREENING + " " + HazardLists.CAUTION : Wording.SCREENING;
    }

    /** Reference state of free air, and the air of a site. */
    static void air(JsonText json, Air air) {
        json.object("freeAir", () -> {
            json.number("pressure_Pa", REFERENCE_PRESSURE_Pa);
            json.number("temperature_K", REFERENCE_TEMPERATURE_K);
            json.number("density_kgPerM3", FreeAirFlow.REFERENCE_DENSITY_kgPerM3);
        });
        json.object("site", () -> {
            json.si("pressure_Pa", air.ambient());
            json.si("temperature_K", air.temperature());
            json.number("gasConstant_JPerKgK", air.gasConstant_JPerKgK());
            json.number("viscosity_PaS", air.viscosity_PaS());
        });
    }

    static void place(JsonText json, Place place) {
        json.object("place", () -> {
            json.text("kind", place.kind().words());
            json.text("id", place.id());
        });
    }

    static void source(JsonText json, String key, Source source) {
        json.object(key, () -> {
            json.text("text", source.text());
            json.text("confidence", source.confidence().words());
        });
    }
}
