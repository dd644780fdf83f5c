package dustwright.studio;

import dustwright.documents.writing.Show;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.receiver.FilterCondition;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Goes through what an edit goes through, while nobody asks anything, until the compiler of the machine has been through it too: a page's
 * first edits are then as quick as its later ones. Nothing is kept of it.
 */
final class Practice {
    private static final int ROUNDS = 300;
    private static final long LONGEST_ns = 10_000_000_000L;

    private Practice() {}

    /** Practises on a plant, beside whatever else goes on. */
    static Thread on(Desk desk, BooleanSupplier closed) {
        Thread thread = new Thread(
                () -> {
                    try {
                        practise(desk, closed);
                    } catch (RuntimeException fault) {
                        // a page that does the same is told
                    }
                },
                "practice");
        thread.setDaemon(true);
        thread.start();
        return thread;
    }

    private static void practise(Desk desk, BooleanSupplier closed) {
        Desk.Copy copy = desk.copy();
        long spent_ns = 0;
        for (int round = 0; round < ROUNDS && spent_ns < LONGEST_ns; round++) {
            Turns.giveWay();
            if (closed.getAsBoolean()) {
                return;
            }
            long begun_ns = System.nanoTime();
            if (PlantReader.read(copy.text(), desk.folder()) instanceof Reading.Read read) {
                Exchange.json(drawn(read.plant()));
            }
            spent_ns += System.nanoTime() - begun_ns;
        }
    }

    private static SetView.View drawn(Plant plant) {
        return SetView.solve(
                        plant,
                        new SetView.Asked(
                                Studio.opened(plant),
                                FilterCondition.NORMAL,
                                true,
                                false,
                                new Show(UnitSystem.US),
                                false,
                                Optional.empty()))
                .view(0, SetView.Part.DRAWING);
    }
}
