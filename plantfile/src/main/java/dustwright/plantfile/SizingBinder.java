package dustwright.plantfile;

import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.Money;
import dustwright.engine.quantity.Price;
import dustwright.engine.sizing.Choice;
import dustwright.engine.sizing.Choice.Priced;
import dustwright.engine.sizing.OpenSizes;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Makes what is open to choice. */
final class SizingBinder {
    private final Section sizing;
    private String currency = "";

    private SizingBinder(Section sizing) {
        this.sizing = sizing;
    }

    static OpenSizes open(Section top) {
        return top.section("sizing").map(s -> new SizingBinder(s).open()).orElse(OpenSizes.NONE);
    }

    private OpenSizes open() {
        List<Choice> choices = new ArrayList<>();
        for (Section group : sizing.namedSections("tubes")) {
            choices.add(new Choice.Tubes(group.id(), ids(group, "runs"), priced(group.named("of"))));
        }
        for (Section group : sizing.namedSections("hoses")) {
            choices.add(new Choice.Hoses(group.id(), ids(group, "inlets"), priced(group.named("of"))));
        }
        sizing.named("producers")
                .forEach((station, of) -> choices.add(new Choice.Producers((String) station, priced((Map<?, ?>) of))));
        sizing.named("cloth").forEach((station, of) -> choices.add(cloth((String) station, (Map<?, ?>) of)));
        return new OpenSizes(choices, currency);
    }

    private Choice cloth(String station, Map<?, ?> of) {
        List<Area> areas = new ArrayList<>();
        List<Priced> options = new ArrayList<>();
        of.forEach((id, value) -> {
            Section option = (Section) value;
            areas.add(option.get("area", Area.class));
            options.add(new Priced((String) id, amount(option.get("price", Money.class))));
        });
        return new Choice.Cloth(station, areas, options);
    }

    private static List<String> ids(Section group, String key) {
        return group.items(key).stream().map(String.class::cast).toList();
    }

    private List<Priced> priced(Map<?, ?> of) {
        return of.entrySet().stream()
                .map(e -> new Priced((String) e.getKey(), amount(e.getValue())))
                .toList();
    }

    private double amount(Object value) {
        if (value instanceof Money money) {
            currency = money.currency();
            return money.amount();
        }
        Price price = (Price) value;
        currency = price.currency();
        return price.si();
    }
}
