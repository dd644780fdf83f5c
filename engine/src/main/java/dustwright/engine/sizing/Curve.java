package dustwright.engine.sizing;

import dustwright.engine.plant.Plant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/**
 * What it costs to carry so many users: the cheapest sizes for one user up to the most asked, each with its own certificate and bound.
 *
 * @param points by rising number of users
 */
public record Curve(List<Point> points) {
    public Curve {
        points = List.copyOf(points);
    }

    /**
     * One number of users.
     *
     * @param users at most so many at once
     * @param sizing cheapest sizes for them
     */
    public record Point(int users, Sizing sizing) {}

    /**
     * Sizes for one user up to so many. What was bad for fewer users is asked first for more; sizes for more users also carry fewer, so no
     * number costs less than a smaller one is shown to cost.
     *
     * @param rules by number of users
     */
    public static Curve of(
            Plant plant, List<Choice> choices, int most, IntFunction<? extends Rules> rules, Patience patience) {
        List<Point> points = new ArrayList<>();
        Patience asking = patience;
        for (int users = 1; users <= most; users++) {
            Sizing sizing = Search.of(plant, choices, rules.apply(users), asking);
            points.add(new Point(users, sizing));
            asking = asking.asking(sizing.learnt());
        }
        return new Curve(points);
    }
}
