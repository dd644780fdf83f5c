package dustwright.engine.sheet;

import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.hazard.Protection.Producers;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.Temperature;
import java.util.List;

/** The producers draw clean air only: where they stand, what they are marked for, and how hot they get outside. */
final class ProducerPlace {
    private static final Source PLACE =
            Source.published("NFPA 652 (2016) 8.4.2.2, portable cleaners, as a guide, read in summaries");

    private final Station station;
    private final Producers stated;
    private final Collecting here;
    private final Writing writing;

    ProducerPlace(Station station, Collecting here, Writing writing) {
        this.station = station;
        this.stated = station.receiver().protection().producers();
        this.here = here;
        this.writing = writing;
    }

    void write() {
        if (station.producers().isEmpty()) {
            return;
        }
        String behind = station.safetyFilter().isPresent()
                ? "on the clean side, behind the filter and a safety filter that stops dust when a filter element breaks"
                : "on the clean side, behind the filter. No safety filter is stated: a broken element lets dust through to it";
        writing.words(
                "producer-place",
                "Place of the vacuum producer",
                behind
                        + ". It belongs outside the areas above, or its motor and instruments are marked for them; no surface may be hotter"
                        + " than the dust's own sheet says"
                        + stated.inArea()
                                .map(in -> ". Stated: it stands " + (in ? "in" : "outside")
                                        + " a classified area; what it draws is another matter, see its inside above")
                                .orElse("")
                        + stated.marked()
                                .map(marked ->
                                        marked ? ", marked for area and group" : ", not marked for a classified area")
                                .orElse(""),
                List.of(),
                PLACE);
        place();
        surface();
    }

    private boolean marked() {
        return stated.marked().orElse(false);
    }

    private void place() {
        if (stated.inArea().isEmpty()) {
            notSaid(
                    "Enter \"producers in area\" under \"explosion\" of the receiver: whether they stand in an area that the owner has"
                            + " classified for dust.");
        } else if (stated.inArea().get() && stated.marked().isEmpty()) {
            notSaid(
                    "Enter \"producers marked\" under \"explosion\" of the receiver: whether producers and motors are marked for the area"
                            + " and the group of the dust.");
        } else if (stated.inArea().get() && !marked()) {
            judged(1);
        } else if (station.safetyFilter().isEmpty() && !marked()) {
            notSaid(
                    "No safety filter is stated: a broken element brings a cloud to producers that nobody says are marked for it. Fit a"
                            + " safety filter, or enter \"producers marked\".");
        } else {
            judged(0);
        }
    }

    private void judged(int count) {
        writing.none(
                FindingCode.PRODUCER_PLACE,
                Place.Kind.STATION,
                "reasons why producers must not stand there as they are",
                count,
                PLACE);
    }

    private void notSaid(String why) {
        writing.notSaid(FindingCode.PRODUCER_PLACE, Place.Kind.STATION, PLACE, why);
    }

    /** Asked where dust may lie on them: not of machines outside every classified area. */
    private void surface() {
        stated.surface()
                .ifPresent(surface -> writing.given(
                        "producer-surface", "Hottest surface of producers and motors, as stated", surface));
        if (!stated.inArea().orElse(true)) {
            return;
        }
        DustHeat heat = DustHeat.of(here);
        if (stated.surface().isEmpty()) {
            heat.limit()
                    .ifPresentOrElse(
                            limit -> open(
                                    limit,
                                    "Enter \"producers surface\" under \"explosion\" of the receiver: the hottest that producers and motors"
                                            + " get outside."),
                            () -> writing.notSaid(
                                    FindingCode.MOTOR_SURFACE, Place.Kind.STATION, DustHeat.SOURCE, heat.open()));
            return;
        }
        Temperature surface = stated.surface().get();
        if (heat.limit().isEmpty()) {
            writing.notSaid(FindingCode.MOTOR_SURFACE, Place.Kind.STATION, DustHeat.SOURCE, heat.open());
        } else if (surface.compareTo(heat.limit().get().value()) <= 0
                && !heat.open().isEmpty()) {
            open(heat.limit().get(), heat.open());
        } else {
            writing.asked(
                    FindingCode.MOTOR_SURFACE,
                    Place.Kind.STATION,
                    Sheet.ANY_SET,
                    Side.AT_MOST,
                    surface,
                    heat.limit().get(),
                    Writing.statedThen(
                            Writing.stated("T", "hottest surface outside", surface, Source.entered()), heat.steps()));
        }
    }

    private void open(Limit<Temperature> limit, String why) {
        writing.unjudged(FindingCode.MOTOR_SURFACE, Place.Kind.STATION, Side.AT_MOST, limit, why);
    }
}
