package dustwright.engine;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.bagging.BagAir;
import dustwright.engine.bagging.BagFill;
import dustwright.engine.conveying.DustClass;
import dustwright.engine.finding.Side;
import dustwright.engine.interlock.SetPoint;
import dustwright.engine.producer.BeltDrive;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.QuantityText;
import dustwright.engine.quantity.Unit;
import dustwright.engine.quantity.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What a plant file states in the unit in which a limit is quoted equals that limit: neither above nor below it. */
class FixedLimitsTest {
    /** Figures of units: exact definitions (NIST SP 811) that stand in {@code Units} alone. */
    private static final Pattern FACTOR = Pattern.compile(
            "(?<![0-9.])(0\\.3048|0\\.0254|0\\.45359|6894\\.7|3386\\.3|249\\.0|745\\.69|16\\.018)[0-9]*");

    private static double typed(String text, Dimension dimension) {
        return ((QuantityText.Read.Good) QuantityText.read(text, List.of(dimension)))
                .quantity()
                .si();
    }

    static Stream<Arguments> limits() {
        return Stream.of(
                Arguments.of("9 psi", Dimension.GAUGE_PRESSURE, BagAir.GREATEST_SEAL_Pa),
                Arguments.of("4 psi", Dimension.GAUGE_PRESSURE, BagAir.USUAL_SEAL_Pa),
                Arguments.of("2 psi", Dimension.GAUGE_PRESSURE, BagAir.LEAST_SEAL_Pa),
                Arguments.of("2 ft/min", Dimension.VELOCITY, BagAir.USUAL_SOCK_LEAST_mPerS),
                Arguments.of("4 ft/min", Dimension.VELOCITY, BagAir.USUAL_SOCK_GREATEST_mPerS),
                Arguments.of("55 gal", Dimension.VOLUME, BagFill.DRUM_55_GALLON_m3),
                Arguments.of("6500 ft/min", Dimension.VELOCITY, BeltDrive.GREATEST_BELT_mPerS),
                Arguments.of(
                        "3500 ft/min",
                        Dimension.VELOCITY,
                        DustClass.AVERAGE_INDUSTRIAL.minimum().si()),
                Arguments.of(
                        "10 inH2O",
                        Dimension.PRESSURE_DIFFERENCE,
                        SetPoint.FILTER_HIGH.drop().si()),
                Arguments.of(
                        "6 inH2O",
                        Dimension.PRESSURE_DIFFERENCE,
                        SetPoint.CLEANING_DUE.drop().si()),
                Arguments.of(
                        "3 inH2O",
                        Dimension.PRESSURE_DIFFERENCE,
                        SetPoint.SAFETY_FILTER_HIGH.drop().si()),
                Arguments.of(
                        "0.5 inH2O",
                        Dimension.PRESSURE_DIFFERENCE,
                        SetPoint.FILTER_TORN.drop().si()));
    }

    @ParameterizedTest
    @MethodSource("limits")
    void a_limit_typed_in_its_own_unit_is_the_limit(String text, Dimension dimension, double limit) {
        for (Side side : Side.values()) {
            assertThat(side.margin(typed(text, dimension), limit)).isZero();
        }
    }

    /** Of every two units of one kind: 7 of the one, said in the other, is the same limit; a part in a thousand million is not. */
    @Test
    void a_limit_said_in_another_unit_is_the_same_limit() {
        for (Unit one : Units.all()) {
            for (Unit other : Units.of(one.dimension())) {
                double limit = one.toSi(7);
                double value = other.toSi(other.fromSi(limit));
                assertThat(Side.AT_LEAST.margin(value, limit))
                        .as(one + " " + other)
                        .isZero();
                assertThat(Side.AT_MOST.margin(value, limit))
                        .as(one + " " + other)
                        .isZero();
                assertThat(Side.AT_MOST.margin(limit * (1 + 1e-9), limit)).isNegative();
                assertThat(Side.AT_LEAST.margin(limit * (1 - 1e-9), limit)).isNegative();
            }
        }
    }

    @Test
    void the_factor_of_a_unit_stands_in_one_place() throws IOException {
        List<String> again = new ArrayList<>();
        for (String module : List.of("engine", "plantfile", "documents", "studio", "cli")) {
            try (Stream<Path> files = Files.walk(Path.of("..", module, "src", "main", "java"))) {
                for (Path file :
                        files.filter(f -> f.toString().endsWith(".java")).toList()) {
                    boolean may = file.endsWith("Units.java") || file.toString().contains("audit");
                    for (String line : may ? List.<String>of() : Files.readAllLines(file)) {
                        if (!line.strip().startsWith("*")
                                && FACTOR.matcher(line).find()) {
                            again.add(file.getFileName() + ": " + line.strip());
                        }
                    }
                }
            }
        }
        assertThat(again).isEmpty();
    }
}
