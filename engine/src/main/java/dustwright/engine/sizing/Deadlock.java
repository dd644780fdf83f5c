package dustwright.engine.sizing;

import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.coverage.Coverage;
import java.util.List;
import java.util.Optional;

/**
 * Why no choice of sizes holds.
 *
 * @param clash states of which no design withstands all, and no fewer of them do: with one left out some design does; empty where none
 *     were singled out
 * @param nearest the design that misses least, as far as was looked
 */
public record Deadlock(List<Clash> clash, Optional<Nearest> nearest) {
    public Deadlock {
        clash = List.copyOf(clash);
    }

    /**
     * One of the states that exclude each other.
     *
     * @param best the requirement with every size at its best for it, of those the other states leave where it is the last
     * @param condition of filter and dust
     * @param leaves what this state by itself leaves of the choices it narrows
     */
    public record Clash(Worst best, String condition, List<Left> leaves) {
        public Clash {
            leaves = List.copyOf(leaves);
        }
    }

    /**
     * What is left of a choice.
     *
     * @param choice number of the choice
     */
    public record Left(int choice, List<String> options) {
        public Left {
            options = List.copyOf(options);
        }
    }

    /**
     * The design that misses least.
     *
     * @param coverage what it holds and what it misses, over all sets
     * @param miss by how much its worst requirement misses [-]
     * @param least every design misses by this at least [-]
     */
    public record Nearest(Design design, Coverage coverage, double miss, double least) {}
}
