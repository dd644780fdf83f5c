package dustwright.engine;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.Derivation;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.LegResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.MassFlow;
import java.util.ArrayList;
import java.util.List;

/** Which dusts are fed in one solved state without anybody knowing what they cost: what holds there holds for air alone. */
final class DustChecks {
    private static final Source NO_PASS = Source.ownReading("no dust of unknown loss: what is not known is no pass");

    private DustChecks() {}

    static List<Finding> of(Plant plant, DutyPoint duty) {
        List<Finding> findings = new ArrayList<>();
        for (Dust dust : plant.dusts()) {
            List<Term> feeds = dust.lossKnown() ? List.of() : feeds(duty, dust);
            if (!feeds.isEmpty()) {
                findings.add(finding(duty.state().name(), dust, feeds));
            }
        }
        return findings;
    }

    private static List<Term> feeds(DutyPoint duty, Dust dust) {
        return duty.legs().stream()
                .filter(leg -> leg.kind() == LegResult.Kind.HOSE)
                .flatMap(hose -> hose.streams().stream()
                        .filter(stream -> stream.dust().equals(dust.id()))
                        .map(stream -> new Term("m(" + hose.id() + ")", "fed at inlet " + hose.id(), stream.flow())))
                .toList();
    }

    /** Short of the limit by no known amount: the margin is the least that is none. */
    private static Finding finding(String state, Dust dust, List<Term> feeds) {
        MassFlow all = new MassFlow(
                feeds.stream().mapToDouble(feed -> feed.value().si()).sum());
        Step step = new Step(
                "NET-7",
                "m_s = Σ m",
                feeds,
                new Term(
                        "m_s",
                        dust.name()
                                + (dust.particle().isEmpty()
                                        ? " fed; its loss is left out of every pressure drop"
                                        : " fed; its loss is an estimate: its particles are beyond CON-30, enter \"level speed\""),
                        all),
                Source.entered());
        return new Finding(
                FindingCode.DUST_LOSS + "/" + dust.id() + "/" + state,
                FindingCode.DUST_LOSS,
                new Place(Place.Kind.DUST, dust.id()),
                state,
                Side.AT_MOST,
                all,
                new MassFlow(0),
                Finding.NOT_KNOWN,
                new Derivation(List.of(step), NO_PASS));
    }
}
