package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.air.Air;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.ReliefValve;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.receiver.Receiver;
import dustwright.engine.receiver.Shell;
import dustwright.engine.receiver.ShellBuckling;
import dustwright.engine.receiver.ShellBuckling.Law;
import dustwright.engine.receiver.ShellMaterial;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A receiver's cylinder under vacuum, screened by elastic buckling. Cone, head, doors and nozzles are not looked at, and the vessel's
 * design code replaces these figures.
 */
final class ShellLines {
    private static final Source ROARK = Source.published("Roark, Formulas for Stress and Strain, Table 35 case 19a");
    private static final Source ROARK_SHORT =
            Source.fromMemory("Roark, Formulas for Stress and Strain, Table 35 case 19b");
    private static final Source WINDENBERG = Source.fromMemory("Windenberg and Trilling, Trans. ASME 56, 1934");
    private static final Source SCREENING = Source.ownReading(
            "screening of the cylinder alone; the vessel's design code (ASME VIII-1, EN 13445-3) and a licensed engineer decide");

    private static final Source YIELDING = Source.published(
            "equilibrium of half a ring; Windenberg and Trilling, Trans. ASME 56, 1934: short vessels fail by yielding");

    private final Writing writing;
    private final Station station;
    private final Air air;
    private final AbsolutePressure ambient;

    private ShellLines(Writing writing, Station station, Air air) {
        this.writing = writing;
        this.station = station;
        this.air = air;
        this.ambient = air.ambient();
    }

    static void write(Writing writing, Station station, Air air) {
        new ShellLines(writing, station, air).write();
    }

    private void write() {
        Receiver receiver = station.receiver();
        if (receiver.diameter().isEmpty()
                || receiver.straightSide().isEmpty()
                || receiver.shell().isEmpty()) {
            String why = "Enter \"diameter\", \"straight side\" and \"shell: {thickness: ...}\" of the receiver.";
            writing.unknown("shell", "Vacuum the shell bears", why);
            notCompared(why);
            return;
        }
        Shell shell = receiver.shell().get();
        Length diameter = receiver.diameter().get();
        Length length = shell.unsupported(receiver.straightSide().get());
        Optional<Quantity> allowed = writing.tried(
                "shell",
                "Vacuum the shell bears",
                () -> allowedSteps(shell, diameter, receiver.straightSide().get()));
        writing.tried(
                "shell-second", "Collapse by a second law, no margin", () -> List.of(second(shell, diameter, length)));
        allowed.ifPresentOrElse(
                this::compare,
                () -> notCompared("This shell is outside the formulas here: have it designed to its code."));
    }

    private List<Step> allowedSteps(Shell shell, Length diameter, Length straight) {
        Length length = shell.unsupported(straight);
        ShellMaterial material = shell.material();
        ShellBuckling.Collapse collapse = ShellBuckling.collapse(
                material.modulus().pascals(),
                material.poisson(),
                diameter.metres(),
                shell.thickness().metres(),
                length.metres());
        boolean longTube = collapse.law() == Law.LONG_TUBE;
        Term pressure = new Term("p", "collapse pressure", new PressureDifference(collapse.pressure_Pa()));
        PressureDifference yielding = new PressureDifference(ShellBuckling.yielding_Pa(
                material.yieldStress().pascals(),
                diameter.metres(),
                shell.thickness().metres()));
        Term yields = new Term("p_y", "pressure at which the wall yields", yielding);
        double allowed_Pa = ShellBuckling.allowedVacuum_Pa(
                Math.min(collapse.pressure_Pa(), yielding.pascals()),
                shell.factor().value());
        Term screened = new Term("v", "failure over its margin", new PressureDifference(allowed_Pa));
        return List.of(
                step(
                        "RCV-23",
                        "L = straight side / (rings + 1)",
                        Source.published("geometry"),
                        new Term("L", "length between stiff ends or rings", length),
                        new Term("H", "straight side", straight),
                        new Term("n", "stiffening rings", new Ratio(shell.rings()))),
                step(
                        longTube ? "RCV-10" : "RCV-11",
                        longTube
                                ? "p = 2 E/(1 − ν²) (t/D)³"
                                : "p = 2.42 E (t/D)^2.5 / [(1 − ν²)^0.75 (L/D − 0.45 √(t/D))]",
                        longTube ? ROARK : WINDENBERG,
                        pressure,
                        new Term("E", "modulus of " + material.words() + " (from memory)", material.modulus()),
                        new Term("ν", "Poisson's ratio", new Ratio(material.poisson())),
                        new Term("t", "wall", shell.thickness()),
                        new Term("D", "diameter of the shell", diameter),
                        new Term("L", "length between stiff ends or rings", length)),
                step(
                        "RCV-24",
                        "p_y = 2 σ_y t/D: above it the law of buckling says nothing",
                        YIELDING,
                        yields,
                        new Term("σ_y", "yield of " + material.words() + " (from memory)", material.yieldStress()),
                        new Term("t", "wall", shell.thickness()),
                        new Term("D", "diameter of the shell", diameter)),
                step(
                        "RCV-14",
                        "v = min(p, p_y) / factor",
                        SCREENING,
                        screened,
                        pressure,
                        yields,
                        new Term("factor", "margin against collapse", shell.factor())),
                step(
                        "RCV-25",
                        "vacuum = min(v, p_a): no vacuum is deeper than the barometer",
                        SCREENING,
                        new Term(
                                "vacuum",
                                "vacuum the shell may see, at most full vacuum",
                                new PressureDifference(Math.min(allowed_Pa, ambient.pascals()))),
                        screened,
                        new Term("p_a", "site barometer", ambient)));
    }

    private static Step second(Shell shell, Length diameter, Length length) {
        ShellMaterial material = shell.material();
        double pressure_Pa = ShellBuckling.roarkShort_Pa(
                material.modulus().pascals(),
                material.poisson(),
                diameter.metres(),
                shell.thickness().metres(),
                length.metres());
        return step(
                "RCV-12",
                "p = 0.807 E t²/(L R) [(1/(1 − ν²))³ t²/R²]^¼",
                ROARK_SHORT,
                new Term("p", "collapse pressure of a short tube", new PressureDifference(pressure_Pa)),
                new Term("E", "modulus of " + material.words() + " (from memory)", material.modulus()),
                new Term("t", "wall", shell.thickness()),
                new Term("R", "radius of the shell", new Length(diameter.metres() / 2)),
                new Term("L", "length between stiff ends or rings", length));
    }

    /** What is not stated or a formula refuses is not judged, and not passed. */
    private void notCompared(String why) {
        deepestAsked(station, air)
                .ifPresent(limit ->
                        writing.unjudged(FindingCode.SHELL_VACUUM, Place.Kind.RECEIVER, Side.AT_LEAST, limit, why));
    }

    /**
     * What it has to bear with the tubing blocked: where the relief valve balances the producers, and no less than where it is said to
     * pass its rated flow; without one all the producers can draw.
     */
    static Optional<Limit<PressureDifference>> deepestAsked(Station station, Air air) {
        Limit<PressureDifference> blocked =
                new Limit<>(BlockedVacuum.relieved(station, air).vacuum(), BlockedVacuum.READING);
        return station.relief()
                .map(ShellLines::full)
                .filter(full -> full.compareTo(blocked.value()) >= 0)
                .map(full -> new Limit<>(full, Source.entered()))
                .or(() -> Optional.of(blocked).filter(limit -> limit.value().pascals() > 0));
    }

    private Optional<VacuumProducer> deepest() {
        return station.producers().stream()
                .max(Comparator.comparing((VacuumProducer producer) -> producer.vacuumLimit(ambient)));
    }

    private List<Step> steps(Quantity allowed) {
        List<Step> steps = new ArrayList<>(writing.stepsTo(allowed));
        steps.addAll(BlockedVacuum.relieved(station, air).steps());
        return steps;
    }

    /** What may come: the relief valve wide open, and the producers at their deepest with the relief valve stuck. */
    private void compare(Quantity allowed) {
        station.relief()
                .map(ShellLines::full)
                .ifPresentOrElse(
                        full -> writing.given("relief-full", "Vacuum with the relief valve wide open", full),
                        () -> writing.unknown(
                                "relief-full", "Vacuum with the relief valve wide open", "There is no relief valve."));
        deepest().ifPresent(producer -> {
            PressureDifference vacuum = producer.vacuumLimit(ambient);
            writing.known(
                    "deepest",
                    "Deepest vacuum of the producers at this site",
                    vacuum,
                    ProducerSteps.bindingVacuumLimit(producer, air));
        });
        if (!station.producers().isEmpty()) {
            stuck(allowed, BlockedVacuum.stuck(station, air));
        }
        deepestAsked(station, air)
                .ifPresent(limit -> BlockedVacuum.judge(
                        writing,
                        BlockedVacuum.relieved(station, air)
                                .notMeasured()
                                .filter(why -> allowed.si() < ambient.pascals()),
                        FindingCode.SHELL_VACUUM,
                        Place.Kind.RECEIVER,
                        new BlockedVacuum.Judged(Side.AT_LEAST, allowed, limit, steps(allowed))));
        if (allowed.si() == ambient.pascals()) {
            writing.words(
                    "full-vacuum",
                    "Full vacuum of this site",
                    "the shell would bear it by this screening, whatever the producers do.",
                    List.of(),
                    SCREENING);
        }
    }

    /** A shell that bears a vacuum nobody measured is not known to bear it; one that bears full vacuum does. */
    private void stuck(Quantity allowed, BlockedVacuum blocked) {
        boolean bears = allowed.si() >= blocked.vacuum().pascals();
        Optional<String> notMeasured = blocked.notMeasured().filter(why -> bears && allowed.si() < ambient.pascals());
        if (notMeasured.isPresent()) {
            writing.unknown("stuck", "Relief valve stuck shut", notMeasured.get());
            return;
        }
        String text = bears
                ? "the shell would bear it by this screening"
                : "the shell would not bear it by this screening: it relies on the relief valve";
        writing.words("stuck", "Relief valve stuck shut", text + ".", List.of(), SCREENING);
    }

    private static PressureDifference full(ReliefValve relief) {
        return new PressureDifference(
                relief.set().pascals() + relief.accumulation().pascals());
    }
}
