package dev.brinebook.answer.resin;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.SaltEfficiencyQuantity;
import dev.brinebook.api.quantity.WaterPerCapacityQuantity;
import dev.brinebook.resin.EfficiencyLine;
import dev.brinebook.wording.Message;
import java.util.List;

@About("A published line between efficient and wasteful softening, and how the softener stands to it.")
public record EfficiencyLineAnswer(
        @Property(value = "Name of the line.", example = "\"california2002\"") String line,
        @Property("Whether it is met, not met, or not applicable because of what starts the regenerations. Whether the law asks"
                + " for it depends on the place and on when the softener was put in: californiaClock is for appliances in"
                + " place before 1980 in the areas that the law names.")
        EfficiencyLine.Standing standing,
        @Property("Least salt efficiency that it asks for.") SaltEfficiencyQuantity leastSaltEfficiency,
        @Property(value = "Most regeneration water that it allows.", optional = "when it names none")
        WaterPerCapacityQuantity mostWater,
        @Property("What it is missed by; empty when met.") List<EfficiencyLine.Shortfall> missedBy) {

    /** Every line, with its source told below {@code pointer}. */
    public static List<EfficiencyLineAnswer> of(List<EfficiencyLine.Verdict> verdicts, AnswerUnits units, String pointer,
            Explanation explanation) {
        verdicts.stream().map(verdict -> verdict.line().sourceKey()).distinct().forEach(key ->
                explanation.because(pointer, Message.of("computed efficiency against the published line"), key));
        explanation.because(pointer, Message.of("californiaClock is the line of the law for appliances started by a clock that were"
                + " in place before 1980 in the areas that it names; for any other softener it is a yardstick only"),
                "CA-HSC-116785");
        return verdicts.stream().map(verdict -> new EfficiencyLineAnswer(verdict.line().code(), verdict.standing(),
                units.saltEfficiency(verdict.line().minSaltEfficiencyGramsPerGram()),
                verdict.line().maxWaterLitresPerKilogram().isPresent()
                        ? units.waterPerCapacity(verdict.line().maxWaterLitresPerKilogram().getAsDouble()) : null,
                verdict.shortfalls())).toList();
    }
}
