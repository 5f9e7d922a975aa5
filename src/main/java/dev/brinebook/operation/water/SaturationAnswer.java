// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.TemperatureQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.water.chemistry.CarbonateSystem;
import dev.brinebook.water.report.Saturation;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

@SchemaDescription("What the water does to lime in one state. A guide to scale, not to lead or copper.")
public record SaturationAnswer(
        @Property("The state of the water.") State state,
        @Property("Its temperature.") TemperatureQuantity temperature,
        @Property(value = "Its pH.", min = 0, max = 14, example = "7.9") BigDecimal ph,
        @Property(value = "Saturation index of calcite: 0 in equilibrium, above it scale can form.", optional = "without calcium",
                unit = "log units", example = "0.65") BigDecimal calciteIndex,
        @Property(value = "Stability index: below 6 scale, above 7 none.", optional = "without calcium", unit = "pH", example = "6.6")
        BigDecimal stabilityIndex,
        @Property(value = "Calcite that can precipitate, as CaCO3. Negative for what can dissolve.", optional = "without an equilibrium")
        ConcentrationQuantity precipitationPotential,
        @Property("Free carbon dioxide.") ConcentrationQuantity carbonDioxide,
        @Property(value = "Carbon dioxide that attacks lime, as a marble test finds it: one mole for each mole of calcite that it can "
                + "dissolve.", optional = "without an equilibrium")
        ConcentrationQuantity aggressiveCarbonDioxide) {

    /** States of a water on its way to the tap. */
    public enum State {
        RAW, RAW_HOT, SOFTENED, SOFTENED_HOT, NEUTRALISED
    }

    /** What remains of the search for an equilibrium, in any unit. */
    private static final double NOTHING = 1e-6;

    static List<SaturationAnswer> of(Saturation saturation, AnswerUnits units) {
        List<SaturationAnswer> states = new ArrayList<>();
        states.add(of(State.RAW, saturation.raw(), units));
        add(states, State.RAW_HOT, saturation.raw().at(Saturation.ASSUMED_HOT_CELSIUS), units);
        states.add(of(State.SOFTENED, saturation.softened(), units));
        add(states, State.SOFTENED_HOT, saturation.softened().at(Saturation.ASSUMED_HOT_CELSIUS), units);
        add(states, State.NEUTRALISED, saturation.neutralised(), units);
        return states;
    }

    private static void add(List<SaturationAnswer> to, State state, Optional<CarbonateSystem> system, AnswerUnits units) {
        system.ifPresent(water -> to.add(of(state, water, units)));
    }

    private static SaturationAnswer of(State state, CarbonateSystem water, AnswerUnits units) {
        return new SaturationAnswer(state, units.temperature(water.celsius()), Rounding.answer(water.ph()),
                rounded(water.calciteIndex()), rounded(water.stabilityIndex()), mgPerL(water.precipitationPotentialMgPerL(), units),
                units.concentration(water.carbonDioxideMgPerL()), mgPerL(water.aggressiveCarbonDioxideMgPerL(), units));
    }

    private static BigDecimal rounded(OptionalDouble value) {
        return value.isPresent() ? Rounding.answer(cleared(value.getAsDouble())) : null;
    }

    private static ConcentrationQuantity mgPerL(OptionalDouble value, AnswerUnits units) {
        return value.isPresent() ? units.concentration(cleared(value.getAsDouble())) : null;
    }

    private static double cleared(double value) {
        return Math.abs(value) < NOTHING ? 0 : value;
    }
}
