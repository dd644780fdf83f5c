package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.bagging.BulkBag;
import dustwright.engine.bagging.Container;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Term;
import dustwright.engine.hazard.Protection;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Volume;
import dustwright.engine.receiver.Hopper;
import dustwright.engine.receiver.Receiver;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The vessel an explosion fills (equation HAZ-19): cylinder, cone, and what hangs below where nothing isolates it. What is stated stands for
 * it, but a vent is said to be enough only for the larger of what is stated and what is drawn.
 */
final class FlameVessel {
    private static final Source OWN_SHAPE = Source.ownReading(
            "geometry; the whole vessel counts, with what nothing isolates below it, and its whole height over its diameter");

    private final Receiver receiver;
    private final Protection stated;
    private final Optional<Container> below;
    private final Writing writing;

    FlameVessel(Station station, Writing writing) {
        this.receiver = station.receiver();
        this.stated = receiver.protection();
        this.below = new BelowReceiver(station).joined();
        this.writing = writing;
    }

    /** As stated, else as drawn. */
    Optional<Volume> volume() {
        return stated.volume().or(this::drawnVolume);
    }

    /** As stated, else as drawn. */
    Optional<Ratio> slenderness() {
        return stated.slenderness().or(this::drawnSlenderness);
    }

    /** The larger of what is stated and drawn. */
    Volume largest() {
        Volume stated = volume().orElseThrow();
        return drawnVolume().isPresent()
                ? larger(stated, drawnVolume())
                : new Volume(Math.max(stated.cubicMetres(), cylinder_m3()) + below_m3());
    }

    /** The larger of what is stated and drawn. */
    Ratio mostSlender() {
        Ratio stated = slenderness().orElseThrow();
        Ratio most = larger(stated, drawnSlenderness());
        double below_m3 = below_m3();
        if (drawnSlenderness().isPresent() || below_m3 == 0) {
            return most;
        }
        double volume_m3 = volume().orElseThrow().cubicMetres();
        return new Ratio(most.value() * (1 + below_m3 / volume_m3));
    }

    /** What is drawn of a vessel that is not drawn whole, at least. */
    private double cylinder_m3() {
        return receiver.diameter()
                .flatMap(d -> receiver.straightSide().map(h -> Math.PI / 4 * d.metres() * d.metres() * h.metres()))
                .orElse(0.0);
    }

    private double below_m3() {
        return below.map(c -> c.volume().cubicMetres()).orElse(0.0);
    }

    private static <T extends Quantity> T larger(T one, Optional<T> other) {
        return other.filter(o -> o.si() > one.si()).orElse(one);
    }

    /** What is stated below what is drawn, in words; empty where nothing is. */
    List<String> statedSmaller() {
        List<String> smaller = new ArrayList<>();
        stated.volume().filter(v -> largest().si() > v.si()).ifPresent(v -> smaller.add("\"volume\""));
        stated.slenderness()
                .filter(r -> mostSlender().si() > r.si())
                .ifPresent(r -> smaller.add("\"length to diameter\""));
        return smaller;
    }

    private Optional<Volume> drawnVolume() {
        return receiver.diameter()
                .flatMap(d -> receiver.straightSide()
                        .flatMap(side -> receiver.hopper()
                                .map(h -> h.volumeUpTo(new Length(h.heightTo(d).metres() + side.metres()), d))))
                .map(v -> new Volume(v.cubicMetres() + below_m3()));
    }

    private Optional<Ratio> drawnSlenderness() {
        return receiver.diameter()
                .flatMap(d -> receiver.straightSide()
                        .map(side -> new Ratio(Math.max(
                                1,
                                (side.metres()
                                                + coneHeight().metres()
                                                + belowHeight().metres())
                                        / d.metres()))));
    }

    private Length coneHeight() {
        return receiver.hopper()
                .map(h -> h.heightTo(receiver.diameter().orElseThrow()))
                .orElse(new Length(0));
    }

    /** Of a bag as stated, else of a column of its volume as wide as the receiver. */
    private Length belowHeight() {
        return below.map(c -> c.bag()
                        .flatMap(BulkBag::size)
                        .map(BulkBag.Size::height)
                        .orElseGet(() -> {
                            double d_m = receiver.diameter().orElseThrow().metres();
                            return new Length(c.volume().cubicMetres() / (Math.PI / 4 * d_m * d_m));
                        }))
                .orElse(new Length(0));
    }

    void write() {
        if (stated.volume().isPresent()) {
            writing.given(
                    "flame-volume", "Volume the flame may fill", stated.volume().get());
        }
        if (stated.slenderness().isPresent()) {
            writing.given(
                    "flame-slenderness",
                    "Length over diameter",
                    stated.slenderness().get());
        }
        drawnVolume().ifPresent(this::drawn);
        drawnSlenderness().ifPresent(this::drawn);
    }

    private void drawn(Volume volume) {
        boolean other = stated.volume().isPresent();
        writing.known(
                other ? "flame-volume-drawn" : "flame-volume",
                "Volume the flame may fill, filters not taken off" + (other ? ", by the drawing" : "")
                        + with(", with the container below, which nothing isolates"),
                volume,
                List.of(step(
                        "HAZ-19",
                        "V = π/4 D² H + π/12 h (D² + D d + d²) + V_c",
                        OWN_SHAPE,
                        new Term("V", "vessel", volume),
                        diameter(),
                        straight(),
                        cone(),
                        new Term(
                                "d",
                                "outlet of the cone",
                                receiver.hopper().map(Hopper::outlet).orElseThrow()),
                        new Term(
                                "V_c",
                                below.isPresent() ? "container below" : "nothing below counts",
                                below.map(Container::volume).orElse(new Volume(0))))));
    }

    private void drawn(Ratio slenderness) {
        boolean other = stated.slenderness().isPresent();
        writing.known(
                other ? "flame-slenderness-drawn" : "flame-slenderness",
                "Length over diameter, the prudent reading" + (other ? ", by the drawing" : "")
                        + with(", with the container below"),
                slenderness,
                List.of(step(
                        "HAZ-19",
                        "L/D = max(1, (H + h + H_c)/D)",
                        OWN_SHAPE,
                        new Term("L/D", "whole height over diameter", slenderness),
                        diameter(),
                        straight(),
                        cone(),
                        new Term(
                                "H_c",
                                below.isPresent()
                                        ? "container below: its height as stated, else its volume over the receiver's section"
                                        : "nothing below counts",
                                belowHeight()))));
    }

    private String with(String words) {
        return below.isPresent() ? words : "";
    }

    private Term diameter() {
        return new Term("D", "diameter", receiver.diameter().orElseThrow());
    }

    private Term straight() {
        return new Term("H", "straight side", receiver.straightSide().orElseThrow());
    }

    private Term cone() {
        return new Term(
                "h",
                receiver.hopper().isPresent() ? "height of the cone, from its wall angle" : "no cone",
                coneHeight());
    }
}
