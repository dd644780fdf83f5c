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
    DUST_LOSS(
            "Loss by dust",
            "This dust is fed and slows the air by an amount that is not known: pressures, flows and velocities of this set are those of air"
                    + " alone, and what holds for air alone is not shown to hold.",
            "Enter \"particle size\" and \"particle density\" of this dust, of heavy shot \"level speed\" too."),
    LUMP(
            "Room for the largest piece",
            "The largest piece of this dust is wider than the bore: it stops here and plugs the way.",
            "Keep such pieces out by a screen at the tool and state what still gets in as \"largest lump\", or use a wider tool, hose or tube."),
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
    PRODUCER_TORQUE(
            "Motor torque on its drive",
            "Below its rated speed a motor gives no more than its rated torque, and the producer asks more: turned down by a drive, its motor"
                    + " is overloaded though its power stays under the nameplate's.",
            "Gear it so that the motor runs near its rated speed in the usual set, fit the next motor size or one of more poles, or lower the"
                    + " vacuum."),
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
    VENT_PULL(
            "Vent valve against the pull",
            "With its vent valve open the station still pulls on its users: a container is changed and a filter cleaned under vacuum.",
            "Use a larger vent valve, or a valve that shuts the receiver off."),
    CURVE_TAKEN(
            "How the curve was taken",
            "A dynamic machine's curve means one thing where all its points had air of one density at the inlet, another where the inlet stood under"
                    + " its own vacuum: deep down flow and power differ by a third.",
            "Ask the machine's maker and enter \"curve taken\"."),
    SEAL_WATER(
            "Seal water against the curve's",
            "The pump's curve was taken with cooler seal water than it gets, or nobody says how warm it gets: the warmer the water, the more of"
                    + " each pocket its vapour fills, and the less air it takes than its curve says.",
            "Cool the seal water, or enter a curve measured with water as warm as it gets and have its maker confirm it."),
    CURVE_FREE_END(
            "Free-air end of the producer's curve",
            "The producer works against less vacuum than any point of its curve was measured at. Its flow and its power there are not"
                    + " measured: the curve is carried on straight beyond its first point, and whether the motor bears it is not known.",
            "Ask the maker for a point at this vacuum and enter it; else let fewer users draw at once, fit smaller openings, or choose a"
                    + " smaller producer."),
    CURVE_DEEP_END(
            "Deep end of the producer's curve",
            "The producer works against more vacuum than any point of its curve was measured at. Its flow and its power there are not"
                    + " measured: the curve is carried on straight beyond its last point. A centrifugal or side-channel machine runs below its"
                    + " least measured flow there, and surge is not excluded (common practice, no source).",
            "Ask the maker for a point at this vacuum and how far the machine may be throttled, and enter it; else give it more air by a"
                    + " far-end bleed, let a relief valve open earlier, stop it while few draw, or choose another producer."),
    DRIVE_VACUUM(
            "Vacuum held by the drive",
            "At an end of its speed range the drive does not hold the vacuum that is asked of it: at its greatest speed the producer makes"
                    + " less, at its least speed more.",
            "Widen the speed range within the machine's limits, choose another size of machine, or ask another vacuum of the drive; too much"
                    + " vacuum at least speed is what a relief valve or a far-end bleed takes away."),
    SPEED_ON_SUPPLY(
            "Speed on this supply",
            "The producer's speed in the plant file is not the one its motor gives it on this supply through its belt or coupling: every figure"
                    + " of this producer holds for another machine than the one that will run.",
            "Correct speed, sheaves, poles or frequency; on a supply of another frequency change the sheaves, or fit a drive and enter"
                    + " \"start: drive\"."),
    NAMEPLATE_CURRENT(
            "Current against the motor's power",
            "Less current is stated than the nameplate's power takes from this supply even without any loss: current, power or voltage is"
                    + " wrong, and overload and conductors would be sized on it.",
            "Read current, power and voltage from one nameplate; a motor for two voltages states two currents, and a drive its rated input"
                    + " current."),
    DRIVE_INPUT_CURRENT(
            "Drive's input current against the motor's power",
            "Less rated input current is stated than the nameplate's power takes from this supply even without any loss: current, power or"
                    + " voltage is wrong, and conductors would be sized on it.",
            "Read the drive's rated input current and the supply's voltage from one line of its maker's sheet."),
    NAMEPLATE_EXCESS(
            "Nameplate current against the motor's power",
            "More current is stated than a motor of this power usually takes; on a NEC supply, where the table of the power sizes conductors, the"
                    + " overload, set by the nameplate, would trip above what they carry.",
            "Read current, power and voltage from one nameplate; a motor that really takes more, such as one of many poles or high torque, has"
                    + " its whole circuit sized on its nameplate by a licensed person."),
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
    CLEANING_INTERVAL(
            "Running time between off-line cleanings",
            "Sooner than asked a tool gets less than its limit, or the pressure drop reaches where the default sequence holds: too much dust lies"
                    + " on the cloth, or the cleaned cloth alone takes as much.",
            "Clean more often, fit more filter area, let more dust fall out before the cloth, raise the margin at the tools, or where the"
                    + " elements bear it the set point of the filter drop."),
    FILTER_DIFFERENCE(
            "Pressure difference over the elements",
            "Elements or cages bear less than the pressure drop at which the default sequence holds.",
            "Set the contact of the filter drop lower, or fit stronger elements and cages."),
    FIBRE_UNFIT(
            "Fibre for this air",
            "The fitted fibre does not last in this air, by the published table: heat in surges or moisture spoils it.",
            "Fit the fibre that the filter's sheet chooses; ask the maker about potting and end caps."),
    FILTER_TEMPERATURE(
            "Heat at the filter",
            "The air at the cloth is hotter than its fibre bears in continuous service.",
            "Fit a fibre for this heat, or cool the air before the filter; ask the maker about potting and end caps."),
    HOT_AIR(
            "Heat between inlets and producers",
            "The air at the cloth is hotter than the site's, and nobody says where it is heated: tubing, safety filter and producers are"
                    + " computed at the site's temperature. Hot air is thinner, so the producers take less of it, and the tools get less.",
            "Where the plant room itself is that hot, state it as the site's \"temperature\"; else have tubing, safety filter and producers"
                    + " looked at by hand, with the air's temperature at each."),
    MOTOR_AT_SITE(
            "Motor where it stands",
            "Motors give their nameplate up to 40 °C and 1000 m, and above that where it is cooler. Here it is hotter or higher, and how much"
                    + " this one gives is not stated.",
            "Ask the motor's maker what it gives at this ambient and altitude and enter it as \"motor at site\", or fit a motor made for it."),
    SAFETY_FILTER_FLOW(
            "Air through the safety filter",
            "More air passes the safety filter than its maker allows.",
            "Fit a larger safety filter or several in parallel."),
    LEVEL_PROBE_PLACE(
            "Place of the level probe",
            "Inlet and level probe share a place on the receiver: the stream hits the probe, or they cannot both be fitted.",
            "Move the level probe to one of the other two places, 90° away."),
    LEVEL_PROBE_HEIGHT(
            "Height of the level probe",
            "Dust stands over the filter elements or in the inlet's stream before the level probe tells a full receiver.",
            "Lower the level probe below the elements' ends and the inlet's lower edge, or raise or shorten those."),
    HOLD_UP(
            "Time to high level",
            "When discharge stops, dust reaches the receiver's level probe sooner than asked.",
            "Raise the level probe below inlet and filters, use a larger receiver, or keep a spare bag or drum at hand."),
    HOPPER_OUTLET(
            "Hopper outlet against bridging",
            "The hopper's outlet is narrower than an arch of this dust, or of its lumps, can span.",
            "Widen the outlet and the valve below it, steepen or smooth the cone, screen the lumps, or fit a flow aid."),
    RELIEF_CAPACITY(
            "Relief valve against blocked tubing",
            "With the tubing blocked the relief valve passes what the producers take only at a vacuum deeper than one of them bears: it is too"
                    + " small for them, or opens too late.",
            "Fit a relief valve with a greater rated flow or a second one, or set it lower; let the maker of the producer confirm it."),
    SHELL_VACUUM(
            "Shell under vacuum",
            "By this screening the receiver's shell may buckle with the tubing blocked, before the relief valve passes all that the producers take.",
            "Thicken the shell, add stiffening rings, fit a larger relief valve or set it lower; have the vessel designed to its code."),
    VALVE_CAPACITY(
            "Capacity of the rotary valve",
            "The rotary valve discharges less than asked over the largest rate of dust: the receiver fills, and does not empty after a"
                    + " high-level stop.",
            "Turn it faster within its tip speed, fit a larger one, or limit how much dust is picked up at once."),
    VALVE_TIP_SPEED(
            "Tip speed of the rotary valve",
            "The rotor's tips pass the inlet faster than is usual: the pockets fill less and less, dust is thrown back and what it discharges is"
                    + " not known.",
            "Turn it slower or fit a larger valve: above a tip speed near 0.7 m/s a faster rotor discharges less."),
    HOPPER_LEDGE(
            "Hopper's outlet over the valve's throat",
            "The hopper ends wider than the inlet of the valve under it: dust stands on the ledge, and an arch needs to span the throat only.",
            "Use a valve as wide as the outlet, or lead the cone down to the throat and enter that as \"outlet\"."),
    VALVE_THROAT(
            "Throat of the rotary valve",
            "The valve's inlet opening is narrow for the largest lump: lumps interlock over it.",
            "Fit a valve with a larger throat, or screen the lumps at the tools."),
    VALVE_DIFFERENCE(
            "Pressure difference across the rotary valve",
            "The vacuum in the receiver is deeper than the valve's maker allows across it.",
            "Fit a valve made for this difference, or lower the vacuum."),
    VALVE_TORQUE(
            "Torque of the rotary valve's gearmotor",
            "The gearmotor gives less torque at the rotor than the full rotor needs.",
            "Fit a larger motor or a slower gear."),
    CHOKED(
            "Choked piece",
            "The air reaches the isothermal sonic limit at the end of this piece: no more vacuum brings more air. The state is no valid"
                    + " operating state.",
            "Widen this piece or reduce the flow through it."),
    CONTAINER_LOAD(
            "Load of the full container",
            "The container holds more than its safe working load before its filling stops.",
            "Stop by scale at the safe working load, set the level probe lower, or use a container marked for more."),
    SETTLED_LOAD(
            "Load of a container that settles",
            "Dust that settles while it fills leaves room under the level probe, and more comes in than the container may hold.",
            "Stop by scale at the safe working load, set the level probe lower, or use a container marked for more."),
    SCALE_TOO_LATE(
            "Scale before the container is full to its volume",
            "The container is full to its volume before the scale is at the safe working load: nothing watches the level, so the filling is"
                    + " not stopped.",
            "Stop by level probe, or let the scale stop at what the volume holds of the lightest dust."),
    DRUM_VACUUM(
            "Drum against the receiver's vacuum",
            "No rotary valve stands between receiver and drum: it bears the vacuum that comes with the tubing blocked, and may fold.",
            "Use a drum rated for the vacuum, set the relief valve lower, or fit a rotary valve under the receiver."),
    BAG_UNDER_VACUUM(
            "Bulk bag against the receiver's vacuum",
            "No rotary valve stands between receiver and bulk bag: the bag is open to the vacuum, which draws its cloth and liner together"
                    + " and its dust back up, and no sock or fan holds it open.",
            "Fit a rotary valve under the receiver, or collect in a drum that bears the vacuum."),
    INFLATION_PRESSURE(
            "Pressure to open the bag",
            "The fan or air supply makes less pressure than the empty bag weighs on its area: it does not open it.",
            "Use a fan of a few inches of water (common practice, no source); folds and a liner take more than the bag's weight."),
    INFLATION_TIME(
            "Inflation within the change",
            "Inflating the bag takes longer than the whole change is stated to take.",
            "Use a larger fan or air supply, or state the time a change really takes."),
    NECK_SEAL(
            "Pressure of the neck seal",
            "The neck seal is inflated harder than practice allows; it may tear or let go of the spout.",
            "Set its regulator to about 4 psi, and fit a relief that opens below 9 psi."),
    NECK_SEAL_LOOSE(
            "Hold of the neck seal",
            "The neck seal is inflated so little that it hardly holds the spout: dust comes out while the bag fills, and the spout may slip off.",
            "Set its regulator to about 4 psi (common practice, no source), and let filling wait for a pressure switch on it."),
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
    SPOUT_REACH(
            "Spout up to the filling head",
            "The bag's spout is shorter than the way from the bag's top to the filling head: it can not be tied to it.",
            "Lower the filling head, raise the pallet, or use a bag with a longer spout."),
    RECEIVER_DURING_CHANGE(
            "Receiver during a change",
            "The receiver reaches its high level before the container is changed, and the users have to wait.",
            "Change faster, hold more below the probe, let fewer users go on, or stop vacuuming during a change."),
    CONTAINER_LIFE(
            "Time between changes",
            "The container is full sooner than asked, by the calendar: nights and days off are in it.",
            "Use a larger container, inflate the bag before it fills, or lead the dust to a silo."),
    CLEANING_TIME(
            "Cleaning within the shift",
            "What is to be picked up in a shift takes longer than the shift at the largest rate of dust, waiting for changes and for the"
                    + " receiver included where it is known: some of it stays on the floor.",
            "Let more users work at once or pick up at a greater rate; where users wait, change faster, go on during a change, or fit a"
                    + " faster rotary valve."),
    HELD_AT_LEVEL(
            "Users held at the receiver's high level",
            "More dust comes than the rotary valve discharges or the receiver holds during a change: it stands at its high level and the"
                    + " users have to wait.",
            "Turn the valve faster within its tip speed or fit a larger one, raise the level probe below inlet and filters, change faster,"
                    + " or limit how much dust is picked up at once."),
    SOUND_AT_ONE_METRE(
            "Sound at 1 m",
            "The producers of this station are louder at 1 m than asked.",
            "Fit a better silencer or a hood, or choose a quieter machine."),
    DAILY_EXPOSURE(
            "Daily noise exposure",
            "Over the shift the operator is exposed to more noise than asked.",
            "Fit a better silencer or a hood, stand further off, or stay there for less time."),
    DUSTS_TOGETHER(
            "Dusts that must not meet",
            "Dusts are collected on one system that must be kept apart: together they burn, or burn worse.",
            "Give each its own system, down to the tubing, or keep the dust out by procedure where a qualified person accepts that."),
    DUST_NOT_NAMED(
            "Dust of every inlet",
            "Nobody has said which dust comes in at an inlet, and the plant handles combustible dust: vent, bag, isolation and protection are"
                    + " judged without it.",
            "Enter \"dust\" of the inlet; of one where only clean material comes in, a dust that is shown not to burn."),
    DUST_CARD(
            "Values of a combustible dust",
            "Values that protection, equipment and bags are chosen by are not known for this dust. Meanwhile the worst case is taken for each:"
                    + " what is chosen by it may be dearer than needed, or not to be had.",
            "Have the own dust tested and enter the values with their report; a published dust named under \"explodes like\" or \"ignites"
                    + " like\" shows only what is plausible."),
    METAL_DRY(
            "Light metal in a dry receiver",
            "Dust of a light metal comes to a dry receiver with a filter.",
            "Use wet collection, or a dry collector outdoors after a special review; take no equipment from this program for it."),
    EXPLOSION_PROTECTION(
            "Way out for an explosion",
            "The receiver takes combustible dust and an explosion in it has no way out that does not hurt people.",
            "For a metal or toxic dust a specialist chooses. For another dust: set it outdoors with a vent, lead the vent outside by a duct, vent"
                    + " it flameless, or suppress or contain the explosion. Where one of these is fitted: a stronger vessel, or a device made for this dust"
                    + " that leaves less pressure."),
    VENT_AREA(
            "Explosion vent",
            "By at least one of the published methods that are asked the vent is smaller than this dust, or a weaker one within the method's"
                    + " range, asks in this vessel.",
            "Fit a larger vent, a stronger vessel or a smaller one; have the vent sized by a specialist with the standard and test data."),
    INLET_ISOLATION(
            "Isolation on the main",
            "At least one main has nothing that keeps the flame of an explosion in the receiver from running back to the people who hold hoses.",
            "Fit an isolation device on every main that enters the receiver, tested for this dust."),
    VALVE_ISOLATION(
            "Isolation below the receiver",
            "Nothing keeps an explosion in the receiver from the bag or drum below it, beside the person who changes it.",
            "Fit a rotary valve that is tested as an isolation device and stops on an explosion, or a drum and clamp that stand what the"
                    + " vessel stands."),
    PRODUCER_PLACE(
            "Vacuum producer where dust is",
            "The vacuum producers stand where dust is or may come to, and are not made for it.",
            "Set them outside the classified areas behind a safety filter, or take producers and motors that are marked for area and group."),
    HOT_SURFACE(
            "Heat of the producer against the dust",
            "The air leaves the producer hotter than a surface may be that this dust touches: what gets past the filter can smoulder in it, in"
                    + " its silencer and in the exhaust.",
            "Lower the vacuum or let more air in, cool the air, choose another kind of producer; watch the discharge temperature."),
    MOTOR_SURFACE(
            "Heat of producer and motor outside",
            "A surface of producer or motor gets hotter than this dust bears as a cloud or as a layer on it.",
            "Take machines with a cooler temperature marking, or set them where no dust comes; keep them clean."),
    CONE_DISCHARGE(
            "Discharge over the heap",
            "The heap of an easily ignited dust in receiver, bag or drum can hold charge and discharge over its surface, whatever is grounded"
                    + " around it.",
            "Have it judged by a specialist with resistivity and ignition energy of the own dust, before anybody fills."),
    AFTER_FILTER(
            "After-filter for the dust class",
            "The after-filter lets through more than the class of the dust allows in air that people breathe.",
            "Fit an after-filter of a better class, or lead the exhaust outdoors where its authority allows that."),
    RETURN_ISOLATION(
            "Isolation on the return air",
            "Air is led back into a room and nothing keeps flame and smoke of an explosion from coming with it.",
            "Fit an isolation device on the return duct that is tested for this dust, or lead the air outdoors."),
    FILTER_STATIC(
            "Filter elements against static",
            "The filter elements do not carry charge away, and a dust here is easily ignited.",
            "Fit elements of a static-dissipative make, bonded to the tube sheet and to ground."),
    EXHAUST_INDOORS(
            "Exhaust air indoors",
            "Air is returned to the room that carried toxic or metal dust, or without what keeps dust out of it.",
            "Lead the exhaust outdoors, or fit the after-filter that the dust's class asks and a watch for broken elements."),
    HOSE_RESISTANCE(
            "Hose against static",
            "The hose's resistance is higher than charge may meet on its way to ground.",
            "Use a conductive or dissipative hose, bonded at both cuffs, and measure it."),
    TUBE_STATIC(
            "Tubing against static",
            "Charge stays on the tubing: it is of insulating material, or its way to ground has too great a resistance.",
            "Use tubing of metal, bridged at every coupling and grounded; no plastic tube for a dust that burns."),
    TOOL_STATIC(
            "Tool against static",
            "Charge stays on the tool that a person holds in the dust.",
            "Use a tool of metal or of dissipative material whose tip is joined to the hose's cuff."),
    DRUM_STATIC(
            "Drum against static",
            "Charge stays on the drum that dust falls into.",
            "Use a drum of metal, with its clip on before anything falls; no plastic drum for a dust that burns."),
    FOOD_CONTACT(
            "Materials that touch food",
            "A dust that goes into food or touches it meets elements, hoses or tools that nobody has declared for that.",
            "Fit what is declared for contact with food, or declare by the site's food safety plan that nothing picked up comes back."),
    BAG_STATIC(
            "Bulk bag against static",
            "This electrostatic type of bag is not permitted for the ignition energy of a dust that falls into it.",
            "Use a type that the dust permits; see the sheet."),
    LINER_STATIC(
            "Liner against static",
            "The liner cancels the electrostatic rating of the bag.",
            "Use a liner type that goes with the bag, or none."),
    PANEL_AREA(
            "Panel in its area",
            "The panel's enclosure is not for the class of the area where it stands.",
            "Use equipment listed for the class, group and temperature, purge the panel, or move it out of the area."),
    PANEL_EXPOSURE(
            "Panel against dust and water",
            "The panel's enclosure is not made to keep out what reaches it where it stands.",
            "Use an enclosure of the usual type for this exposure, see the panel's sheet, or keep dust and water from it."),
    PANEL_HEAT(
            "Heat of the panel",
            "With the hottest air around it less heat leaves the panel than is made in it: its parts get hotter than they may stand.",
            "Fit a closed cooler for what the panel's sheet leaves to it, use a larger panel, put drives outside, or stand it where it is cooler."),
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
