package dustwright.engine.sheet;

import dustwright.engine.conveying.Dust;
import dustwright.engine.hazard.DustCard;
import dustwright.engine.hazard.Listing;
import dustwright.engine.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Whether a device was tested for the dusts of a place and is fitted as its maker allows: what speaks against it, and what would have to be known. */
final class Fitness {
    private final Listing listing;
    private final String group;
    private final List<String> against = new ArrayList<>();
    private final List<String> open = new ArrayList<>();

    /**
     * By what its certificate was given for.
     *
     * @param group what the plant file calls it
     */
    Fitness(Listing listing, String group, List<Dust> burning) {
        this.listing = listing;
        this.group = group;
        burning.forEach(dust -> {
            covers("kst", "Kst", listing.kst(), DustCard::kst, DustCard.WORST_KST, dust);
            covers("pmax", "Pmax", listing.greatest(), DustCard::greatest, DustCard.WORST_PRESSURE, dust);
        });
    }

    /** An isolation device also by where it stands, which flame it stops and what air it bears. */
    Fitness inDuct(boolean floats) {
        if (listing.stops().isEmpty()) {
            enter("stops");
        } else if (listing.stops().get() == Listing.Flame.INTO_RECEIVER) {
            against.add("it stops a flame that runs into the receiver, not one that comes from it");
        }
        distance();
        if (floats && listing.dustLaden().isEmpty()) {
            enter("dust laden");
        } else if (floats && !listing.dustLaden().get()) {
            against.add("its maker does not allow air that carries this dust: a float that cakes does not close");
        }
        return this;
    }

    private void distance() {
        if (listing.nearest().isEmpty()) {
            enter("nearest");
        }
        if (listing.furthest().isEmpty()) {
            enter("furthest");
        }
        if (listing.standsAt().isEmpty()) {
            enter("stands at");
            return;
        }
        double at_m = listing.standsAt().get().metres();
        listing.nearest()
                .filter(least -> at_m < least.metres())
                .ifPresent(least -> against.add("it stands nearer to the receiver than its maker allows"));
        listing.furthest()
                .filter(most -> at_m > most.metres())
                .ifPresent(most -> against.add("it stands further from the receiver than its maker allows"));
    }

    private <T extends Quantity> void covers(
            String key,
            String name,
            Optional<T> tested,
            Function<DustCard, Optional<DustCard.Stated<T>>> of,
            T worst,
            Dust dust) {
        if (tested.isEmpty()) {
            enter(key);
            return;
        }
        double covered = tested.get().si();
        Optional<Double> counts = of.apply(dust.card()).map(v -> v.value().si());
        double atLeast = counts.or(
                        () -> of.apply(dust.enteredCard()).map(v -> v.value().si()))
                .orElse(0.0);
        if (atLeast > covered) {
            against.add(name + " of " + dust.name() + " is greater than what it was tested for");
        } else if (counts.isEmpty() && Math.max(atLeast, worst.si()) > covered) {
            add(open, "Enter \"" + key + "\" under \"explosion\" of " + dust.name() + ".");
        }
    }

    private void enter(String key) {
        add(open, "Enter \"" + key + "\" under \"" + group + "\", by its certificate.");
    }

    private static void add(List<String> list, String what) {
        if (!list.contains(what)) {
            list.add(what);
        }
    }

    /** What speaks against it. */
    List<String> against() {
        return List.copyOf(against);
    }

    /** What to enter before anybody can say that it does. */
    Optional<String> open() {
        return open.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", open));
    }

    /** What is known of it, in words, for its line on the sheet. */
    String words() {
        return against.isEmpty()
                ? open().map(o -> "not shown to do: " + o).orElse("tested for the dusts here, as stated")
                : "against it: " + String.join("; ", against);
    }
}
