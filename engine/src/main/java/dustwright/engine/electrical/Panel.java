package dustwright.engine.electrical;

import dustwright.engine.electrical.Enclosure.AreaClass;
import dustwright.engine.electrical.Enclosure.Exposure;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.Temperature;
import java.util.Optional;

/**
 * The control panel and where it stands. The area class is the owner's; without the name of who classified the area it counts for
 * nothing.
 *
 * @param area class of the place where the panel stands
 * @param classifiedBy who says so: person or document
 * @param enclosure one of {@link Enclosure#offered}, as fitted or offered
 * @param marking group and level of its certificate, for zones
 * @param exposure water and corrosion it must bear
 * @param control voltage of the control circuits
 * @param ambient hottest air around the panel
 * @param inside hottest air allowed inside
 * @param surface of the walls that stand free
 * @param drivesInside whether variable-frequency drives sit in the panel
 * @param powerPathHeat heat of contactors, overloads, fuses and transformers, by their makers' sheets
 * @param cooler heat its closed cooler carries off at the temperatures inside and around it
 * @param coolingAir air that a fan leads through it
 */
public record Panel(
        Optional<AreaClass> area,
        Optional<String> classifiedBy,
        Optional<String> enclosure,
        Optional<DustMarking> marking,
        Optional<Exposure> exposure,
        Control control,
        Optional<Temperature> ambient,
        Temperature inside,
        Optional<Area> surface,
        boolean drivesInside,
        Optional<Power> powerPathHeat,
        Optional<Power> cooler,
        Optional<ActualVolumeFlow> coolingAir) {
    /** Control supply. */
    public enum Control {
        DC_24("24 V DC", 24),
        AC_115("115 V AC", 115),
        AC_230("230 V AC", 230);

        private final String words;
        private final int volts;

        Control(String words, int volts) {
            this.words = words;
            this.volts = volts;
        }

        /** As the plant file says it. */
        public String words() {
            return words;
        }

        /** Its voltage [V]. */
        public int volts() {
            return volts;
        }
    }
}
