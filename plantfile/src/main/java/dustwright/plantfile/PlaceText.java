package dustwright.plantfile;

import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.QuantityText;
import dustwright.engine.tubing.Position;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Places in a plant file as text: each coordinate keeps the unit it was written in, new ones take that of the plant's coordinates. */
public final class PlaceText {
    /** Places are written to the millimetre. */
    private static final double FINEST_m = 1e-3;

    private static final Pattern NUMBER_AND_UNIT = Pattern.compile("([-+]?[0-9.eE]+(?:[-+][0-9]+)?)\\s*(.*)");
    private static final String[] NAMES = {"[0]", "[1]", "[2]"};

    private PlaceText() {}

    /** A new place as a list on one line, {@code [4.5, 2, 6]}. */
    public static String written(String text, Position at) {
        String unit = unit(text);
        double[] xyz = {at.x_m(), at.y_m(), at.z_m()};
        StringBuilder list = new StringBuilder("[");
        for (int i = 0; i < xyz.length; i++) {
            list.append(i == 0 ? "" : ", ")
                    .append(unit.isEmpty() ? number(xyz[i], 1) + " m" : number(xyz[i], metres(unit)));
        }
        return list.append(']').toString();
    }

    /** Moves the place at a path, {@code inlets.A1.at} or {@code runs.D1.via[0]}; a coordinate that stays is not touched. */
    public static PlantEditor.Edit moved(String text, String path, Position from, Position to) {
        double[] old = {from.x_m(), from.y_m(), from.z_m()};
        double[] xyz = {to.x_m(), to.y_m(), to.z_m()};
        String changed = text;
        for (int i = 0; i < xyz.length; i++) {
            if (Math.abs(xyz[i] - old[i]) < FINEST_m / 2) {
                continue;
            }
            PlantEditor.Edit edit = coordinate(changed, path + NAMES[i], xyz[i]);
            if (!(edit instanceof PlantEditor.Edit.Done done)) {
                return edit;
            }
            changed = done.text();
        }
        return new PlantEditor.Edit.Done(changed);
    }

    private static PlantEditor.Edit coordinate(String text, String path, double to_m) {
        Optional<String> before = PlantEditor.scalar(text, path);
        Matcher written = NUMBER_AND_UNIT.matcher(before.orElse("").strip());
        if (!written.matches()) {
            return new PlantEditor.Edit.Refused("no place is written at " + path);
        }
        String unit = written.group(2);
        String number = number(to_m, metres(unit.isEmpty() ? unit(text) : unit));
        return PlantEditor.set(text, path, new PlantEditor.Value.Plain(unit.isEmpty() ? number : number + " " + unit));
    }

    /** Unit of bare coordinates; empty where the plant states none. */
    public static String unit(String text) {
        return PlantEditor.scalar(text, "plant.coordinates").map(String::strip).orElse("");
    }

    private static double metres(String unit) {
        return QuantityText.read("1 " + unit, List.of(Dimension.LENGTH)) instanceof QuantityText.Read.Good good
                        && good.quantity() instanceof Length length
                ? length.metres()
                : 1;
    }

    private static String number(double metres, double perUnit_m) {
        int decimals = (int) Math.max(0, Math.ceil(Math.log10(perUnit_m / FINEST_m) - 1e-9));
        BigDecimal rounded = BigDecimal.valueOf(metres / perUnit_m).setScale(decimals, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
