package dustwright.engine.network;

import dustwright.engine.conveying.Dust;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Run;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;

/** Random plants that carry dust: every inlet picks some up, and runs rise and fall. */
public final class DustyPlants {
    private static final List<String> DUSTS = List.of("fine", "sand", "pellets");

    private DustyPlants() {}

    /** The plant and state with dust in them; feeds from 4 to 400 kg/h, now and then ten times as much. */
    public static RandomPlants.Case of(RandomPlants.Case clean, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Plant p = clean.plant();
        Plant dusts = new PlantSketch()
                .dust("fine", 5e-5, 1500)
                .dust("sand", 2e-4, 2650)
                .dust("pellets", 3e-3, 950)
                .plant();
        Plant plant = copy(
                p,
                dusts.dusts(),
                p.runs().stream().map(run -> tilted(run, random)).toList(),
                p.inlets().stream().map(inlet -> fed(inlet, random)).toList());
        Set<String> feeding = clean.state().open().stream()
                .filter(id -> random.nextInt(8) > 0)
                .collect(Collectors.toSet());
        return new RandomPlants.Case(plant, clean.state().withFeeding(feeding));
    }

    /** The plant with dust picked up in a few ways only: so many feeds, each of one dust, drawn from a seed. */
    public static Plant fedAlike(Plant clean, long seed, int feeds, double factor) {
        SplittableRandom random = new SplittableRandom(seed);
        Plant dusty = of(
                        new RandomPlants.Case(
                                clean,
                                new State("none", List.of(), FilterCondition.CLEAN, Set.of(), Set.of(), Set.of())),
                        seed)
                .plant();
        int first = random.nextInt(3);
        double[] feed_kgPerS =
                random.doubles(feeds, 1e-3, 0.03).map(f -> factor * f).toArray();
        return withInlets(
                dusty,
                dusty.inlets().stream()
                        .map(i -> {
                            int way = random.nextInt(feeds);
                            return withFeed(i, Optional.of(DUSTS.get((first + way) % 3)), feed_kgPerS[way]);
                        })
                        .toList());
    }

    /** The plant with every feed times a factor. */
    public static Plant withFeeds(Plant p, double factor) {
        return withInlets(
                p,
                p.inlets().stream()
                        .map(i -> withFeed(i, i.dust(), factor * i.feed().kgPerSecond()))
                        .toList());
    }

    /** The plant with other inlets. */
    public static Plant withInlets(Plant p, List<Inlet> inlets) {
        return copy(p, p.dusts(), p.runs(), inlets);
    }

    private static Plant copy(Plant p, List<Dust> dusts, List<Run> runs, List<Inlet> inlets) {
        return new Plant(
                p.name(),
                p.note(),
                p.site(),
                dusts,
                p.tubes(),
                p.hoses(),
                p.tools(),
                p.points(),
                runs,
                inlets,
                p.bleeds(),
                p.held(),
                p.stations(),
                p.usage(),
                p.requirements(),
                p.overrides(),
                p.assumptions());
    }

    private static Inlet fed(Inlet inlet, SplittableRandom random) {
        double feed_kgPerS = 1e-3 * Math.pow(100, random.nextDouble()) * (random.nextInt(40) == 0 ? 10 : 1);
        return withFeed(inlet, Optional.of(DUSTS.get(random.nextInt(3))), feed_kgPerS);
    }

    private static Inlet withFeed(Inlet i, Optional<String> dust, double feed_kgPerS) {
        return new Inlet(
                i.id(), i.at(), i.hose(), i.tool(), i.valveK(), i.leak(), i.zone(), dust, new MassFlow(feed_kgPerS));
    }

    private static Run tilted(Run run, SplittableRandom random) {
        Run.Route.Measured route = (Run.Route.Measured) run.route();
        double most_m = Math.min(8, route.length().metres());
        double rise_m = switch (random.nextInt(5)) {
            case 0, 1 -> most_m * random.nextDouble();
            case 2 -> -most_m * random.nextDouble();
            default -> 0;
        };
        return new Run(
                run.id(),
                run.from(),
                run.to(),
                run.tube(),
                new Run.Route.Measured(route.length(), route.k(), new Length(rise_m)),
                run.fittings(),
                run.wye(),
                run.dust());
    }
}
