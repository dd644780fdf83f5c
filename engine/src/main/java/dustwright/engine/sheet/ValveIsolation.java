package dustwright.engine.sheet;

import dustwright.engine.bagging.Container;
import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.hazard.Protection;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.GaugePressure;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What keeps an explosion in the receiver from the bag or drum below it and from the person who changes it. */
final class ValveIsolation {
    private static final String ONE_VESSEL =
            "does not count: what is below it is one vessel with the receiver for flame";

    private final Station station;
    private final Collecting here;
    private final Protection stated;
    private final BelowReceiver below;
    private final Writing writing;

    ValveIsolation(Station station, Collecting here, Writing writing) {
        this.station = station;
        this.here = here;
        this.stated = station.receiver().protection();
        this.below = new BelowReceiver(station);
        this.writing = writing;
    }

    void write() {
        if (station.rotaryValve().isPresent()) {
            valve();
        }
        if (station.container().isPresent()) {
            judged(station.container().get());
        } else if (station.rotaryValve().isPresent()) {
            nothingDrawnBelow();
        }
    }

    private void valve() {
        String name = "Rotary valve as isolation";
        if (below.stated().isEmpty()) {
            writing.unknown(
                    "valve-isolation",
                    name,
                    "Enter \"rotary valve isolates\" under \"explosion\" of the receiver. Meanwhile it does not count: what is below it is one"
                            + " vessel with the receiver for flame.");
            return;
        }
        writing.words(
                "valve-isolation",
                name,
                below.stated().get() ? asStated() : ONE_VESSEL,
                List.of(),
                BelowReceiver.BUILD);
    }

    private String asStated() {
        if (!below.isolates()) {
            return "stated as tested for it, but " + doubt() + " Until that is shown it " + ONE_VESSEL;
        }
        return "stated as tested for it; it has to stop when an explosion is detected, so that burning dust is not passed on: that goes before"
                + " keeping it turning on high level";
    }

    private String doubt() {
        return below.against().isEmpty()
                ? String.join(" and ", below.open())
                        + " of it not stated: at least six vanes and at most 0.2 mm (0.0079 in) are usual."
                : "against it: " + String.join(", ", below.against()) + ".";
    }

    private void nothingDrawnBelow() {
        if (below.isolates()) {
            isolates();
        } else {
            notSaid(
                    "The valve is not shown to isolate, and what stands below it is not drawn: enter \"container\" of the station, and"
                            + " \"rotary valve isolates\" with \"vanes\" and \"tip gap\" of the valve.");
        }
    }

    /** As stated and built, unless a dust here asks for tests of its own. */
    private void isolates() {
        Fitness fitness = new Fitness(stated.devices().valve(), "valve device", here.burning());
        writing.words(
                "valve-device", "The valve as an isolation device", fitness.words(), List.of(), BelowReceiver.BUILD);
        if (!fitness.against().isEmpty()) {
            none(1);
        } else if (!here.metals().isEmpty()) {
            notSaid("Whether the valve isolates a metal dust is its maker's to state, by tests of this metal: "
                    + here.metals().stream().map(Dust::name).collect(Collectors.joining("; ")) + ".");
        } else if (!here.unnamed().isEmpty()) {
            notSaid("Enter \"family\" under \"explosion\" of "
                    + here.unnamed().stream().map(Dust::name).collect(Collectors.joining("; "))
                    + ": it may be a metal, and a valve tested for another dust does not do for one.");
        } else if (fitness.open().isPresent()) {
            notSaid(fitness.open().get());
        } else {
            none(0);
        }
    }

    private void judged(Container container) {
        if (below.isolates()) {
            isolates();
        } else if (below.stated().orElse(false)) {
            notSaid("The valve is stated as tested for isolation, but " + doubt()
                    + " Its maker's certificate has to show it.");
        } else if (station.rotaryValve().isPresent() && below.stated().isEmpty()) {
            notSaid("Enter \"rotary valve isolates\" under \"explosion\" of the receiver.");
        } else if (container.kind() == Container.Kind.BULK_BAG) {
            none(1);
        } else {
            drum();
        }
    }

    /** A drum that is one vessel with the receiver has to stand what that stands. */
    private void drum() {
        Optional<GaugePressure> stands = stated.containerStands();
        if (stands.isEmpty() || stated.reduced().isEmpty()) {
            notSaid(
                    "The drum is one vessel with the receiver. Enter \"container stands\" and \"reduced pressure\" under \"explosion\" of the"
                            + " receiver: drum and clamp have to stand what the vessel stands.");
            return;
        }
        writing.given("container-stands", "Pressure that drum and clamp stand", stands.get());
        none(stands.get().pascals() < stated.reduced().get().pascals() ? 1 : 0);
    }

    private void none(int count) {
        writing.none(
                FindingCode.VALVE_ISOLATION,
                Place.Kind.CONTAINER,
                "containers that an explosion in the receiver reaches",
                count,
                BelowReceiver.BUILD);
    }

    private void notSaid(String why) {
        writing.notSaid(FindingCode.VALVE_ISOLATION, Place.Kind.CONTAINER, BelowReceiver.BUILD, why);
    }
}
