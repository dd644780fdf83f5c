package dustwright.engine.finding;

/** Every kind of finding: title, what it means in the plant, and what to do. The only home of these texts. */
public enum FindingCode {
    TOOL_FLOW(
            "Air at the tool",
            "Less air than asked enters this tool, so it picks up poorly.",
            "Shorten or widen the hose, enlarge the tubing the inlet shares, reduce simultaneous users, or choose a larger producer."),
    INLET_VACUUM(
            "Vacuum at the inlet valve",
            "Less vacuum than asked stands at this inlet valve with its hose flowing.",
            "Enlarge the tubing between inlet and receiver, reduce simultaneous users, or raise the producer's vacuum within its limits."),
    TRANSPORT_VELOCITY(
            "Velocity that carries the dust",
            "At its slowest point this tube runs below the velocity the dust class needs; dust settles there.",
            "Use a smaller tube, a separate header, a far-end bleed or an end purge. The pump's relief valve does not help: its air does not"
                    + " pass the tubing."),
    WEAR_VELOCITY(
            "Velocity that wears",
            "At its fastest point this tube runs above the stated upper velocity; bends wear and product breaks.",
            "Use a larger tube from here on, or fewer users on this header."),
    PRODUCER_VACUUM(
            "Vacuum at the producer",
            "The producer works deeper than its stated limit.",
            "Lower the loss in tubing and filter, or lower the relief valve's setting."),
    PRODUCER_POWER(
            "Motor load",
            "The producer asks more shaft power than the motor's nameplate gives.",
            "Lower the relief valve's setting or the speed, or fit the next motor size."),
    PRODUCER_TEMPERATURE(
            "Temperature rise of the producer",
            "The air leaves the producer hotter than its stated limit allows.",
            "Lower the vacuum or raise the flow; a producer that chokes on too little air overheats."),
    PRODUCER_SPEED(
            "Speed of the producer",
            "The producer's speed lies outside its stated range.",
            "Choose another belt ratio, drive setting or machine size."),
    AIR_TO_CLOTH(
            "Air-to-cloth ratio",
            "More air passes each area of filter cloth than the limit allows, at the actual flow in the receiver.",
            "Fit more filter area or run fewer users."),
    CAN_VELOCITY(
            "Upward velocity in the receiver",
            "Air rises between the filters faster than the limit; dust does not fall against it.",
            "Use a wider receiver or a lower inlet with a baffle."),
    CHOKED(
            "Choked piece",
            "The air reaches the isothermal sonic limit at the end of this piece: no more vacuum brings more air. The state is no valid"
                    + " operating state.",
            "Widen this piece or reduce the flow through it."),
    BALANCE(
            "Balance check",
            "An independent check of mass balance and leg laws does not agree with the solver's result.",
            "Do not use this result; report the plant file to the developers.");

    private final String title;
    private final String meaning;
    private final String remedy;

    FindingCode(String title, String meaning, String remedy) {
        this.title = title;
        this.meaning = meaning;
        this.remedy = remedy;
    }

    public String title() {
        return title;
    }

    public String meaning() {
        return meaning;
    }

    public String remedy() {
        return remedy;
    }
}
