package dustwright.plantfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each case spoils a good file in one place; the fault must name the line, the reason and the way out. */
class FaultsTest {
    private static final String GOOD = PlantReaderTest.resource("two-inlets.yaml");

    @Test
    void a_wrong_length_is_not_also_reported_as_a_length_left_out() {
        String text = GOOD.replace("set: runs.M1.length, to: 31 m", "set: runs.M1.k, to: 1.3")
                .replaceFirst("length: 24 m", "length: 24");
        assertThat(text).isNotEqualTo(GOOD);
        assertThat(faults(text))
                .singleElement()
                .satisfies(fault -> assertThat(fault.text()).contains("a number without a unit"));
    }

    @Test
    void a_sign_that_steers_a_terminal_is_shown_as_what_it_is_wherever_it_stands() {
        String text = GOOD.replaceFirst("altitude: 120 m", "\"alti\\\\e[31mtude\": 120 m");
        assertThat(text).isNotEqualTo(GOOD);
        assertThat(faults(text))
                .isNotEmpty()
                .allSatisfy(fault -> assertThat(fault.text()).doesNotContain("\u001B"))
                .anySatisfy(fault -> assertThat(fault.text()).contains("site.alti<U+001B>[31mtude"));
    }

    @Test
    void a_character_that_yaml_refuses_is_told_with_its_place() {
        assertThat(faults(GOOD.replaceFirst("altitude", "alti\u0000tude")))
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.text()).contains("U+0000");
                    assertThat(fault.line())
                            .isEqualTo(1
                                    + (int) GOOD.substring(0, GOOD.indexOf("altitude"))
                                            .lines()
                                            .count()
                                    - 1);
                    assertThat(fault.column()).isGreaterThan(1);
                });
    }

    @Test
    void an_id_whose_description_is_wrong_is_not_reported_as_missing_too() {
        assertThat(faults(GOOD.replaceFirst("J1: \\[4.5, 2, 6\\]", "J1: [4.5, 2, up]")))
                .singleElement()
                .satisfies(fault -> assertThat(fault.path()).startsWith("points.J1"));
    }

    @Test
    void an_id_used_twice_is_not_reported_as_tubing_that_leads_nowhere_too() {
        assertThat(faults(GOOD.replaceFirst("J1: \\[4.5, 2, 6\\]", "J1: [4.5, 2, 6]\n  A1: [1, 1, 1]")))
                .singleElement()
                .satisfies(fault -> assertThat(fault.text()).contains("is already the id at points.A1"));
    }

    @Test
    void a_held_pressure_that_is_refused_is_not_reported_as_missing_too() {
        String text = """
                dustwright: 1
                plant: {name: Two points, units: si}
                site: {altitude: 0 m, temperature: 20 degC, humidity: 0 %}
                tubes: {T: {bore: 60 mm}}
                points: {A: {}, B: {}}
                runs: {R: {from: A, to: B, tube: T, length: 10 m}}
                held: {A: {pressure: 65 psig}, B: {supply: -1 kg/s}}
                """;
        assertThat(faults(text))
                .isNotEmpty()
                .allSatisfy(fault -> assertThat(fault.path()).startsWith("held."));
    }

    /** The standard atmosphere (ISO 2533) has 57.75 kPa at 4500 m, 17.05 inHg. */
    @Test
    void a_vacuum_deeper_than_the_barometer_of_the_site_is_refused_where_a_valve_or_a_drive_is_to_keep_it() {
        String high = GOOD.replace("altitude: 120 m", "altitude: 4500 m");
        assertThat(faults(high.replace("set: 8.5 inHg, full: 11 inHg", "set: 18 inHg, full: 20 inHg")))
                .singleElement()
                .satisfies(fault -> assertThat(fault.text())
                        .contains("stations.REC.relief valve.set")
                        .contains("none so deep at this site")
                        .contains("less than 57.8 kPa (17.1 inHg)"));
        assertThat(faults(high.replace("hold: 7 inHg", "hold: 17.5 inHg")))
                .singleElement()
                .satisfies(fault -> assertThat(fault.text()).contains("producers.P2.hold"));
    }

    @Test
    void a_name_with_a_sign_that_turns_or_steers_the_text_after_it_is_refused() {
        for (String sign : List.of("\\u202E", "\\e", "\\u2066")) {
            String text = GOOD.replaceFirst("name: [^,]*,", "name: \"Ha" + sign.replace("\\", "\\\\") + "ll\",");
            assertThat(text).isNotEqualTo(GOOD);
            assertThat(faults(text))
                    .anySatisfy(fault -> assertThat(fault.text()).contains("steers how text is shown, U+"));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                // unknown keys and words
                "altitude: 120 m          | altitud: 120 m            | site.altitud: unknown key \"altitud\" of the site | \"altitude\"",
                "usage:                   | usge:                     | unknown key \"usge\" of a plant file              | \"usage\"",
                "class: very fine light dust | class: very fine dust   | is none of the words known here                   | \"very fine light dust\"",
                "kind: lobe               | kind: lobes               | \"lobes\" is none of the words known here         | \"lobe\"",
                "units: us                | units: usa                | is none of the words known here                   | \"us\"",
                "standby: yes             | standby: maybe            | is neither yes nor no                             | expected yes or no",
                // units and kinds
                "length: 25 ft            | length: 25                | a number without a unit                           | such as 25 ft",
                "length: 25 ft            | length: 25 fet            | unknown unit \"fet\"                              | ft",
                "altitude: 120 m          | altitude: 120 kg          | a mass (kg) where a length belongs                | such as 120 m",
                "altitude: 120 m          | barometer: 29.5 inHg      | where an absolute pressure belongs                | inHg abs",
                "set: 8.5 inHg            | set: 80 kPa abs           | absolute pressure (kPa abs) where a vacuum        | without \"abs\"",
                "rated: 500 scfm          | rated: 500 cfm            | does not say at what pressure                     | scfm for free air",
                "rated: 500 scfm          | rated: 500 acfm           | actual volume flow (acfm) where a free-air flow   | m3/h free",
                "at: 450 acfm             | at: 450 scfm              | free-air flow (scfm) where an actual volume flow  | acfm",
                "length: 25 ft            | length: 25 f t            | unknown unit \"f t\"                              | ft",
                "length: 25 ft            | length: 25 m m            | unknown unit \"m m\"                              | mm",
                // a value that an override replaces
                "length: 24 m             | length: -24 m             | runs.M1.length: -24 m is outside what is sensible | 1 mm to 3 km",
                "length: 24 m             | length: NaN m             | runs.M1.length: \"NaN m\" does not start with a number | such as 24 m",
                "length: 24 m             | length: \"1,024 m\"      | runs.M1.length: a comma in a number               | such as 24 m",
                "length: 24 m             | length: 24 M              | runs.M1.length: unknown unit \"M\"               | ",
                // a wye that enters nothing
                "length: 24 m, k: 1.2     | length: 24 m, k: 1.2, wye: 45 deg | no run goes on from REC, where run M1 ends | drawn toward the junction",
                "D1: {from: A1, to: J1    | D1: {from: J1, to: A1     | no run goes on from A1, where run D1 ends         | drawn toward the junction",
                // a pressure held at a point, and where runs end
                "runs:                    | held: {J1: {pressure: 65 psig}}~runs:   | psig is counted from the barometer upward | 79.7 psi abs",
                "runs:                    | held: {J1: {vacuum: 6 psig}}~runs:      | psig is counted from the barometer upward | 12 inHg for a vacuum",
                "to: REC, tube: T3        | to: REC, dust: no, tube: T3 | run M1 is said to pass no dust, and what inlet A1 picks up comes through it | it belongs to runs that lead from no inlet with a dust",
                "to: REC, tube: T3        | to: air, tube: T3         | \"air\" is where a run may start, not where it ends | held at the site's barometer",
                "J1: [4.5, 2, 6]          | J1: [4.5, 2, 6]~  CAP: {} | no run touches point CAP                          | a run from or to it",
                // bends
                "bend radius: 300 mm      | bend radius: 4900 mm      | r/D = 103.162 is outside                          | 0.5 to 100 bores",
                "bend radius: 300 mm      | bend radius: 3 m          | the bends at the ends of stretch 2 need 3 m of its 2 m | bends that fit",
                "via: [[9, 2, 6]]         | via: [[9, 2, 6], [9, 2, 4]] | it turns back on itself at the end of stretch 1 | bends that fit",
                // ranges in the unit that was typed
                "set: 8.5 inHg            | set: 40 inHg              | outside what is sensible here                     | 0.01 kPa to 100 kPa (0.002953 to 29.52 inHg)",
                // absurd sizes
                "length: 24 m             | length: 0.9999 mm         | outside what is sensible                          | 1 mm to 3 km",
                "length: 25 ft            | length: 250 ft            | outside what is sensible                          | 0.5 m to 60 m",
                "bend radius: 300 mm      | bend radius: -300 mm      | outside what is sensible                          | 5 mm to 5 m",
                "bore: 1 1/2 in           | bore: 4 ft                | outside what is sensible                          | 5 mm to 1 m",
                "wye: 45 deg              | wye: 5 deg                | outside what is sensible                          | 30 deg to 90 deg",
                "outside: 2 in, wall: 0.065 in | outside: 2 in, wall: 0.95 in | walls that leave no bore                  | more than twice the wall",
                "humidity: 50 %           | humidity: 150 %           | outside what is sensible                          | 0 % to 100 %",
                "simultaneous users: 2    | simultaneous users: 3     | 3 users at 2 inlets                               | at most one per inlet",
                "simultaneous users: 2    | simultaneous users: two   | \"two\" does not fit                              | a whole number",
                // missing and conflicting
                "site: {altitude: 120 m,  | site: {                   | the site without altitude, or barometer           | ",
                "H15: {bore: 1 1/2 in,    | H15: {                    | a hose without \"bore\"                           | bore: 3 in",
                "outside: 2 in, wall      | outside: 2 in, bore: 2 in, wall | with both outside and bore                  | at most one of",
                "tube: T2, via: [[9, 2, 6]] | tube: T2, via: [[9, 2, 6]], length: 3 m | with both via and length        | at most one of via, or length",
                "count: 2}]               | count: 2}], rise: 3 m     | a rise of a run that is drawn                     | length",
                "class: very fine light dust | class: very fine light dust, particle size: 60 mm | outside what is sensible   | 0.001 mm to 20 mm",
                "class: very fine light dust | class: very fine light dust, carrying velocity: 0.1 m/s | outside what is sensible | 1 m/s to 150 m/s",
                "class: very fine light dust | class: very fine light dust, particle density: 1.4 kg/m3 | outside what is sensible | 50 kg/m3 to 25000 kg/m3",
                "class: very fine light dust | class: very fine light dust, particle density: 100 kg/m3 | a heap denser than its particles | less than the particle density",
                "class: very fine light dust | class: very fine light dust, tapped density: 100 kg/m3 | settled dust lighter than loose dust | at least the bulk density",
                "class: very fine light dust | class: very fine light dust, tapped density: 5600 kg/m3 | more than ten times the bulk density | decimal point",
                "class: very fine light dust | class: very fine light dust, in hopper: {flow function: [[1 kPa, 2 kPa], [2 kPa, 1.9 kPa]]} | the strength falls here | no less than that of the point before",
                "class: very fine light dust | class: very fine light dust, heaviest bulk density: 400 kg/m3 | heaviest lighter than lightest | at least the bulk density",
                "bulk density: 550 kg/m3 | heaviest bulk density: 600 kg/m3 | the heavy end of a range without its light end | too",
                "class: very fine light dust | class: very fine light dust, heaviest bulk density: 800 kg/m3, tapped density: 700 kg/m3 | settled dust lighter than loose dust | at least the heaviest bulk density",
                "class: very fine light dust | class: very fine light dust, level speed: 2 % | outside what is sensible | 5 % to 100 %",
                "class: very fine light dust | class: very fine light dust, level speed: 60 % | without the particle size | beside it",
                "class: very fine light dust | class: very fine light dust, particle size: 1 mm, level speed: 60 % | without the particle density | beside it",
                "class: very fine light dust | class: very fine light dust, particle size: 5 mm, in hopper: {largest lump: 4 mm} | a lump smaller than the particles | at least the particle size",
                "class: very fine light dust | class: very fine light dust, level friction: yong | is none of the words known here | \"yang\"",
                "wear velocity: 40 m/s    | wear velocity: 40 m/s, saltation factor: 0.5 | outside what is sensible | 1 to 5",
                "wear velocity: 40 m/s    | wear velocity: 40 m/s, loading ratio: 100 | outside what is sensible | 0.01 to 30",
                "count: 2}]               | count: 2}], k: 3          | a summed k on a run that is drawn                 | length",
                "kind: lobe               | standby: no               | no \"kind\" is said                               | kind: lobe",
                "simultaneous users: 2    | zones: {}                 | second time                                       | ",
                // containers, shifts, costs, sound
                "safe working load: 1000 kg | load: 1000 kg            | unknown key \"load\" of a bulk bag                | ",
                "safe working load: 1000 kg | safe working load: 0 kg  | outside what is sensible                          | 1 kg to 50000 kg",
                "stop: level probe        | stop: probe               | is none of the words known here                   | one of level probe, scale",
                "size: [0.9 m, 0.9 m, 1.3 m] | vapour: steam           | is none of the words known here | group IIA or IIB",
                "length: 25 ft | length: 25 ft, resistance: 5 | a number without a unit | such as",
                "length: 25 ft | length: 25 ft, resistance: 1e15 ohm | outside what is sensible | 0.1 ohm to 1e12 ohm",
                "size: [0.9 m, 0.9 m, 1.3 m] | type: E                 | is none of the words known here | one of A, B, C, D",
                "size: [0.9 m, 0.9 m, 1.3 m] | liner type: L4          | is none of the words known here | PLAIN",
                "change time: 12 min      | change time: 12           | a number without a unit                           | such as 10 min",
                "size: [0.9 m, 0.9 m, 1.3 m] | size: [0.9 m, 0.9 m]   | that does not fit                                 | a list such as",
                "pressure: 15 mbar        | pressure: 15 psig         | is counted from the barometer upward              | ",
                "flow: 180 m3/h           | flow: 180 m3/h free       | free-air flow (m3/h free) where an actual volume flow | acfm or m3/h",
                "pressure: 15 mbar        | pressure: 15 mbar, by: compressed air, motor: 1/2 hp | a fan's motor where compressed air blows | by: fan",
                "fill without inflation: 80 % | fill without inflation: 0 % | outside what is sensible                    | 10 % to 100 %",
                "base: on floor or pallet | base: hooks               | is none of the words known here                   | hanging from the arms",
                "shifts: {per day: 2      | shifts: {per day: 4       | longer together than a day                        | at most 24 h",
                "cleaning: 30 min         | cleaning: 9 h             | longer than its shift                             | at most the shift's length",
                "cleaning: 30 min         | cleaning: 30 min, picked up: [{dust: flour, per shift: 60 kg}] | with both cleaning and picked up | at most one of",
                "cleaning: 30 min         | picked up: [{dust: flor, per shift: 60 kg}] | there is no dust called \"flor\" | \"flour\"",
                "labour: 38 EUR/h         | labour: 38 USD/h          | USD where \"electricity\" is in EUR               | one currency",
                "electricity: 0.12 EUR/kWh | electricity: 0.12 EUR    | amount of money (EUR) where a price of energy       | ",
                "electricity: 0.12 EUR/kWh | electricity: 0.12        | a number without a unit                           | 0.12 EUR/kWh",
                "interest: 4 %            | interest: 400 %           | outside what is sensible                          | 0 % to 50 %",
                "casing: 88 dBA           | casing: 88 dB             | difference of sound levels (dB) where a sound level | 88 dBA",
                "pulses: 120 /h           | pulse: 120 /h             | unknown key \"pulse\" of a station's compressed air | \"pulses\"",
                // dusts in filter and hopper, what is asked of them
                "class: very fine light dust | class: very fine light dust, combustible: perhaps | is neither yes nor no | ",
                "class: very fine light dust | class: very fine light dust, explosion: {family: flour} | is none of the words known here | ",
                "class: very fine light dust | class: very fine light dust, explosion: {kst: 115} | a number without a unit | such as",
                "class: very fine light dust | class: very fine light dust, explosion: {kst: 115 bar} | where a dust explosion constant belongs | bar.m/s",
                "class: very fine light dust | class: very fine light dust, explosion: {pmax: 90 bar} | outside what is sensible | 0.5 bar to 25 bar",
                "class: very fine light dust | class: very fine light dust, explosion: {mie: 50 J} | outside what is sensible | 0.01 mJ to 10 J",
                "class: very fine light dust | class: very fine light dust, explosion: {mit: 20 degC} | outside what is sensible | 50 degC to 1200 degC",
                "class: very fine light dust | class: very fine light dust, explosion: {mec: 5 kg/m3} | outside what is sensible | 1 g/m3 to 2000 g/m3",
                "class: very fine light dust | class: very fine light dust, explosion: {sample: mine} | is none of the words known here | ",
                "class: very fine light dust | class: very fine light dust, explosion: {toxic: perhaps} | is neither yes nor no | ",
                "class: very fine light dust | class: very fine light dust, explosion: {lit: 2000 degC} | outside what is sensible | 50 degC to 1200 degC",
                "class: very fine light dust | class: very fine light dust, explosion: {conductive: 5} | is neither yes nor no | ",
                "class: very fine light dust | class: very fine light dust, explosion: {food: maybe} | is neither yes nor no | ",
                "class: very fine light dust | class: very fine light dust, explosion: {explodes like: Gravel} | is none of the words known here | ",
                "class: very fine light dust | class: very fine light dust, explosion: {ignites like: Wheat flower} | is none of the words known here | \"Wheat flour\"",
                "class: very fine light dust | class: very fine light dust, explosion: {hygiene: X} | is none of the words known here | ",
                "class: very fine light dust | class: very fine light dust, explosion: {sample size: 3 mm} | outside what is sensible | 0.0001 mm to 1 mm",
                "class: very fine light dust | class: very fine light dust, explosion: {sample moisture: 80 %} | outside what is sensible | 0 % to 50 %",
                "class: very fine light dust | class: very fine light dust, on cloth: {factor material: flower} | is none of the words known here | \"flour\"",
                "class: very fine light dust | class: very fine light dust, on cloth: {ratio dust: flour} | is none of the words known here | \"Flour\"",
                "class: very fine light dust | class: very fine light dust, on cloth: {cake resistance: 1e5} | a number without a unit | such as",
                "class: very fine light dust | class: very fine light dust, on cloth: {cake resistance: 1e9 1/s} | outside what is sensible | 1000 1/s to 1e7 1/s",
                "class: very fine light dust | class: very fine light dust, in hopper: {wall friction: 80 deg} | outside what is sensible | 5 deg to 45 deg",
                "class: very fine light dust | class: very fine light dust, in hopper: {wall friction: 40 deg, effective angle: 30 deg} | does not lie above | wall friction below effective angle",
                "class: very fine light dust | class: very fine light dust, in hopper: {flow function: [[2 kPa, 1 kPa], [1 kPa, 2 kPa]]} | the consolidating stress does not rise here | points in order",
                "class: very fine light dust | class: very fine light dust, in hopper: {flow function: [[2 kPa, 1 kPa]]} | a list of 1 | at least 2",
                "class: very fine light dust | class: very fine light dust, in hopper: {largest lump: 2 m} | outside what is sensible | 0.01 mm to 200 mm",
                "wear velocity: 40 m/s | wear velocity: 40 m/s, cleaning interval: 10 s | outside what is sensible | 1 min to 2000 h",
                "wear velocity: 40 m/s | wear velocity: 40 m/s, hold-up: 30 | a number without a unit | such as",
                "wear velocity: 40 m/s | wear velocity: 40 m/s, valve capacity: 0.5 | outside what is sensible | 1 to 20",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, shell: {material: steel} | a shell without \"thickness\" | ",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, shell: {thickness: 30 mm, material: tin} | is none of the words known here | carbon steel",
                "diameter: 1.2 m, free area | diameter: 0.5 m, shell: {thickness: 30 mm}, free area | no thin shell | 3 mm",
                "diameter: 1.2 m, free area | diameter: 0.2 m, hopper: {half angle: 20 deg, outlet: 250 mm}, free area | an outlet as wide as the shell | less than",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 1.2 m2 | more room between the filters than the whole shell has, 1.13 m2 (12.2 ft2) | cross-section less that of the filter elements",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, straight side: 1.5 m, hopper: {half angle: 20 deg, outlet: 250 mm}, inlet: {low edge: 2.9 m} | an inlet above the vessel: hopper and straight side end 2.81 m (9.20 ft) over the outlet | a height over the hopper's outlet",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, elements down to: 2.9 m, straight side: 1.5 m, hopper: {half angle: 20 deg, outlet: 250 mm} | filter elements that end above the vessel: hopper and straight side end 2.81 m (9.20 ft) over the outlet | a height over the hopper's outlet",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, straight side: 1.5 m, hopper: {half angle: 20 deg, outlet: 250 mm}, level probe: {height: 2.9 m} | a probe above the vessel: hopper and straight side end 2.81 m (9.20 ft) over the outlet | below inlet and filters",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, straight side: 1.5 m, explosion: {vent area: 8 m2} | vents that do not fit: head and cylinder together have 6.79 m2 (73.0 ft2) | fitted or offered",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 0.6 m, inlet: {width: 350 mm, height: 200 mm} | a tangential inlet that is wider than half the shell | at most half",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, straight side: 0.1 m, inlet: {width: 90 mm, height: 200 mm} | an inlet higher than the cylinder it enters | straight side",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, inlet: {place: front} | is none of the words known here | left",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, inlet: {width: 60 mm} | without \"height\" | ",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, explosion: {method: prayer} | is none of the words known here | ",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, explosion: {reduced pressure: 40 bar} | outside what is sensible | 0.01 bar to 10 bar",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, explosion: {vent area: 0.5 m} | where an area belongs | m2",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, explosion: {length to diameter: 0.5} | outside what is sensible | 1 to 20",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, explosion: {inlet isolation: yes} | is none of the words known here | ",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, explosion: {rotary valve isolates: perhaps} | is neither yes nor no | ",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, explosion: {standing: uphill} | is none of the words known here | ",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, explosion: {volume: 1 L} | outside what is sensible | 10 L to 1000 m3",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, explosion: {opens: 0.1} | a number without a unit | such as",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, explosion: {vents: 50} | does not fit | a whole number from 1 to 20",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, explosion: {vent duct: 30 m} | outside what is sensible | 0 m to 20 m",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, explosion: {air in vessel: 90 m/s} | outside what is sensible | 0 m/s to 56 m/s",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, explosion: {panel: 10 kg} | where a mass over area belongs | kg/m2",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, explosion: {hinged: sometimes} | is neither yes nor no | ",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, explosion: {cloud share: 0 %} | outside what is sensible | 1 % to 100 %",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, explosion: {isolated mains: [M1, D2]} | run D2 does not end at station REC | one of the runs that end there: M1",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, explosion: {producers in area: perhaps} | is neither yes nor no | ",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, explosion: {producers marked: 3D} | is neither yes nor no | ",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, explosion: {producers surface: 20 degC} | outside what is sensible | 40 degC to 450 degC",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, explosion: {return isolation: yes} | is none of the words known here | ",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, explosion: {exhaust: upwards} | is none of the words known here | ",
                "diameter: 1.2 m, free area: 0.8 m2 | diameter: 1.2 m, free area: 0.8 m2, pre-separation: 100 % | outside what is sensible | 0 % to 99.9 %",
                "cloth: 95 ft2 | cloth: 95 ft2, temperature: 90 degC, surge temperature: 60 degC | does not lie above | temperature below surge temperature",
                "cloth: 95 ft2 | cloth: 95 ft2, dissipative: mostly | is neither yes nor no | ",
                "cloth: 95 ft2 | cloth: 95 ft2, fibre: polyestr | is none of the words known here | \"polyester\"",
                "loss: 2 inH2O, at: 350 scfm, stated for: site air} | loss: 2 inH2O, at: 350 scfm, class: H12} | is none of the words known here | H13",
                "at: 350 scfm, stated for: site air} | at: 350 scfm, stated for: thin air} | is none of the words known here | standard air",
                "fill: 30 %, clearance | fill: 0 %, clearance | outside what is sensible | 1 % to 100 %",
                "fill: 30 %, clearance | fill: 30 %, rotor: 250 mm, tip gap: 2 mm, clearance | less than the two tip gaps alone leak through, at least 0.000921 m2 | the right \"tip gap\"",
                "fill: 30 %, clearance | fill: 30 %, rotor: 80 mm, clearance | more than a rotor of this diameter has | the right \"rotor\"",
                "fill: 30 %, clearance | fill: 30 %, rotor: 1200 mm, tip gap: 0.15 mm, clearance | less than a rotor of this diameter has | the right \"rotor\"",
                "fill: 30 %, clearance | fill: 30 %, rotor: 200 mm, throat: 250 mm, clearance | a throat wider than the rotor under it | diameter over the blade tips",
                "fill: 30 %, clearance | fill: 30 %, vanes: 3, clearance | does not fit | a whole number",
                "fill: 30 %, clearance | fill: 30 %, torque: 120 W, clearance | a power (W) where a torque belongs | 120 N.m",
                "size: [0.9 m, 0.9 m, 1.3 m] | size: [0.8 m, 0.8 m, 0.8 m] | more than a bag of this \"size\" holds when it stands quite round, 0.652 m3 (23.0 ft3) | or its right",
                "residual: 5000 EUR | residual: 90000 EUR | a system worth more at its end than it cost | at most",
                // names that lead nowhere
                "tool: floor, zone: hall, dust: flour, feed: 60 kg/h} | tool: flor, dust: flour} | there is no tool called \"flor\"  | \"floor\"",
                "zone: hall, dust: flour, feed: 60 kg/h} | zone: hal} | there is no zone called \"hal\"                   | \"hall\"",
                "both: [A1, A2]           | both: [A1, A3]            | there is no inlet called \"A3\"                   | \"A1\"",
                "both: [A1, A2]           | both: [A1, A1]            | an inlet named twice                              | each inlet once",
                "Packing hall, users: 2   | Packing hall, users: 1    | 2 inlets of zone hall open at once where it has 1 user | its \"users\"",
                "from: A1, to: J1         | from: A1, to: J2          | there is no point, inlet or station called \"J2\" | \"J1\"",
                "to: REC, tube: T3        | to: REC, tube: T4         | there is no tube called \"T4\"                    | one of T2, T3",
                "set: runs.M1.length      | set: runs.M2.length       | nothing in this file is called \"M2\"             | \"runs.M1\"",
                "set: runs.M1.length      | set: runs.M1.lenght       | unknown key \"lenght\" of a run                   | \"length\"",
                "set: runs.M1.length      | set: overrides            | cannot be overridden                              | ",
                "to: 31 m                 | to: 31 kg                 | a mass (kg) where a length belongs                | ",
                // tubing that leads nowhere
                "from: J1, to: REC        | from: J1, to: A2          | leads nowhere: there is no station                | held pressure",
                "from: J1, to: REC        | from: J1, to: A2          | no run touches station REC                        | ",
                "from: A2, to: J1         | from: A1, to: J1          | no run touches inlet A2                           | ",
                "from: A2, to: J1         | from: J1, to: J1          | ends where it begins                              | two different ends",
                "J1: [4.5, 2, 6]          | {J1: [4.5, 2, 6], J9: {}} | no run touches point J9                           | ",
                "J1: [4.5, 2, 6]          | {J1: [4.5, 2, 6], A1: {}} | \"A1\" is already the id at points.A1             | ids that differ",
                "J1: [4.5, 2, 6]          | J1: {}                    | J1 has no place, so this run has no length        | length",
                "J1: [4.5, 2, 6]          | J1: [4.5, 2]              | a list where a place belongs                      | three coordinates",
                "via: [[4.5, 0, 6]]       | via: [[4.5, 0, 1]]        | two corners of the run lie at the same place      | corners that differ",
                "bend radius: 300 mm      | bend radius: 3 m          | the bends at the ends of stretch                  | ",
                // relations
                "full: 11 inHg            | full: 8 inHg              | does not lie above                                | ",
                "clean: 1 inH2O           | clean: 5 inH2O            | does not lie above                                | clean below normal",
                "flow: 200 acfm           | flow: 400 acfm            | the curve turns back here                         | flow falling, vacuum rising",
                "vacuum: 2 inHg, power: 3 hp | vacuum: 2 inHg, power: 1 hp | less shaft power than the air of this point takes: 0.93 kW (1.24 hp) | shaft",
                "speed: 1860 rpm          | speed: 2400 rpm           | the speed lies outside its own range              | ",
                "hold: 7 inHg             | speed: 3000 rpm, hold: 7 inHg | not valid YAML                                | ",
                "tools:                   | toolz:                    | there is no tool called                           | describes none",
                "floor: {k: 6}            | floor: {k: 6, discharge coefficient: 0.6} | a discharge coefficient without an opening | opening",
                "floor: {k: 6}            | floor: {curve: [[1 inHg, 40 scfm], [2 inHg, 30 scfm]]} | the curve does not rise here | ",
                "dust: flour, feed: 60 kg/h, leak | feed: 60 kg/h, leak | a feed of dust without the dust                 | ",
                // ids
                "J1: [4.5, 2, 6]          | J/1: [4.5, 2, 6]          | \"J/1\" cannot be the id of a point               | letters, digits",
                "A1: {at:                 | A/1: {at:                 | cannot be the id of an inlet                      | letters, digits",
                "J1: [4.5, 2, 6]          | air: [4.5, 2, 6]          | reserved name of the still air                    | another id",
                "P2:                      | ? [a]                     | a key that is itself a list                       | a word as key",
                // YAML
                "floor: {k: 6}            | floor: &a {k: 6}          | an anchor (&name)                                 | do without anchors",
                "floor: {k: 6}            | floor: *a                 | an alias (*name)                                  | do without anchors",
                "floor: {k: 6}            | floor: !x {k: 6}          | a tag (!x)                                        | do without tags",
                "dustwright: 1            | dustwright: 2             | schema version 2 is newer                         | a newer program",
                "dustwright: 1            | dustwright: one           | \"one\" does not fit                              | expected 1",
            })
    void a_spoilt_file_names_place_reason_and_remedy(String good, String spoilt, String message, String remedy) {
        assertThat(GOOD).contains(good);
        String text = GOOD.replaceFirst(
                java.util.regex.Pattern.quote(good),
                java.util.regex.Matcher.quoteReplacement(nothing(spoilt).replace("~", "\n")));
        List<Fault> faults = faults(text);
        assertThat(faults).anySatisfy(fault -> {
            assertThat(fault.text()).contains(message).contains(nothing(remedy));
            assertThat(fault.line()).isPositive();
            assertThat(fault.column()).isPositive();
        });
    }

    @Test
    void a_bag_stands_on_the_clear_floor_under_its_stand() {
        assertThat(faults(GOOD.replace("bay: [3 m, 3 m]", "bay: [0.85 m, 3 m]")))
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.path()).isEqualTo("stations.REC.container.size");
                    assertThat(fault.text()).contains("a bag wider than the clear floor under its stand");
                });
    }

    /** Of two inlets without a dust of their own the tubing may carry clean air. */
    @Test
    void clean_air_may_be_said_where_no_dust_comes() {
        String text = GOOD.replace("dust: flour, feed: 60 kg/h, leak", "leak").replace("D2: {", "D2: {dust: no, ");
        assertThat(PlantReader.read(text)).isInstanceOf(Reading.Read.class);
    }

    @Test
    void measures_that_just_fit_are_taken() {
        String text = GOOD.replace(
                        "diameter: 1.2 m, free area: 0.8 m2",
                        "diameter: 1.2 m, free area: 1.13 m2, straight side: 1.5 m,"
                                + " hopper: {half angle: 20 deg, outlet: 250 mm}, level probe: {height: 2.8 m}")
                .replace("fill: 30 %, clearance", "fill: 30 %, rotor: 250 mm, throat: 250 mm, clearance")
                .replace("bay: [3 m, 3 m]", "bay: [3 m, 0.9 m]")
                .replace("residual: 5000 EUR", "residual: 85000 EUR");
        assertThat(text).contains("2.8 m", "rotor", "3 m, 0.9 m", "residual: 85000");
        assertThat(PlantReader.read(text)).isInstanceOf(Reading.Read.class);
    }

    private static String nothing(String text) {
        return text == null ? "" : text;
    }

    @Test
    void the_line_and_column_are_those_of_the_value() {
        Fault fault =
                faults(GOOD.replace("altitude: 120 m", "altitude: 120 kg")).get(0);
        assertThat(fault.line()).isEqualTo(4);
        assertThat(fault.column()).isEqualTo(18);
        assertThat(fault.path()).isEqualTo("site.altitude");
        assertThat(fault.text())
                .isEqualTo("line 4, column 18: site.altitude: a mass (kg) where a length belongs; "
                        + "expected a length such as 120 m");
    }

    @Test
    void all_faults_come_together_in_the_order_of_the_file() {
        String text = GOOD.replace("altitude: 120 m", "altitud: 120 m")
                .replace("length: 25 ft", "length: 25")
                .replace("tube: T3, length", "tube: T4, length")
                .replace("full: 11 inHg", "full: 8 inHg")
                .replace("both: [A1, A2]", "both: [A1, A9]");
        List<Fault> faults = faults(text);
        assertThat(faults).hasSizeGreaterThanOrEqualTo(6);
        assertThat(faults).isSortedAccordingTo(java.util.Comparator.comparingInt(Fault::line));
        assertThat(String.join("\n", faults.stream().map(Fault::text).toList()))
                .contains("altitud", "without a unit", "T4", "full", "A9");
    }

    @Test
    void a_key_or_id_written_twice_is_reported_with_the_first_line() {
        List<Fault> faults = faults(GOOD.replace("  A2: {at", "  A1: {at"));
        assertThat(faults.get(0).text()).contains("\"A1\" stands here a second time; the first is on line 23");
    }

    @ParameterizedTest
    @CsvSource({
        "'',                          the file is empty",
        "'# only a remark',           the file is empty",
        "'just words',                'the file holds \"just words\" at the top'",
        "'[1, 2]',                    the file holds a list at the top",
        "'a: [1',                     not valid YAML",
        "'a: 1\n---\nb: 2',           a second document in one file",
        "'dustwright: 1\n\tplant: 2', a tab character",
        "'\u0007',                    does not allow",
    })
    void what_is_no_plant_file_at_all_is_said_plainly(String text, String message) {
        assertThat(faults(text).get(0).text()).contains(message);
    }

    @Test
    void headings_with_nothing_under_them_lack_what_is_required() {
        assertThat(faults("dustwright: 1\nplant: {name: x}\nsite:\n"))
                .singleElement()
                .satisfies(f -> assertThat(f.text()).contains("the site without altitude, or barometer"));
        assertThat(faults("dustwright: 1\nplant:\nsite: {altitude: 1 m}\ntubes: {T:}\n"))
                .hasSize(2);
    }

    @Test
    void an_alias_bomb_is_refused_at_its_first_anchor() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 30; i++) {
            bomb.append("a").append(i).append(": &a").append(i).append(" [");
            bomb.append(("*a" + (i - 1) + ", ").repeat(9)).append("x]\n");
        }
        assertThat(faults(bomb.toString())).hasSize(1);
        assertThat(faults(bomb.toString()).get(0).text()).contains("line 1").contains("anchor");
    }

    @Test
    void nesting_without_end_is_refused() {
        assertThat(faults("a: " + "[".repeat(5000)).get(0).text()).contains("nested more than 20 deep");
        assertThat(faults("{a: ".repeat(5000)).get(0).text()).contains("nested more than 20 deep");
    }

    @Test
    void a_file_that_is_too_large_is_refused_unread(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("large.yaml");
        Files.write(
                file, "# a remark of forty megabytes........\n".repeat(1 << 20).getBytes(StandardCharsets.UTF_8));
        assertThat(((Reading.Faults) PlantReader.read(file)).faults().get(0).text())
                .contains("larger than 4 MiB and was not read");
    }

    @Test
    void a_file_that_is_not_there_or_no_file_is_said_so(@TempDir Path folder) {
        assertThat(((Reading.Faults) PlantReader.read(folder.resolve("none.yaml")))
                        .faults()
                        .get(0)
                        .text())
                .startsWith("there is no file");
        assertThat(((Reading.Faults) PlantReader.read(folder)).faults().get(0).text())
                .contains("cannot be read");
    }

    @Test
    void a_file_in_another_encoding_names_the_place(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("latin.yaml");
        Files.write(file, "dustwright: 1\nplant: {name: Müller}\n".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(((Reading.Faults) PlantReader.read(file)).faults().get(0).text())
                .isEqualTo("line 2, column 16: this is not UTF-8 text; expected a file saved as UTF-8");
    }

    @Test
    void a_hostile_long_value_is_shortened_in_the_message() {
        String text = GOOD.replace("altitude: 120 m", "altitude: \"" + "x".repeat(100_000) + "\"");
        assertThat(faults(text).get(0).text()).hasSizeLessThan(300);
    }

    static List<Fault> faults(String text) {
        Reading reading = PlantReader.read(text);
        assertThat(reading).as("a plant was read from " + text).isInstanceOf(Reading.Faults.class);
        return ((Reading.Faults) reading).faults();
    }

    @Test
    void a_scale_without_a_load_to_stop_at_is_a_fault() {
        String text =
                GOOD.replace("      safe working load: 1000 kg\n", "").replace("stop: level probe", "stop: scale");
        assertThat(faults(text))
                .singleElement()
                .satisfies(fault ->
                        assertThat(fault.text()).contains("a scale that has no load to stop at", "safe working load"));
    }

    @Test
    void sound_and_compressed_air_are_told_of_stations_that_are_there() {
        assertThat(faults(GOOD.replace("  REC: {casing", "  REK: {casing")))
                .singleElement()
                .satisfies(fault -> assertThat(fault.text()).contains("there is no station called \"REK\""));
        assertThat(faults(GOOD.replace("  REC: {per pulse", "  REK: {per pulse")))
                .singleElement()
                .satisfies(fault -> assertThat(fault.text()).contains("there is no station called \"REK\""));
    }

    @Test
    void dust_is_picked_up_where_an_inlet_picks_it_up() {
        String text = GOOD.replace(
                        "flour: {name: Wheat flour, class: very fine light dust, bulk density: 550 kg/m3}",
                        "flour: {name: Wheat flour, class: very fine light dust, bulk density: 550 kg/m3}\n"
                                + "  sand: {name: Sand, class: heavy dust}")
                .replace("cleaning: 30 min", "picked up: [{dust: sand, per shift: 6 kg, zone: hall}]");
        assertThat(faults(text))
                .singleElement()
                .satisfies(fault -> assertThat(fault.text()).contains("no inlet of zone hall picks up \"sand\""));
    }
}
