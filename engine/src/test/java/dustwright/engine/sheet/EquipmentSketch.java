package dustwright.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.bagging.BagSupport;
import dustwright.engine.bagging.BulkBag;
import dustwright.engine.bagging.Container;
import dustwright.engine.conveying.Dust;
import dustwright.engine.conveying.DustClass;
import dustwright.engine.conveying.LevelFriction;
import dustwright.engine.conveying.Particle;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Outcome;
import dustwright.engine.finding.Source;
import dustwright.engine.hazard.BagType;
import dustwright.engine.hazard.DustCard;
import dustwright.engine.hazard.Listing;
import dustwright.engine.hazard.Protection;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.PlantSketch;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.ReceiverLimits;
import dustwright.engine.plant.Requirements;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.Angle;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.CakeResistance;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.ExplosionConstant;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.GaugePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.receiver.ClothDust;
import dustwright.engine.receiver.Filter;
import dustwright.engine.receiver.FilterService;
import dustwright.engine.receiver.Hopper;
import dustwright.engine.receiver.HopperDust;
import dustwright.engine.receiver.LevelProbe;
import dustwright.engine.receiver.Receiver;
import dustwright.engine.receiver.ReceiverInlet;
import dustwright.engine.receiver.Shell;
import dustwright.engine.receiver.ShellMaterial;
import dustwright.engine.receiver.SidePlace;
import dustwright.engine.rotaryvalve.RotaryValve;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** An invented station with two users whose equipment tests ask about; each test changes what it is about. */
final class EquipmentSketch {
    static final double INCH_OF_MERCURY_Pa = 3386.389;

    double feed_kgPerS = 40.0 / 3600;
    double cake_perS = 1e5;
    double cloth_m2 = 8.8;
    double preSeparation = 0.9;
    double toolFlow_m3PerS = 0.035;
    double thickness_m = 0.003;
    int rings;
    Optional<Temperature> atCloth = Optional.empty();
    Optional<Boolean> foodContact = Optional.empty();
    Optional<PressureDifference> bears = Optional.empty();
    double relief_m3PerS = 0.2;
    double halfAngle_deg = 20;
    /** Of the tangential inlet. */
    double slotHeight_m = 0.15;

    SidePlace inlet = SidePlace.LEFT;
    SidePlace probe = SidePlace.REAR;
    double probe_m = 0.9;
    Optional<Double> elementsDownTo_m = Optional.of(1.6);
    boolean known = true;
    boolean drawn = true;
    Optional<Boolean> combustible = Optional.empty();
    DustCard card = DustCard.UNKNOWN;
    Protection protection = Protection.UNKNOWN;
    Optional<RotaryValve> valve = Optional.empty();
    Optional<Container> container = Optional.empty();
    /** Class of the safety filter; no safety filter where absent. */
    Optional<String> after = Optional.empty();

    UnaryOperator<HopperDust> flow = dust -> dust;

    private static final Particle PARTICLE = new Particle(new Length(60e-6), new Density(1450));

    private static final Listing TESTED = new Listing(
            Optional.of(new ExplosionConstant(800e5)),
            Optional.of(new GaugePressure(12e5)),
            Optional.of(new GaugePressure(20_000)),
            Optional.of(new Length(3)),
            Optional.of(new Length(7)),
            Optional.of(new Length(5)),
            Optional.of(Listing.Flame.FROM_RECEIVER),
            Optional.of(true));
    /** Devices that were tested for every dust of these tests and stand where their makers allow. */
    static final Listing.Devices LISTED = new Listing.Devices(TESTED, TESTED, TESTED, TESTED);

    Plant plant() {
        Dust dust = new Dust(
                "flour",
                "Flour",
                Optional.of(DustClass.DRY_POWDER),
                DustClass.DRY_POWDER.minimum(),
                DustClass.SOURCE,
                known ? Optional.of(new Density(550)) : Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                known ? Optional.of(PARTICLE) : Optional.empty(),
                LevelFriction.usual(PARTICLE),
                Optional.empty(),
                combustible,
                known
                        ? new ClothDust(
                                Optional.of("flour"),
                                Optional.of("Flour"),
                                Optional.of(new CakeResistance(cake_perS)),
                                Optional.of(false))
                        : ClothDust.UNKNOWN,
                flow.apply(HopperDust.UNKNOWN),
                card);
        PlantSketch sketch = new PlantSketch()
                .tube("T2", 0.0475, 4.5e-5)
                .tube("T3", 0.0729, 4.5e-5)
                .dust(dust)
                .asking(asked())
                .points("J")
                .inlet("A", "flour", feed_kgPerS)
                .inlet("B", "flour", feed_kgPerS)
                .run("RA", "A", "J", "T2", 20, 1)
                .run("RB", "B", "J", "T2", 12, 1)
                .run("M", "J", "REC", "T3", 15, 1);
        PlantSketch.StationSketch station = sketch.station("REC")
                .cloth(cloth_m2, 40_000)
                .receiver(receiver())
                .relief(8.5, 11, relief_m3PerS)
                .lobe("P", 0.2);
        valve.ifPresent(station::rotaryValve);
        container.ifPresent(station::container);
        after.ifPresent(name -> station.safetyFilter(500, 0.1).filterClass(name));
        Plant plant = station.and().plant();
        Station built = plant.station("REC");
        Filter filter = built.filter();
        return plant.withStation(built.withFilter(new Filter(
                filter.cloth(),
                filter.clean(),
                filter.normal(),
                filter.dirty(),
                new FilterService(
                        atCloth,
                        Optional.empty(),
                        Optional.empty(),
                        false,
                        Optional.empty(),
                        Optional.empty(),
                        foodContact,
                        bears))));
    }

    /** A bulk bag of which no more than its electrostatic type is known. */
    static BulkBag bag(BagType type) {
        return new BulkBag(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(type),
                Optional.empty(),
                Optional.of(BagType.Vapour.NONE),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                new BulkBag.Stand(
                        BagSupport.Base.ON_FLOOR_OR_PALLET,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
    }

    private Requirements asked() {
        return new Requirements(
                Optional.of(new Limit<>(new FreeAirFlow(toolFlow_m3PerS), Source.entered())),
                Optional.of(new Limit<>(new PressureDifference(2 * INCH_OF_MERCURY_Pa), Source.entered())),
                new Limit<>(new Ratio(1), Source.entered()),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                new ReceiverLimits(
                        Optional.of(new Limit<>(new Duration(1800), Source.entered())),
                        Optional.of(new Limit<>(new Duration(1800), Source.entered())),
                        Optional.of(new Limit<>(new Ratio(1.5), Source.commonPractice()))));
    }

    private Receiver receiver() {
        if (!known) {
            return new Receiver(Optional.empty(), Optional.empty());
        }
        return new Receiver(
                Optional.of(new Length(1.2)),
                elementsDownTo_m.map(Length::new),
                Optional.of(new Area(0.8)),
                Optional.of(new Length(1.8)).filter(side -> drawn),
                Optional.of(new Shell(new Length(thickness_m), ShellMaterial.CARBON_STEEL, rings, new Ratio(3))),
                Optional.of(new Hopper(Angle.ofDegrees(halfAngle_deg), new Length(0.25))),
                Optional.of(new ReceiverInlet(
                        Optional.of(inlet),
                        Optional.of(new Length(1.4)),
                        Optional.of(new ReceiverInlet.Slot(new Length(0.065), new Length(slotHeight_m))))),
                Optional.of(new LevelProbe(Optional.of(probe), Optional.of(new Length(probe_m)))),
                new Ratio(preSeparation),
                protection);
    }

    DutyPoint duty(Plant plant) {
        return solved(DutyPointSolver.solve(plant, PlantSketch.feeding(plant, "A", "B")));
    }

    static DutyPoint solved(Outcome<DutyPoint> outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Solved.class);
        return ((Outcome.Solved<DutyPoint>) outcome).value();
    }

    List<Sheet> sheets() {
        Plant plant = plant();
        return sheets(plant, List.of(duty(plant)));
    }

    /** Sheets of solved states; of the plant's own sets and its weeks nothing is known. */
    static List<Sheet> sheets(Plant plant, List<DutyPoint> duties) {
        return Sheets.of(
                plant,
                Sheets.Solved.of(duties),
                DustWays.of(plant, open -> new Outcome.NotSolved<>("not asked")),
                List.of());
    }

    static Answer answer(List<Sheet> sheets, String id) {
        return sheets.stream()
                .flatMap(sheet -> sheet.entries().stream())
                .filter(entry -> entry.id().equals(id + "/REC"))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no entry " + id))
                .answer();
    }

    static Quantity value(List<Sheet> sheets, String id) {
        Answer answer = answer(sheets, id);
        assertThat(answer).as(id).isInstanceOf(Answer.Known.class);
        return ((Answer.Known) answer).value();
    }

    double interval_s() {
        return value(sheets(), "interval-A+B").si();
    }

    static Optional<Finding> finding(List<Sheet> sheets, FindingCode code) {
        return sheets.stream()
                .flatMap(sheet -> sheet.findings().stream())
                .filter(finding -> finding.code() == code)
                .findFirst();
    }
}
