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
    CARRYING_VELOCITY(
            "Velocity above saltation and choking",
            "At its slowest point this piece runs below the stated margin on what a published law asks for this stream of dust.",
            "Use a smaller tube, a separate header or a far-end bleed, or pick up less dust at once."),
    LOADING_RATIO(
            "Dust per air",
            "More dust is carried by each kilogram of air than asked.",
            "Pick up less at once, or give this user more air: a wider hose, a shorter one, fewer users."),
    NEAR_CHOKING(
            "Velocity above that of least drop",
            "Where this piece rises, the air is too slow for the dust it lifts: less air would need more pressure, so dust collapses and the"
                    + " tube plugs. There is no dilute flow through it, and the state is no valid operating state.",
            "Use a smaller tube where it rises, pick up less dust at once, or let fewer users share it."),
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
    PRODUCER_SHUT(
            "Producer behind a shut check valve",
            "This producer runs while its check valve stays shut: at its speed it does not reach the vacuum that stands at its station. It moves"
                    + " no air and heats up on what it holds.",
            "Stop it, raise its speed, or match it to the producers beside it; let the second one start only when it is needed."),
    BELT_SPEED(
            "Speed of the belt",
            "The rim of the larger sheave runs faster than ordinary cast-iron sheaves may.",
            "Use smaller sheaves of the same ratio, or sheaves made for the speed."),
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
    CONTAINER_LOAD(
            "Load of the full container",
            "The container holds more than its safe working load before its filling stops.",
            "Stop by scale at the safe working load, set the level probe lower, or use a container marked for more."),
    NECK_SEAL(
            "Pressure of the neck seal",
            "The neck seal is inflated harder than practice allows; it may tear or let go of the spout.",
            "Set its regulator to about 4 psi, and fit a relief that opens below 9 psi."),
    SOCK_VELOCITY(
            "Velocity through the vent sock",
            "Air passes the container's vent sock faster than asked, so dust comes through or the bag swells.",
            "Fit a larger sock, or vent the container to the filter."),
    ARMS_LOAD(
            "What the arms carry",
            "The arms of the filling stand carry more than they are there for: they hold the corners of the bag open, they do not lift it.",
            "Let the bag stand on floor or pallet while it fills; lift it by all its loops with gear that is rated for it."),
    HEADROOM(
            "Height under the filling head",
            "The bag on its pallet is higher than the space under the filling head.",
            "Raise the filling head, leave the pallet out, or use a lower bag."),
    RECEIVER_DURING_CHANGE(
            "Receiver during a change",
            "The receiver reaches its high level before the container is changed, and the users have to wait.",
            "Change faster, hold more below the probe, let fewer users go on, or stop vacuuming during a change."),
    CONTAINER_LIFE(
            "Time between changes",
            "The container is full sooner than asked.",
            "Use a larger container, inflate the bag before it fills, or lead the dust to a silo."),
    CLEANING_TIME(
            "Cleaning within the shift",
            "What is to be picked up in a shift takes longer than the shift at the largest rate of dust.",
            "Let more users work at once, or pick up at a greater rate."),
    SOUND_AT_ONE_METRE(
            "Sound at 1 m",
            "The producers of this station are louder at 1 m than asked.",
            "Fit a better silencer or a hood, or choose a quieter machine."),
    DAILY_EXPOSURE(
            "Daily noise exposure",
            "Over the shift the operator is exposed to more noise than asked.",
            "Fit a better silencer or a hood, stand further off, or stay there for less time."),
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
