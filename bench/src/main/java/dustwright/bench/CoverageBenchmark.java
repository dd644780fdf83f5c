package dustwright.bench;

import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.coverage.Answer;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.coverage.Effort;
import dustwright.engine.coverage.Question;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.receiver.FilterCondition;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * How long it takes, from process start, to prove what holds for every set of so many open inlets of a tree: one run per process.
 *
 * <p>Arguments: trees as mains x inlets per main, a colon, users: {@code 5x12:6}; threads from the system property {@code threads},
 * dust in every open inlet with {@code -Ddust=true}; every set besides, one by one, with {@code -Dplain=true}.
 */
public final class CoverageBenchmark {
    private CoverageBenchmark() {}

    /** Proves and prints one line of figures. */
    public static void main(String[] args) {
        int colon = args[0].indexOf(':');
        Plant plant = TreePlants.demanding(args[0].substring(0, colon));
        int users = Integer.parseInt(args[0].substring(colon + 1));
        int threads = Integer.getInteger("threads", 2);
        boolean dust = Boolean.getBoolean("dust");
        State fed = States.open(plant, List.of(), FilterCondition.NORMAL);
        Question question = new Question(List.of(users), Map.of(), List.of(dust ? fed : States.withoutDust(fed)));
        Coverage coverage = Coverage.of(plant, question, duty -> Study.judge(plant, duty), Effort.threads(threads));
        long sinceStart_ms = System.currentTimeMillis()
                - ManagementFactory.getRuntimeMXBean().getStartTime();
        Answer answer = coverage.answers().get(0);
        System.out.println(String.format(
                Locale.ROOT,
                "inlets=%d users=%d dust=%s threads=%d sets=%s verdict=\"%s\" method=\"%s\" solved=%d widening=%.2g least=%s at=%s why=\"%s\" seconds_from_start=%.2f",
                plant.inlets().size(),
                users,
                dust,
                threads,
                answer.sets(),
                answer.verdict().words(),
                answer.method().words(),
                answer.solved(),
                answer.widening(),
                answer.least().map(w -> Double.toString(w.finding().margin())).orElse("-"),
                answer.least().map(w -> w.finding().id()).orElse("-"),
                answer.why(),
                sinceStart_ms / 1000.0));
        worst(answer, FindingCode.TRANSPORT_VELOCITY);
        worst(answer, FindingCode.TOOL_FLOW);
        if (Boolean.getBoolean("plain")) {
            System.out.println(new PlainEnumeration(plant, question.conditions().get(0), users).line());
        }
    }

    /** The least margin of one kind, with the figure behind it in SI. */
    private static void worst(Answer answer, FindingCode code) {
        answer.worst().stream()
                .filter(w -> w.finding().code() == code)
                .findFirst()
                .ifPresent(w -> System.out.println(String.format(
                        Locale.ROOT,
                        "%s=%.10g at=%s with=%s",
                        code,
                        w.finding().value().si(),
                        w.finding().where().id(),
                        String.join("+", w.open()))));
    }
}
