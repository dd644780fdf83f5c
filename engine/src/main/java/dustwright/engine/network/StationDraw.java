package dustwright.engine.network;

import dustwright.engine.network.Network.StationParts;
import java.util.List;

/**
 * The air a station draws from its tubing at a pressure in the receiver, exactly: the suction pressure is found at which the line
 * through the filters carries what producers take and valves do not bring. Drives that hold a vacuum keep the suction there as long as
 * their speed can; that needs a filter that loses something, else the receiver itself would be held. Used to tabulate {@link MachineEnd}.
 */
final class StationDraw {
    private static final int STEP_LIMIT = 200;
    /** Nothing is asked closer to no vacuum than this: slopes of openings have no end there. */
    private static final double LEAST_PLACE = 1e-5;

    private final Network network;
    private final StationParts station;
    private final StationEnd end;
    private final LegLaws laws;
    private final boolean vented;
    private final double linear;
    private final double quadratic;

    private double flow_kgPerS;
    private double slope;
    private double suction_Pa;
    private double offered_kgPerS;
    /** Whether drives hold the suction where it is, so that only the filters give. */
    private boolean floating;

    // the last opening and suction balance asked
    private double opening_kgPerS;
    private double openingSlope;
    private double spare_kgPerS;
    private double spareSlope;

    StationDraw(Network network, StationParts station, StationEnd end, State state) {
        this.network = network;
        this.station = station;
        this.end = end;
        laws = new LegLaws(network, 1);
        vented = station.ventLeg() != Network.NONE && state.ventedStations().contains(station.id());
        linear = station.filter().squaredPressurePerFlow(state.filter(), network.filterRt_JPerKg(station));
        quadratic = station.safetyFilterLeg() == Network.NONE ? 0 : network.quadratic[station.safetyFilterLeg()];
    }

    /** Whether drives hold the pressure of the receiver itself, which is then no curve of flow over pressure. */
    boolean holdsReceiver() {
        return end.heldVacuums() > 0 && linear == 0 && quadratic == 0;
    }

    /** u in the receiver at which the station draws nothing any more. */
    double greatestPlace() {
        double low = LEAST_PLACE;
        double high = 1 - LEAST_PLACE;
        for (int n = 0; n < 60; n++) {
            double middle = (low + high) / 2;
            moveTo(middle);
            if (flow_kgPerS > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** Flow drawn from the tubing [kg/s], below zero where the valves bring more than the producers take. */
    double flow_kgPerS() {
        return flow_kgPerS;
    }

    /** d flow/du. */
    double slope() {
        return slope;
    }

    /** Goes to {@code u = √(1 − P/Pa²)} in the receiver. */
    void moveTo(double place) {
        double u = Math.max(place, LEAST_PLACE);
        double receiver = network.ambientSquared * (1 - u * u);
        double suction = suction(receiver);
        double through = line_kgPerS(receiver - suction);
        suction_Pa = Math.sqrt(suction);
        offered_kgPerS = through + spare_kgPerS;
        double lineSlope = lineSlope(through);
        double throughSlope = Double.isInfinite(lineSlope)
                ? -spareSlope
                : floating ? lineSlope : lineSlope * spareSlope / (spareSlope - lineSlope);
        if (Double.isInfinite(lineSlope)) {
            through = -spare_kgPerS;
        }
        flow_kgPerS = through - network.supply_kgPerS[station.receiver()];
        double slopeBySquare = throughSlope;
        if (station.rotaryLeg() != Network.NONE) {
            open(station.rotaryLeg(), receiver);
            flow_kgPerS -= opening_kgPerS;
            slopeBySquare -= openingSlope;
        }
        slope = -2 * network.ambientSquared * u * slopeBySquare;
    }

    /** What every producer does where the draw stands, in the order of the plant file. */
    List<Working> producers() {
        return end.duties(station.producers(), suction_Pa, offered_kgPerS).stream()
                .map(duty -> new Working(
                        duty.power_W(suction_Pa),
                        duty.torque_Nm(suction_Pa),
                        duty.rise_K(suction_Pa),
                        duty.aboveFirstPoint(suction_Pa),
                        duty.belowLastPoint(suction_Pa)))
                .toList();
    }

    /** P of the suction node; leaves the slope of what the producers and valves bring there. */
    private double suction(double receiver) {
        if (linear == 0 && quadratic == 0) {
            bring(receiver);
            return receiver;
        }
        for (int held = 0; held < end.heldVacuums(); held++) {
            end.hold(held);
            double p = end.heldSquared();
            bringOnRung(Math.sqrt(p), p);
            if (end.floatsOn(Math.sqrt(p), line_kgPerS(receiver - p) + spare_kgPerS)) {
                floating = true;
                return p;
            }
        }
        floating = false;
        bring(receiver);
        double low = 0;
        double high = spare_kgPerS > 0 ? network.ambientSquared * 4 : receiver;
        double p = high == receiver ? receiver * 0.98 : receiver * 1.001;
        for (int n = 0; n < STEP_LIMIT; n++) {
            bring(p);
            double w = line_kgPerS(receiver - p);
            double sum = w + spare_kgPerS;
            if (sum > 0) {
                low = p;
            } else {
                high = p;
            }
            double next = p + sum / (lineSlope(w) - spareSlope);
            next = next > low && next < high ? next : (low + high) / 2;
            double moved = Math.abs(next - p);
            p = next;
            if (moved <= 1e-16 * network.ambientSquared) {
                break;
            }
        }
        bring(p);
        return p;
    }

    /** Air that producers (less) and valves (more) bring into the suction node. */
    private void bring(double suction) {
        double suction_Pa = Math.sqrt(suction);
        end.followHeld(suction_Pa);
        bringOnRung(suction_Pa, suction);
    }

    private void bringOnRung(double suction_Pa, double suction) {
        end.followRelief(suction_Pa);
        end.evaluate(suction_Pa);
        spare_kgPerS = end.inflow_kgPerS();
        spareSlope = end.slope_kgPerSPa() / (2 * suction_Pa);
        if (vented) {
            open(station.ventLeg(), suction);
            spare_kgPerS += opening_kgPerS;
            spareSlope += openingSlope;
        }
    }

    /** Flow at which the filters lose this much pressure squared. */
    private double line_kgPerS(double drop) {
        double size = Math.abs(drop);
        double w = 2 * size / (linear + Math.sqrt(linear * linear + 4 * quadratic * size));
        return Math.copySign(w, drop);
    }

    private double lineSlope(double w) {
        return 1 / (linear + 2 * quadratic * Math.abs(w));
    }

    /** Flow of a short opening into a pressure. */
    private void open(int leg, double squared) {
        laws.evaluate(leg, 0, network.ambientSquared, squared, 0, 0);
        double effective_m2 = network.effectiveArea_m2[leg];
        double perSquareFlow = network.rt_JPerKg / (effective_m2 * effective_m2);
        opening_kgPerS = Math.copySign(Math.sqrt(Math.abs(laws.residual) / perSquareFlow), laws.residual);
        openingSlope = -laws.slopeTo / (2 * perSquareFlow * Math.abs(opening_kgPerS));
    }
}
