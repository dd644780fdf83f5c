package dustwright.plantfile;

import dustwright.engine.producer.VacuumProducer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Machines to choose from, by model, in the order of the files and of each file. */
public final class Catalogue {
    private final Map<String, Section> sections;
    private final Map<String, VacuumProducer> producers = new LinkedHashMap<>();

    Catalogue(Map<String, Section> producers) {
        this.sections = new LinkedHashMap<>(producers);
        producers.forEach((model, section) -> this.producers.put(model, ProducerBinder.item(section)));
    }

    /** Vacuum producers, each at the speed its catalogue states; the id is the model. */
    public List<VacuumProducer> producers() {
        return List.copyOf(producers.values());
    }

    List<String> models() {
        return new ArrayList<>(sections.keySet());
    }

    Optional<Section> section(String model) {
        return Optional.ofNullable(sections.get(model));
    }
}
