// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.verdict;

import dev.brinebook.answer.softener.ControllerQuantities;
import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.softener.Readiness;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Improvement;
import dev.brinebook.verdict.Obstacle;
import dev.brinebook.verdict.Rung;
import dev.brinebook.verdict.Step;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;

@SchemaDescription("An option for this household. An option without figures cannot be taken, and states why.")
public record RungAnswer(
        @Property(value = "The step.", example = "\"setRight\"") Step step,
        @Property(value = "The same in words.", example = "\"correct the settings\"") Message name,
        @Property(value = "Name of the improvement.", optional = "unless the step is improve", example = "\"secondTank\"")
        Improvement improvement,
        @Property(value = "Name of the product from your list.", optional = "unless products were given and the step is replace",
                example = "\"S-150\"") String goods,
        @Property(value = "Whether it can be taken and meets the service standard and the end point of hardness.", example = "true")
        Boolean serves,
        @Basis(formula = "formula.verdict.trial336ChildrenEczema", source = "SWET-2011")
        @Property(value = "Consequences beyond the figures.", optional = "unless it is not to soften",
                example = "\"Without softening, 20 gpg of hardness stays in the water.\"") Message note,
        @Property("Obstacles: why it cannot be taken or does not meet the standard.") List<Obstacle> obstacles,
        @Property(value = "The obstacles in words.", example = "[\"The controller is already metered.\"]", eachOf = Obstacle.class)
        List<Message> reasons,
        @Property(value = "Settings with this option.", optional = "when it cannot be taken",
                example = "\"every 3 days, 9 lb/ft3 of salt\"") Message settings,
        @Property(value = "Expected regenerations per year.", min = 0, optional = "when it cannot be taken", example = "91")
        BigDecimal regenerations,
        @Property(value = "Expected salt per year.", optional = "when it cannot be taken") MassQuantity salt,
        @Property(value = "Expected regeneration water per year.", optional = "when it cannot be taken") VolumeQuantity water,
        @Property(value = "Expected hard days per year.", min = 0, unit = "days a year", optional = "when it cannot be taken",
                example = "0.8") BigDecimal hardDays,
        @Property(value = "Share of the softened water that is hard.", min = 0, max = 100, unit = "%",
                optional = "when it cannot be taken", example = "0.2") BigDecimal hardWaterPercent,
        @Property(value = "Cost of salt and regeneration water per year, at today's prices.", optional = "when it cannot be taken")
        Money costPerYear,
        @Basis(formula = "formula.common.costPricesConditionsMet", source = "NIST-HB135")
        @Property(value = "First cost, including the prices of unmet conditions, less any rebate.",
                optional = "when no price is given") Money firstCost,
        @Property(value = "Unmet conditions without a price, not included in the first cost.",
                optional = "when it includes all, or is not given", example = "[\"outlet\"]", eachOf = Readiness.Condition.class)
                List<Message> firstCostLacks,
        @Property(value = "Benefit over the cheapest lower step that meets the standard, or over the existing softener if none does.",
                optional = "for the first step, and when it cannot be taken") IncrementAnswer overBelow,
        @Property(value = "Benefit over the existing softener with its present settings.",
                optional = "for the existing softener itself, and when it "
                + "cannot be taken")
        IncrementAnswer overAsFound) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    static RungAnswer of(Rung rung, Message note, Currency currency, ControllerQuantities set) {
        AnswerUnits units = set.units();
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
                SettingsInWords.of(option.setup(), set),
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
