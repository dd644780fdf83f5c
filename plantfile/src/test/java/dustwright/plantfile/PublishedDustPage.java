package dustwright.plantfile;

import dustwright.engine.finding.Confidence;
import dustwright.engine.hazard.DustCard.Stated;
import dustwright.engine.hazard.PublishedDust;
import dustwright.engine.quantity.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/** The library of published dusts as two tables of markdown; bold where a value was read in a reprint. */
final class PublishedDustPage {
    private PublishedDustPage() {}

    static String markdown() {
        StringBuilder text = new StringBuilder(
                "| `explodes like` | median µm | Kst bar m/s | Pmax bar | MEC g/m³ |\n| --- | --- | --- | --- | --- |\n");
        for (String name : PublishedDust.severities()) {
            PublishedDust dust = PublishedDust.severity(name);
            row(
                    text,
                    name,
                    dust.size_um().replace("<", "below "),
                    cell(dust.kst(), 1e-5, 0),
                    cell(dust.greatest(), 1e-5, 0),
                    cell(dust.explosible(), 1000, 0));
        }
        text.append("\n| `ignites like` | MIE mJ | MIT °C | LIT °C | MEC g/m³ |\n| --- | --- | --- | --- | --- |\n");
        for (String name : PublishedDust.sensitivities()) {
            PublishedDust dust = PublishedDust.sensitivity(name);
            row(
                    text,
                    name,
                    cell(dust.ignition(), 1000, 0),
                    cell(dust.cloud(), 1, -273.15),
                    cell(dust.layer(), 1, -273.15),
                    cell(dust.explosible(), 1000, 0));
        }
        return text.toString();
    }

    private static void row(StringBuilder text, String... cells) {
        text.append("| ").append(String.join(" | ", cells)).append(" |\n");
    }

    private static String cell(Optional<? extends Stated<? extends Quantity>> value, double factor, double offset) {
        return value.map(v -> {
                    String number = BigDecimal.valueOf(v.value().si() * factor + offset)
                            .round(new MathContext(4))
                            .stripTrailingZeros()
                            .toPlainString();
                    return v.source().confidence() == Confidence.PUBLISHED ? "**" + number + "**" : number;
                })
                .orElse("");
    }
}
