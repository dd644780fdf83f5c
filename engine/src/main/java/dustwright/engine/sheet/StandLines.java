package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.bagging.BagAir;
import dustwright.engine.bagging.BagSupport;
import dustwright.engine.bagging.BulkBag;
import dustwright.engine.bagging.Container;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Limit;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.GaugePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Mass;
import dustwright.engine.quantity.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What holds a bulk bag: seal, arms and base, height, floor. */
final class StandLines {
    /** Clear floor for a truck before the stand, each way: common practice, no source [m]. */
    private static final double USUAL_BAY_m = 3;

    private static final Source PRACTICE = Source.commonPractice();
    private static final Source HALF_OF_USUAL = Source.ownReading(
            "half of the 4 psi (28 kPa) that is usual for a neck seal (common practice): our choice, no source; ask the maker of the seal");
    private static final Limit<GaugePressure> MOST_SEAL =
            new Limit<>(new GaugePressure(BagAir.GREATEST_SEAL_Pa), PRACTICE);
    private static final Source GEOMETRY = Source.published("geometry");

    private final Container container;
    private final BulkBag bag;
    private final Writing writing;

    StandLines(Container container, BulkBag bag, Writing writing) {
        this.container = container;
        this.bag = bag;
        this.writing = writing;
    }

    void write(Optional<Density> densest) {
        seal();
        arms(densest);
        strength();
        height();
        floor();
    }

    private void seal() {
        if (bag.stand().seal().isEmpty()) {
            String why =
                    "Enter \"neck seal: {pressure}\" of the stand; about 4 psi (28 kPa) is usual, never above 9 psi (62 kPa).";
            writing.unknown("seal", "Pressure of the neck seal", why);
            writing.unjudged(FindingCode.NECK_SEAL, Place.Kind.CONTAINER, Side.AT_MOST, MOST_SEAL, why);
            return;
        }
        GaugePressure pressure = bag.stand().seal().get().pressure();
        writing.given("seal", "Pressure of the neck seal", pressure);
        writing.asked(FindingCode.NECK_SEAL, Place.Kind.CONTAINER, Sheet.ANY_SET, Side.AT_MOST, pressure, MOST_SEAL);
        writing.asked(
                FindingCode.NECK_SEAL_LOOSE,
                Place.Kind.CONTAINER,
                Sheet.ANY_SET,
                Side.AT_LEAST,
                pressure,
                new Limit<>(new GaugePressure(BagAir.LEAST_SEAL_Pa), HALF_OF_USUAL));
    }

    // ---- what carries it

    private void arms(Optional<Density> densest) {
        BagSupport.Base base = bag.stand().base();
        writing.words(
                "base",
                "While it fills the bag",
                base == BagSupport.Base.ON_FLOOR_OR_PALLET
                        ? "stands on floor or pallet"
                        : "hangs from the arms, which are no lifting gear",
                List.of(),
                PRACTICE);
        Mass empty = bag.empty().orElse(new Mass(0));
        if (base == BagSupport.Base.HANGING_FROM_THE_ARMS) {
            double dust_kg = densest.map(d -> BaggingSheet.taken_kg(container, d.kgPerCubicMetre()))
                    .orElseGet(() ->
                            container.safeWorkingLoad().map(Mass::kilograms).orElse(0.0));
            Mass carried = new Mass(dust_kg + empty.kilograms());
            armsLoad(carried, new Limit<>(empty, PRACTICE), "the full bag, dust and all");
            return;
        }
        if (bag.empty().isEmpty() || bag.stand().arms().isEmpty()) {
            String why = "The empty bag only. Enter \"empty\" of the bag and \"arms\" of the stand to compare them.";
            writing.unknown("arms", "What the arms carry", why);
            writing.notSaid(FindingCode.ARMS_LOAD, Place.Kind.CONTAINER, PRACTICE, why);
            return;
        }
        armsLoad(empty, new Limit<>(bag.stand().arms().get(), Source.entered()), "the empty bag with its liner");
    }

    private void armsLoad(Mass carried, Limit<Mass> limit, String what) {
        List<Step> steps = List.of(step(
                "BAG-17",
                "arms hold the corners open; the base carries the dust",
                PRACTICE,
                new Term("m", "what the arms carry: " + what, carried)));
        writing.known("arms", "What the arms carry", carried, steps);
        writing.asked(FindingCode.ARMS_LOAD, Place.Kind.CONTAINER, Sheet.ANY_SET, Side.AT_MOST, carried, limit, steps);
    }

    private void strength() {
        if (bag.use().isEmpty() || container.safeWorkingLoad().isEmpty()) {
            return;
        }
        BagSupport.Use use = bag.use().get();
        Mass load = container.safeWorkingLoad().get();
        writing.tried(
                "breaking-load",
                "Load a " + use.words() + " bag must bear",
                () -> List.of(step(
                        "BAG-18",
                        "m_break = factor SWL",
                        Source.published("ISO 21898 and trade association classes, as told in several public articles"),
                        new Term(
                                "m_break",
                                "load before it breaks",
                                new Mass(BagSupport.breakingLoad_kg(use, load.kilograms()))),
                        new Term("factor", use.words(), new Ratio(use.safetyFactor())),
                        new Term("SWL", "safe working load", load))));
    }

    // ---- height and floor

    private void height() {
        if (bag.size().isEmpty()) {
            String why = "Enter \"size\" of the bag.";
            writing.unknown("height", "Height of the bag on its base", why);
            writing.notSaid(FindingCode.HEADROOM, Place.Kind.CONTAINER, GEOMETRY, why);
            return;
        }
        Length pallet = bag.stand().pallet().orElse(new Length(0));
        Length height = bag.size().get().height();
        Length top = new Length(pallet.metres() + height.metres());
        Term palletTerm = new Term("h_p", "pallet", pallet);
        Term bagTerm = new Term("h_b", "height of the bag", height);
        List<Step> steps = List.of(
                step("BAG-21", "h = h_p + h_b", GEOMETRY, new Term("h", "top of the bag", top), palletTerm, bagTerm));
        writing.known("height", "Height of the bag on its base", top, steps);
        bag.loops().ifPresent(loops -> {
            Length hook = new Length(top.metres() + loops.metres());
            writing.known(
                    "hook-height",
                    "Height of the loops drawn up",
                    hook,
                    List.of(step(
                            "BAG-21",
                            "h = h_p + h_b + l",
                            GEOMETRY,
                            new Term("h", "top of the loops", hook),
                            palletTerm,
                            bagTerm,
                            new Term("l", "loops", loops))));
        });
        bag.stand()
                .headroom()
                .ifPresentOrElse(
                        room -> headroom(room, top, steps),
                        () -> writing.unjudged(
                                FindingCode.HEADROOM,
                                Place.Kind.CONTAINER,
                                Side.AT_LEAST,
                                new Limit<>(top, GEOMETRY),
                                "Enter \"headroom\" of the stand: from its base to the filling head."));
    }

    private void headroom(Length room, Length top, List<Step> steps) {
        writing.asked(
                FindingCode.HEADROOM,
                Place.Kind.CONTAINER,
                Sheet.ANY_SET,
                Side.AT_LEAST,
                room,
                new Limit<>(top, GEOMETRY),
                Writing.statedThen(Writing.stated("h_room", "headroom of the stand", room, Source.entered()), steps));
        double above_m = room.metres() - top.metres();
        if (bag.spout().isEmpty() && above_m > 0) {
            writing.unjudged(
                    FindingCode.SPOUT_REACH,
                    Place.Kind.CONTAINER,
                    Side.AT_LEAST,
                    new Limit<>(new Length(above_m), GEOMETRY),
                    "Enter \"spout\" of the bag, its length.");
        }
        bag.spout().ifPresent(spout -> {
            if (above_m >= 0) {
                writing.words(
                        "spout",
                        "The spout",
                        above_m <= spout.metres()
                                ? "reaches the filling head"
                                : "does not reach the filling head: lower the head or raise the pallet",
                        steps,
                        GEOMETRY);
            }
            if (above_m > 0) {
                reaches(spout, room, new Length(above_m), steps);
            }
        });
    }

    private void reaches(Length spout, Length room, Length gap, List<Step> top) {
        List<Step> steps = new ArrayList<>(
                Writing.statedThen(Writing.stated("l", "spout of the bag", spout, Source.entered()), top));
        steps.add(step(
                "BAG-23",
                "h_gap = h_room − h",
                GEOMETRY,
                new Term("h_gap", "from the top of the bag to the filling head", gap),
                new Term("h_room", "headroom of the stand", room),
                top.get(0).result()));
        writing.asked(
                FindingCode.SPOUT_REACH,
                Place.Kind.CONTAINER,
                Sheet.ANY_SET,
                Side.AT_LEAST,
                spout,
                new Limit<>(gap, GEOMETRY),
                steps);
    }

    private void floor() {
        bag.size().ifPresent(size -> {
            Area foot = new Area(size.width().metres() * size.depth().metres());
            writing.known(
                    "footprint",
                    "Footprint of the bag",
                    foot,
                    List.of(step(
                            "BAG-1",
                            "A = W D",
                            GEOMETRY,
                            new Term("A", "footprint of the flat bag", foot),
                            new Term("W", "width", size.width()),
                            new Term("D", "depth", size.depth()))));
        });
        bag.stand()
                .bay()
                .ifPresentOrElse(
                        bay -> writing.words(
                                "bay",
                                "Floor for the truck",
                                Math.min(bay.width().metres(), bay.depth().metres()) >= USUAL_BAY_m
                                        ? "as much as usual, 3 m each way or more"
                                        : "less than the usual 3 m each way: try the truck's turn before you build",
                                List.of(),
                                PRACTICE),
                        () -> writing.unknown(
                                "bay", "Floor for the truck", "Enter \"bay\" of the stand; 3 m each way is usual."));
    }
}
