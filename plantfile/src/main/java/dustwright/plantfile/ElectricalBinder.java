package dustwright.plantfile;

import dustwright.engine.electrical.DustMarking;
import dustwright.engine.electrical.Electrical;
import dustwright.engine.electrical.Enclosure.AreaClass;
import dustwright.engine.electrical.Enclosure.Exposure;
import dustwright.engine.electrical.Panel;
import dustwright.engine.electrical.Supply;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.ElectricCurrent;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.SupplyFrequency;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.Voltage;

/** Makes supply and panel. */
final class ElectricalBinder {
    /** Between the two frequencies of the world. */
    private static final double MIDDLE_Hz = 55;

    private ElectricalBinder() {}

    static Electrical electrical(Section top) {
        return new Electrical(
                top.section("supply").map(ElectricalBinder::supply),
                top.section("panel").map(ElectricalBinder::panel));
    }

    /** The basis a frequency goes with. */
    static Supply.Basis usualBasis(SupplyFrequency frequency) {
        return frequency.hertz() > MIDDLE_Hz ? Supply.Basis.NEC : Supply.Basis.IEC;
    }

    private static Supply supply(Section s) {
        SupplyFrequency frequency = s.get("hertz", SupplyFrequency.class);
        Supply.Basis basis = s.find("basis", String.class)
                .map(Supply.Basis::valueOf)
                .orElseGet(() -> {
                    Supply.Basis usual = usualBasis(frequency);
                    s.derive("basis", usual.name());
                    return usual;
                });
        return new Supply(
                s.get("volts", Voltage.class),
                s.get("phases", Integer.class),
                frequency,
                basis,
                s.find("fault current", ElectricCurrent.class));
    }

    private static Panel panel(Section p) {
        return new Panel(
                p.find("area class", String.class).map(w -> Worded.of(AreaClass.values(), AreaClass::words, w)),
                p.find("classified by", String.class),
                p.find("enclosure", String.class),
                p.find("marking", String.class)
                        .flatMap(w -> DustMarking.all().stream()
                                .filter(m -> m.words().equals(w))
                                .findFirst()),
                p.find("exposure", String.class).map(w -> Worded.of(Exposure.values(), Exposure::words, w)),
                Worded.of(Panel.Control.values(), Panel.Control::words, p.get("control", String.class)),
                p.find("ambient", Temperature.class),
                p.get("inside", Temperature.class),
                p.find("surface", Area.class),
                p.get("drives inside", Boolean.class),
                p.find("power path heat", Power.class),
                p.find("cooler", Power.class),
                p.find("cooling air", ActualVolumeFlow.class));
    }
}
