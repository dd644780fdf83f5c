package dustwright.engine.quantity;

/** Hours that people, tools or machines work, added up over a week or a year [s]: nights and days off are not in it, so it is never told in days. */
public record WorkingTime(double seconds) implements Quantity, Comparable<WorkingTime> {
    public WorkingTime {
        Finite.check("WorkingTime", seconds);
    }

    @Override
    public double si() {
        return seconds;
    }

    @Override
    public Dimension dimension() {
        return Dimension.WORKING_TIME;
    }

    @Override
    public int compareTo(WorkingTime other) {
        return Double.compare(seconds, other.seconds);
    }
}
