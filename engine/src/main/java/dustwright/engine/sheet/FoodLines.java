package dustwright.engine.sheet;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.plant.Station;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What dust that goes into food or touches it asks of what picks it up. */
final class FoodLines {
    private static final Source RULES = Source.fromMemory("Regulation (EC) 1935/2004; 21 CFR 117; clause not seen");

    private final Station station;
    private final List<Dust> dusts;
    private final Writing writing;

    FoodLines(Station station, List<Dust> dusts, Writing writing) {
        this.station = station;
        this.dusts = dusts;
        this.writing = writing;
    }

    void write() {
        List<Dust> food =
                dusts.stream().filter(d -> d.card().food().orElse(false)).toList();
        List<Dust> unsaid =
                dusts.stream().filter(d -> d.card().food().isEmpty()).toList();
        if (!food.isEmpty()) {
            words();
        }
        if (food.isEmpty() && unsaid.isEmpty()) {
            return;
        }
        Optional<Boolean> declared = station.filter().service().foodContact();
        if (food.isEmpty() && !declared.orElse(false)) {
            writing.notSaid(
                    FindingCode.FOOD_CONTACT,
                    Place.Kind.FILTER,
                    RULES,
                    "Enter \"food\" under \"explosion\" of "
                            + unsaid.stream().map(Dust::name).collect(Collectors.joining("; ")) + ".");
        } else if (declared.isEmpty()) {
            writing.notSaid(
                    FindingCode.FOOD_CONTACT,
                    Place.Kind.FILTER,
                    RULES,
                    "Enter \"food contact\" of the filter: whether elements, hoses, tools, seals and container are declared for contact with"
                            + " food.");
        } else {
            writing.none(
                    FindingCode.FOOD_CONTACT,
                    Place.Kind.FILTER,
                    "parts not declared for contact with food",
                    declared.get() ? 0 : 1,
                    RULES);
        }
    }

    private void words() {
        writing.words(
                "food-hygiene",
                "Hygiene where food is made",
                "tools and hoses of each zone marked and kept there; raw and finished goods, and allergens, by inlets or systems of their own;"
                        + " receiver, hopper and valve opened and cleaned dry at a set interval, nothing wet into the tubing; grease for food"
                        + " where it can reach the dust",
                List.of(),
                Source.commonPractice());
        writing.words(
                "food-waste",
                "What is picked up",
                "is waste, unless the site's food safety plan says who lets it back, by which test",
                List.of(),
                RULES);
    }
}
