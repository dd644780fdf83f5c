package dustwright.engine;

import dustwright.engine.conveying.CarryingVelocity;
import dustwright.engine.conveying.Dust;
import dustwright.engine.conveying.VelocityLaw.Orientation;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.LegResult;
import dustwright.engine.network.State;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * The pieces of one state in which no published law may be asked about a dust for one way the tube lies.
 *
 * @param pieces where, in the order of the result
 * @param lies the ways of lying for which no law is inside its range
 * @param why the limits of the first piece that are broken
 */
record LawsNotAsked(Dust dust, List<String> pieces, TreeSet<Orientation> lies, List<String> why) {
    private static final int SHOWN = 3;

    /** One answer per dust that has such a piece. */
    static List<LawsNotAsked> of(Plant plant, DutyPoint duty) {
        List<LawsNotAsked> found = new ArrayList<>();
        for (Dust dust : plant.dusts()) {
            LawsNotAsked one = new LawsNotAsked(dust, new ArrayList<>(), new TreeSet<>(), new ArrayList<>());
            duty.legs().forEach(leg -> one.look(plant, leg));
            if (!one.pieces.isEmpty()) {
                found.add(one);
            }
        }
        return found;
    }

    private void look(Plant plant, LegResult leg) {
        for (CarryingVelocity laws : Carrying.of(plant, leg)) {
            List<CarryingVelocity.NotJudged> open = laws.dust().equals(dust.id()) ? laws.notJudged() : List.of();
            if (!open.isEmpty()) {
                if (pieces.isEmpty()) {
                    why.addAll(open.get(0).why());
                }
                pieces.add(TubeChecks.place(leg).toString());
                open.forEach(one -> lies.add(one.lies()));
            }
        }
    }

    Finding finding(State state, Limit<Ratio> factor) {
        return Finding.unjudged(
                FindingCode.CARRYING_VELOCITY,
                new Place(Place.Kind.DUST, dust.id()),
                state.name(),
                Side.AT_LEAST,
                factor.value(),
                factor.source(),
                words());
    }

    private String words() {
        return "No published law of "
                + String.join(" or ", lies.stream().map(LawsNotAsked::law).toList())
                + " may be asked about this dust in "
                + String.join(", ", pieces.subList(0, Math.min(SHOWN, pieces.size())))
                + (pieces.size() > SHOWN ? " and " + (pieces.size() - SHOWN) + " more" : "") + ": " + why.get(0)
                + ". Measure what carries it and enter its \"carrying velocity\".";
    }

    private static String law(Orientation lies) {
        return switch (lies) {
            case LEVEL -> "saltation";
            case RISING -> "choking";
        };
    }
}
