package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Term;
import dustwright.engine.hazard.CloudLaws;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.tubing.Inlet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Whether what the tubing carries can explode by its amount: the air that would keep it too thin. */
final class CloudLines {
    private final Plant plant;
    private final Collecting here;
    private final Writing writing;

    CloudLines(Plant plant, Collecting here, Writing writing) {
        this.plant = plant;
        this.here = here;
        this.writing = writing;
    }

    void write() {
        for (Dust dust : here.burning()) {
            largest(dust).ifPresent(feed -> {
                carried(dust, feed);
                thin(dust, feed);
            });
        }
    }

    private Optional<MassFlow> largest(Dust dust) {
        return here.inlets().stream()
                .filter(i -> i.dust().filter(dust.id()::equals).isPresent())
                .map(Inlet::feed)
                .filter(feed -> feed.kgPerSecond() > 0)
                .max(Comparator.comparingDouble(MassFlow::kgPerSecond));
    }

    /** At the flow that is asked at a tool; where more air comes, less dust is in it. */
    private void carried(Dust dust, MassFlow feed) {
        plant.requirements().toolFlow().ifPresent(asked -> {
            Density carried = new Density(CloudLaws.concentration_kgPerM3(
                    feed.kgPerSecond(), asked.value().si()));
            writing.known(
                    "carried-" + dust.id(),
                    "Dust in one user's free air, " + dust.name() + against(dust, carried),
                    carried,
                    List.of(step(
                            "HAZ-18",
                            "C = w / Q",
                            Source.ownReading("definition"),
                            new Term("C", "dust in the air", carried),
                            new Term("w", "largest feed of one inlet", feed),
                            new Term("Q", "free air asked at a tool", asked.value()))));
        });
    }

    private static String against(Dust dust, Density carried) {
        return dust.card()
                .explosible()
                .map(mec -> carried.kgPerCubicMetre() >= mec.value().kgPerCubicMetre()
                        ? ": above its MEC, an explosible cloud all the way"
                        : ": below its MEC, until dust settles and is stirred up")
                .orElse("");
    }

    private void thin(Dust dust, MassFlow feed) {
        String what = "thin-" + dust.id();
        String name = "Air that would keep one user's " + dust.name() + " below a quarter of its MEC";
        if (dust.card().explosible().isEmpty()) {
            writing.unknown(
                    what,
                    name,
                    "Enter \"mec\" under \"explosion\" of the dust. Meanwhile any concentration in tubing and receiver may explode.");
            return;
        }
        Density mec = dust.card().explosible().get().value();
        ActualVolumeFlow air = new ActualVolumeFlow(
                CloudLaws.leastAir_m3PerS(feed.kgPerSecond(), mec.kgPerCubicMetre(), CloudLaws.DESIGN_SHARE));
        writing.known(
                what,
                name + ". Dust comes in lumps and the filter pulses it up: no protection is left out on this ground",
                air,
                List.of(step(
                        "HAZ-18",
                        "Q = w / (25 % MEC)",
                        CloudLaws.DILUTION,
                        new Term("Q", "air", air),
                        new Term("w", "largest feed of one inlet", feed),
                        new Term("MEC", "least explosible concentration", mec),
                        new Term("share", "of MEC", new Ratio(CloudLaws.DESIGN_SHARE)))));
    }
}
