package dustwright.cli;

import static dustwright.cli.Edits.with;
import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.plant.Plant;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A value that is left out never makes a requirement hold that fails with it: nobody can judge it then, and the answer says what to enter. */
class LeftOutTest {
    private static String bakery = "";

    @BeforeAll
    static void read() throws IOException {
        bakery = Files.readString(Path.of("..", "examples", "bakery", "plant.yaml"))
                .replace("  sock velocity:", "  container life: 4.5 d\n  sock velocity:")
                .replaceFirst(
                        "model: DL-15, speed: 2155 rpm,[^\n]*\n",
                        "kind: lobe, displacement: 6.56 L, slip at 1 psi: 130 rpm, mechanical efficiency: 90 %, idle loss: 0.4 hp,"
                                + " deepest vacuum: 15 inHg, greatest rise: 130 K, speed range: [700 rpm, 2300 rpm], motor: 15 hp,"
                                + " casing sound: 88 dBA, discharge sound: 100 dBA, speed: 2155 rpm,\n");
    }

    private static Study study(String text) {
        Reading reading = PlantReader.read(text);
        assertThat(reading).as(reading.toString()).isInstanceOf(Reading.Read.class);
        Plant plant = ((Reading.Read) reading).plant();
        return Study.of(plant, States.usual(plant)).withSheets();
    }

    private static Finding worst(String text, FindingCode code) {
        return study(text).worstPerPlace().stream()
                .filter(f -> f.code() == code)
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " has vanished"));
    }

    /** Entered as it should not be it fails; left out it is not known. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            nullValues = "-",
            value = {
                "SHELL_VACUUM       | thickness: 3 mm            | thickness: 1 mm         | ', shell: {thickness: 1 mm, material: stainless steel}' | shell",
                "VALVE_DIFFERENCE   | greatest difference: 60 kPa | greatest difference: 20 kPa | ',\\n                   greatest difference: 20 kPa' | greatest difference",
                "VALVE_TORQUE       | torque: 120 N.m            | torque: 400 N.m         | ' torque: 400 N.m,'           | torque",
                "VALVE_TORQUE       | torque: 120 N.m            | torque: 400 N.m         | ' motor: 3/4 hp,'             | motor",
                "VALVE_TIP_SPEED    | speed: 15 rpm              | speed: 80 rpm           | 'rotor: 250 mm, '             | rotor",
                "VALVE_THROAT       | throat: 250 mm             | throat: 60 mm           | ' throat: 60 mm,'             | throat",
                "ARMS_LOAD          | arms: 40 kg                | arms: 2 kg              | '        arms: 2 kg\\n'        | arms",
                "ARMS_LOAD          | empty: 2.5 kg              | empty: 45 kg            | '      empty: 45 kg\\n'        | empty",
                "SPOUT_REACH        | spout: 0.45 m              | spout: 0.1 m            | '      spout: 0.1 m\\n'        | spout",
                "HEADROOM           | headroom: 1.3 m            | headroom: 0.9 m         | '        headroom: 0.9 m\\n'   | headroom",
                "NECK_SEAL          | neck seal: {pressure: 4 psi | neck seal: {pressure: 12 psi | '        neck seal: {pressure: 12 psi, volume: 4 L}\\n' | neck seal",
                "CONTAINER_LOAD     | safe working load: 500 kg  | safe working load: 200 kg | '      safe working load: 200 kg\\n' | safe working load",
                "SETTLED_LOAD       | safe working load: 500 kg  | safe working load: 280 kg | ' tapped density: 700 kg/m3,' | tapped density",
                "LEVEL_PROBE_PLACE  | level probe: {place: rear  | level probe: {place: left | ' inlet: {place: left, low edge: 0.95 m},' | place",
                "LEVEL_PROBE_HEIGHT | height: 0.7 m              | height: 2.3 m           | ', height: 2.3 m'             | height",
                "LEVEL_PROBE_HEIGHT | elements down to: 1.2 m    | elements down to: 0.6 m | ' elements down to: 0.6 m,'   | elements down to",
                "LEVEL_PROBE_HEIGHT | low edge: 0.95 m           | low edge: 0.5 m         | ', low edge: 0.5 m'           | low edge",
                "HOLD_UP            | elements down to: 1.2 m    | elements down to: 0.06 m | ' elements down to: 0.06 m,' | elements down to",
                "FILTER_TEMPERATURE | fibre: polyester           | temperature: 150 degC, fibre: polyester | ' fibre: polyester,' | fibre",
                "SAFETY_FILTER_FLOW | greatest: 420 scfm         | greatest: 100 scfm      | ', greatest: 100 scfm'        | greatest",
                "INFLATION_PRESSURE | pressure: 15 mbar          | pressure: 0.1 mbar      | ', pressure: 0.1 mbar'        | pressure",
                "SOUND_AT_ONE_METRE | discharge sound: 100 dBA   | discharge sound: 112 dBA | ' discharge sound: 112 dBA,' | discharge sound",
                "SOUND_AT_ONE_METRE | casing sound: 88 dBA       | casing sound: 99 dBA    | ' casing sound: 99 dBA,'      | casing sound",
            })
    void what_fails_as_entered_is_not_known_once_it_is_left_out(
            FindingCode code, String good, String bad, String entry, String toEnter) {
        String failing = with(bakery, good, bad);
        assertThat(worst(failing, code).fails()).as("entered").isTrue();
        String left = entry.substring(1, entry.length() - 1).replace("\\n", "\n");
        Finding open = worst(with(failing, left, ""), code);
        assertThat(open.unjudged()).as("left out: " + open).isTrue();
        assertThat(open.derivation().steps().get(0).formula()).contains(toEnter);
    }

    /** The share that fills without inflation: 80 % of the bag do not last, and neither is the whole of it taken without a word. */
    @Test
    void a_bag_that_fills_short_by_nobody_knows_how_much_does_not_last_by_its_whole_volume() {
        String plain = with(bakery, "        inflation: {flow: 150 m3/h, pressure: 15 mbar, motor: 1/4 hp}\n", "");
        assertThat(worst(plain, FindingCode.CONTAINER_LIFE).fails()).isTrue();
        String open = plain.replaceFirst("      fill without inflation: 80 %[^\n]*\n", "");
        assertThat(open).isNotEqualTo(plain);
        assertThat(worst(open, FindingCode.CONTAINER_LIFE).unjudged()).isTrue();
        // what not even the whole volume lasts fails whatever fills
        String longer = with(open, "container life: 4.5 d", "container life: 30 d");
        assertThat(worst(longer, FindingCode.CONTAINER_LIFE).fails()).isTrue();
    }

    @Test
    void exposure_without_the_background_is_not_known_unless_it_is_too_much_already() {
        String asked = with(bakery, "  sound at 1 m: 85 dBA", "  daily exposure: 80 dBA");
        assertThat(worst(asked, FindingCode.DAILY_EXPOSURE).holds()).isTrue();
        String open = with(asked, "background: 70 dBA, ", "");
        assertThat(worst(open, FindingCode.DAILY_EXPOSURE).unjudged()).isTrue();
        String loud = with(open, "elsewhere: 76 dBA", "elsewhere: 90 dBA");
        assertThat(worst(loud, FindingCode.DAILY_EXPOSURE).fails()).isTrue();
    }

    /** A panel of type 12 does not do in Class II Division 1 nor under a hose, whoever classified the area. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "  classified by: owner's area drawing, invented\\n | classified by",
                "  area class: Class II Div 1\\n                    | area class",
                "  enclosure: \"12\"\\n                             | enclosure",
            })
    void a_panel_whose_area_or_type_is_left_out_is_not_passed(String entry, String toEnter) {
        String panel = bakery.replaceFirst(
                "  area class: .*\n  enclosure: .*\n", "  area class: Class II Div 1\n  enclosure: \"12\"\n");
        assertThat(worst(panel, FindingCode.PANEL_AREA).fails()).isTrue();
        assertThat(worst(panel, FindingCode.PANEL_EXPOSURE).fails()).isTrue();
        String open = with(panel, "  " + entry.replace("\\n", "\n"), "");
        Finding area = worst(open, FindingCode.PANEL_AREA);
        assertThat(area.unjudged()).isTrue();
        assertThat(area.derivation().steps().get(0).formula()).contains(toEnter);
        assertThat(worst(open, FindingCode.PANEL_EXPOSURE).holds()).isFalse();
    }
}
