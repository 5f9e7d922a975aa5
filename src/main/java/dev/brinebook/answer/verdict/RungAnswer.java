package dev.brinebook.answer.verdict;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.verdict.Improvement;
import dev.brinebook.verdict.Obstacle;
import dev.brinebook.verdict.Rung;
import dev.brinebook.verdict.Step;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;

@About("A step of the ladder in this household. A step without figures cannot be taken, and says why.")
public record RungAnswer(
        @Property(value = "The step.", example = "\"setRight\"") Step step,
        @Property(value = "The same in words.", example = "\"correct the settings\"") Message name,
        @Property(value = "Which improvement.", optional = "unless the step is improve", example = "\"secondTank\"")
        Improvement improvement,
        @Property(value = "Which of the shop's goods, by its name.", optional = "unless goods were given and the step is replace",
                example = "\"S-150\"") String goods,
        @Property(value = "Whether it can be taken and keeps to the service standard and the end point of hardness.", example = "true")
        Boolean serves,
        @Property(value = "What it means beyond the figures.", optional = "unless it is not to soften",
                example = "\"Without softening 20 gpg stays in the water.\"") Message note,
        @Property("Why it cannot be taken, or what it lacks.") List<Obstacle> obstacles,
        @Property(value = "The obstacles in words.", example = "[\"the controller is metered already\"]") List<Message> reasons,
        @Property(value = "What is set then.", optional = "when it cannot be taken",
                example = "\"every 3 days, 9 lb/ft3 of salt\"") Message settings,
        @Property(value = "Regenerations to be expected of a year.", min = 0, optional = "when it cannot be taken", example = "91")
        BigDecimal regenerations,
        @Property(value = "Salt to be expected of a year.", optional = "when it cannot be taken") MassQuantity salt,
        @Property(value = "Regeneration water to be expected of a year.", optional = "when it cannot be taken") VolumeQuantity water,
        @Property(value = "Hard days to be expected of a year.", min = 0, unit = "days a year", optional = "when it cannot be taken",
                example = "0.8") BigDecimal hardDays,
        @Property(value = "Share of the softened water that is hard.", min = 0, max = 100, unit = "%",
                optional = "when it cannot be taken", example = "0.2") BigDecimal hardWaterPercent,
        @Property(value = "Salt and regeneration water of a year at today's prices.", optional = "when it cannot be taken")
        Money costPerYear,
        @Property(value = "What it costs to have, with the prices of conditions that are not met, less any rebate.",
                optional = "when it is not given") Money firstCost,
        @Property(value = "What the first cost lacks: conditions that are not met and have no price.",
                optional = "when it lacks nothing, or is not given", example = "[\"outlet\"]") List<Message> firstCostLacks,
        @Property(value = "What it is worth over the cheapest step below it that serves, or over the softener as found where none does.",
                optional = "for the first step, and when it cannot be taken") IncrementAnswer overBelow,
        @Property(value = "What it is worth over the softener as found.", optional = "for that, and when it cannot be taken")
        IncrementAnswer overAsFound) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    static RungAnswer of(Rung rung, Message note, Currency currency, AnswerUnits units) {
        Rung.Option option = rung.option().orElse(null);
        Improvement improvement = rung.what().improvement().orElse(null);
        Message name = improvement == null ? units.saying(rung.step()) : units.saying(improvement);
        String goods = rung.what().goods().orElse(null);
        List<Message> reasons = rung.obstacles().stream().map(units::saying).toList();
        if (rung.step() == Step.NONE_NEEDED) {
            return new RungAnswer(rung.step(), name, null, null, rung.obstacles().isEmpty(), note, rung.obstacles(), reasons, null,
                    BigDecimal.ZERO,
                    units.mass(0), units.volume(0), null, HUNDRED, Money.of(0, currency), Money.of(0, currency), null, null,
                    rung.overAsFound().map(increment -> IncrementAnswer.of(increment, currency)).orElse(null));
        }
        if (option == null) {
            return new RungAnswer(rung.step(), name, improvement, goods, rung.obstacles().isEmpty(), note, rung.obstacles(), reasons,
                    null, null, null, null, null, null, null, null, null, null, null);
        }
        return new RungAnswer(rung.step(), name, improvement, goods, rung.serves(), note, rung.obstacles(), reasons,
                SettingsInWords.of(option.setup(), units),
                Rounding.answer(option.year().regenerations()), units.mass(option.year().saltGrams() / 1000),
                units.volume(option.year().waterLitres()), Rounding.toThousandth(option.year().hardDays()),
                Rounding.toThousandth(100 * option.year().hardShare()), Money.of(option.costPerYear(), currency),
                option.outlay().map(outlay -> Money.of(outlay.investment(), currency)).orElse(null), lacks(option, units),
                rung.overBelow().map(increment -> IncrementAnswer.of(increment, currency)).orElse(null),
                rung.overAsFound().map(increment -> IncrementAnswer.of(increment, currency)).orElse(null));
    }

    private static List<Message> lacks(Rung.Option option, AnswerUnits units) {
        return option.outlay().isEmpty() || option.unpriced().isEmpty() ? null : option.unpriced().stream().map(units::saying).toList();
    }
}
