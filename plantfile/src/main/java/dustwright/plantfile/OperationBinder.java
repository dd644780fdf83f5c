package dustwright.plantfile;

import dustwright.engine.plant.Costs;
import dustwright.engine.plant.Operation;
import dustwright.engine.plant.Shifts;
import dustwright.engine.plant.StationAir;
import dustwright.engine.plant.StationSound;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.FreeAirVolume;
import dustwright.engine.quantity.Frequency;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.LevelDifference;
import dustwright.engine.quantity.Mass;
import dustwright.engine.quantity.Money;
import dustwright.engine.quantity.Price;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.SoundPressureLevel;
import dustwright.engine.quantity.Velocity;

/** Makes what is known of the plant's running: shifts, costs, compressed air, sound. */
final class OperationBinder {
    private OperationBinder() {}

    static Operation operation(Section top, Section asked) {
        return new Operation(
                top.section("usage").flatMap(u -> u.section("shifts")).map(OperationBinder::shifts),
                top.section("costs").map(OperationBinder::costs),
                top.namedSections("compressed air").stream()
                        .map(OperationBinder::air)
                        .toList(),
                top.namedSections("sound").stream().map(OperationBinder::sound).toList(),
                asked(asked));
    }

    private static Operation.Asked asked(Section asked) {
        return new Operation.Asked(
                PlantBinder.limit(asked, "sound at 1 m", SoundPressureLevel.class),
                PlantBinder.limit(asked, "daily exposure", SoundPressureLevel.class),
                PlantBinder.limit(asked, "sock velocity", Velocity.class),
                PlantBinder.limit(asked, "container life", Duration.class));
    }

    private static Shifts shifts(Section s) {
        Shifts.Cleaning cleaning = s.find("cleaning", Duration.class)
                .<Shifts.Cleaning>map(Shifts.Cleaning.Minutes::new)
                .orElseGet(() -> new Shifts.Cleaning.PickedUp(s.sections("picked up").stream()
                        .map(OperationBinder::pickUp)
                        .toList()));
        return new Shifts(
                s.get("per day", Integer.class),
                s.get("days per week", Integer.class),
                s.get("length", Duration.class),
                s.get("weeks per year", Integer.class),
                s.get("producers run", String.class).equals("through the shift"),
                cleaning);
    }

    private static Shifts.PickUp pickUp(Section p) {
        return new Shifts.PickUp(
                p.get("dust", String.class), p.find("zone", String.class), p.get("per shift", Mass.class));
    }

    private static Costs costs(Section c) {
        return new Costs(
                c.find("electricity", Price.class),
                c.find("compressed air", Price.class),
                c.find("container", Money.class),
                c.find("drum", Money.class),
                c.find("filter set", Money.class),
                c.find("filter years", Integer.class),
                c.find("labour", Price.class),
                c.find("upkeep", Price.class),
                c.find("investment", Money.class),
                c.find("residual", Money.class),
                c.find("interest", Ratio.class),
                c.get("growth", Ratio.class),
                c.find("years", Integer.class),
                c.find("motor efficiency", Ratio.class),
                c.get("drive efficiency", Ratio.class));
    }

    private static StationAir air(Section a) {
        return new StationAir(a.id(), a.find("per pulse", FreeAirVolume.class), a.find("pulses", Frequency.class));
    }

    private static StationSound sound(Section s) {
        return new StationSound(
                s.id(),
                s.find("casing", SoundPressureLevel.class),
                s.find("hood", LevelDifference.class),
                s.find("discharge", SoundPressureLevel.class),
                s.find("silencer", LevelDifference.class),
                s.find("operator at", Length.class),
                s.find("background", SoundPressureLevel.class),
                s.find("time there", Duration.class),
                s.find("elsewhere", SoundPressureLevel.class));
    }
}
