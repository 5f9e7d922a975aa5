// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Alternatives;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.Days;
import dev.brinebook.household.Demand;
import dev.brinebook.request.prices.SaltBag;
import dev.brinebook.request.softener.ControlRequest.Kind;
import dev.brinebook.request.softener.PlusMinus;
import dev.brinebook.savings.SavingsPeriod;
import dev.brinebook.text.Message;
import dev.brinebook.water.Hardness;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

@SchemaDescription("What was read of a softener in a period. Give the regenerations with their salt, or the bags, or both.")
@Alternatives({"water", "meter"})
@Alternatives(value = {"regenerations + saltPerRegeneration", "bags"}, required = true, several = true)
public record SavingsPeriodRequest(
        @Property(value = "First day of the period.", required = true, example = "\"2026-01-01\"") LocalDate from,
        @Property(value = "Day after the last one: 7 to 1096 days later.", required = true, example = "\"2026-04-01\"") LocalDate to,
        @Property(value = "The kind of control in the period.", required = true, example = "\"clock\"") Kind control,
        @Property(value = "Water that passed the softener in the period, by a meter.", min = SavingsPeriodRequest.MIN_WATER_LITRES,
                max = SavingsPeriodRequest.MAX_WATER_LITRES, unit = "L", fallback = "not read, so that the level of use is uncertain")
        VolumeQuantity water,
        @Property("Readings of the water meter, in place of water.") MeteredPeriodRequest meter,
        @Property(value = "Regenerations counted, at most one per two hours.", min = 1, max = 13_000, example = "23")
        Integer regenerations,
        @Property(value = "Salt of each regeneration, best as reduceFieldMeasurements finds it.", min = 0.05, max = 200, unit = "kg")
        MassQuantity saltPerRegeneration,
        @Property(value = "How far it may be off either way: at most a quarter of it.", min = 0, aboveMin = true, max = 50, unit = "kg",
                fallback = "5.2 % of it, a standard uncertainty of 3 %") MassQuantity saltPerRegenerationPlusMinus,
        @Property(value = "Bags of salt put in, or bought where the levels are not known.", min = 0, max = 10_000, example = "5")
        BigDecimal bags,
        @Property(value = "The bag, and its price in the period.", fallback = "that of prices") SaltBag saltBag,
        @Property(value = "Salt in the tank at the start. Give it with saltAtEnd.", min = 0, max = 5_000, unit = "kg",
                fallback = "unknown, so that two bags at a time make the salt used uncertain") MassQuantity saltAtStart,
        @Property(value = "Salt in the tank at the end. Give it with saltAtStart.", min = 0, max = 5_000, unit = "kg",
                fallback = "as saltAtStart") MassQuantity saltAtEnd,
        @Property(value = "How far each of these may be off either way.", min = 0.05, max = 200, unit = "kg",
                byDefault = SavingsPeriodRequest.LEVEL_PLUS_MINUS_POUNDS, defaultUnit = "lb") MassQuantity saltLevelPlusMinus,
        @Property(value = "Hardness of the raw water. It matters where it moved and a meter was set to it.", min = 1,
                max = Hardness.MAX_MG_PER_L, unit = "mg/L", fallback = "the same in both periods") HardnessQuantity hardness,
        @Property(value = "Hardness at the outlet, by a test in the period.", min = 0, max = Hardness.MAX_MG_PER_L, unit = "mg/L",
                fallback = "not tested, which is stated as a finding") HardnessQuantity outletHardness,
        @Property(value = "Water of each regeneration.", min = 0, max = 5_000, unit = "L",
                fallback = "unknown, so that the answer has no water saved") VolumeQuantity waterPerRegeneration) implements Checked {

    static final double MIN_WATER_LITRES = 1;
    static final double MAX_WATER_LITRES = Demand.MAX_MEASURED_DAY_LITRES * SavingsPeriod.MAX_DAYS;
    static final double LEVEL_PLUS_MINUS_POUNDS = 10;
    private static final int MOST_REGENERATIONS_PER_DAY = 12;

    @Override
    public void check(Violations at) {
        if (from != null && to != null) {
            checkDates(at);
        }
        PlusMinus.check(saltPerRegenerationPlusMinus, saltPerRegeneration, PlusMinus.MOST_SHARE, "saltPerRegenerationPlusMinus", at);
        if ((saltAtStart == null) != (saltAtEnd == null)) {
            at.add(saltAtStart == null ? "saltAtStart" : "saltAtEnd", Code.MISSING, Message.of("problem.savings.bothLevels"));
        }
        if (bags == null && saltAtStart != null) {
            at.add("bags", Code.MISSING, Message.of("problem.savings.bagsWithLevels"));
        }
        if (bags == null && saltBag != null && regenerations == null) {
            at.add("bags", Code.MISSING, Message.of("problem.savings.bagsWithLevels"));
        }
    }

    private void checkDates(Violations at) {
        long days = days();
        if (from.getYear() < Days.MIN_YEAR || to.getYear() >= Days.MAX_YEAR) {
            at.add(from.getYear() < Days.MIN_YEAR ? "from" : "to", Code.OUT_OF_RANGE,
                    Message.of("problem.savings.year", Integer.toString(Days.MIN_YEAR), Integer.toString(Days.MAX_YEAR - 1)));
        } else if (days < SavingsPeriod.MIN_DAYS || days > SavingsPeriod.MAX_DAYS) {
            at.add("to", Code.OUT_OF_RANGE, Message.of("problem.savings.days", SavingsPeriod.MIN_DAYS, SavingsPeriod.MAX_DAYS));
        } else if (regenerations != null && regenerations > MOST_REGENERATIONS_PER_DAY * days) {
            at.add("regenerations", Code.INCONSISTENT, Message.of("problem.savings.regenerations",
                    MOST_REGENERATIONS_PER_DAY * days));
        } else if (meter != null && !at.at("meter").here()) {
            checkReadings(at.at("meter").at("readings"));
        }
        if (days >= SavingsPeriod.MIN_DAYS && PlusMinus.isWhole(water) && water.inBase() > Demand.MAX_MEASURED_DAY_LITRES * days) {
            at.add("water", Code.INCONSISTENT, Message.of("problem.savings.waterOfDays"));
        }
    }

    /** Readings of another time do not say how much water this period used. */
    private void checkReadings(Violations at) {
        LocalDate first = from.minusDays(SavingsPeriod.MIN_DAYS);
        LocalDate last = to.plusDays(SavingsPeriod.MIN_DAYS);
        for (int i = 0; i < meter.readings().size(); i++) {
            LocalDate day = meter.readings().get(i).toDomain(i + 1).at().toLocalDate();
            if (day.isBefore(first) || day.isAfter(last)) {
                at.at(i).add("at", Code.INCONSISTENT, Message.of("problem.savings.readingOutside", first, last));
                return;
            }
        }
    }

    long days() {
        return ChronoUnit.DAYS.between(from, to);
    }
}
