package dustwright.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.lang.reflect.Array;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Runs every {@code @example} line of the engine's formulas, {@code name(arguments) = value} or {@code name(arguments).part() = value}:
 * the value must be right to half a unit of its last printed place, or to one part in ten thousand.
 */
class ExampleLinesTest {
    private static final Path SOURCES = Path.of("src/main/java");
    private static final Pattern EXAMPLE =
            Pattern.compile("@example (\\w+)\\(([^)]*)\\)(?:\\.(\\w+)\\(\\))? = ([-+0-9.eE]+)");

    @TestFactory
    Stream<DynamicTest> every_example_line_gives_its_value() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
                for (String line : Files.readAllLines(file)) {
                    if (line.contains("@example")) {
                        String told = line.substring(line.indexOf("@example"));
                        tests.add(dynamicTest(file.getFileName() + " " + told, () -> run(typeOf(file), told)));
                    }
                }
            }
        }
        assertThat(tests).hasSizeGreaterThan(80);
        return tests.stream();
    }

    private static Class<?> typeOf(Path file) throws ClassNotFoundException {
        String name = SOURCES.relativize(file).toString().replaceAll("\\.java$", "");
        return Class.forName(name.replace('/', '.').replace('\\', '.'));
    }

    private static void run(Class<?> type, String told) throws ReflectiveOperationException {
        Matcher example = EXAMPLE.matcher(told);
        if (!example.find()) {
            fail("%s: not of the form name(arguments) = value: %s", type, told);
        }
        String[] arguments =
                example.group(2).isBlank() ? new String[0] : example.group(2).split(", *");
        Object result = call(type, example.group(1), arguments);
        if (example.group(3) != null) {
            result = result.getClass().getMethod(example.group(3)).invoke(result);
        }
        double expected = Double.parseDouble(example.group(4));
        double lastPlace = new BigDecimal(example.group(4)).ulp().doubleValue();
        double allowed = Math.max(0.501 * lastPlace, 1e-4 * Math.abs(expected));
        double actual = ((Number) result).doubleValue();
        assertThat(Math.abs(actual - expected)).as("%s gives %s", told, actual).isLessThanOrEqualTo(allowed);
    }

    private static Object call(Class<?> type, String name, String... arguments) throws ReflectiveOperationException {
        for (Method method : type.getDeclaredMethods()) {
            boolean fits = method.isVarArgs()
                    ? arguments.length >= method.getParameterCount() - 1
                    : arguments.length == method.getParameterCount();
            if (method.getName().equals(name)
                    && Modifier.isStatic(method.getModifiers())
                    && Modifier.isPublic(method.getModifiers())
                    && fits) {
                try {
                    return method.invoke(null, values(method, arguments));
                } catch (InvocationTargetException e) {
                    throw new IllegalStateException(name + Arrays.toString(arguments), e.getCause());
                }
            }
        }
        throw new NoSuchMethodException(type + " has no public static " + name + " of " + arguments.length);
    }

    private static Object[] values(Method method, String... arguments) {
        Class<?>[] types = method.getParameterTypes();
        Object[] values = new Object[types.length];
        for (int n = 0; n < types.length; n++) {
            if (method.isVarArgs() && n == types.length - 1) {
                Object rest = Array.newInstance(types[n].getComponentType(), arguments.length - n);
                for (int m = n; m < arguments.length; m++) {
                    Array.set(rest, m - n, value(types[n].getComponentType(), arguments[m]));
                }
                values[n] = rest;
            } else {
                values[n] = value(types[n], arguments[n]);
            }
        }
        return values;
    }

    private static Object value(Class<?> type, String text) {
        if (type.isEnum()) {
            return Arrays.stream(type.getEnumConstants())
                    .filter(each -> ((Enum<?>) each).name().equals(text.toUpperCase(Locale.ROOT)))
                    .findFirst()
                    .orElseThrow();
        }
        return type == int.class ? (Object) Integer.valueOf(text) : (Object) Double.valueOf(text);
    }
}
