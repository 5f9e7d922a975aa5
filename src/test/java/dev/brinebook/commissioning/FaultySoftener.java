// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.commissioning;

import dev.brinebook.quantity.FlowUnit;
import dev.brinebook.regeneration.Brine;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.resin.Salt;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumMap;
import java.util.Map;

/** The first regeneration of the worked case with a fault, in steps of time: what each reading would be. */
final class FaultySoftener {

    private static final double STEP_MINUTES = 0.01;
    private static final double SUCTION = FlowUnit.GPM.toBase(0.35);
    private static final double BRINE_FLOW = FlowUnit.GPM.toBase(0.8);
    private static final double REFILL = FlowUnit.GPM.toBase(0.5);
    private static final double DRAIN = FlowUnit.GPM.toBase(3);
    private static final double VOIDS = 0.38;
    /** Less than this share of the salt leaves an exhausted bed exhausted. */
    private static final double LEAST_SALT_SHARE = 0.2;

    private final Map<String, Double> parts;
    private final Map<CommissioningCheck, Double> readings = new EnumMap<>(CommissioningCheck.class);
    private final FirstRegeneration sound = Worked.regeneration();
    private double drawnLitres;
    private double drawMinutes;

    FaultySoftener(Map<String, Double> parts) {
        this.parts = parts;
        refill();
        flows();
        draw();
        rinse();
        serve();
    }

    Map<CommissioningCheck, Double> readings() {
        return readings;
    }

    private double part(String name) {
        return parts.getOrDefault(name, 1.0);
    }

    private void refill() {
        readings.put(CommissioningCheck.REFILL_FLOW, REFILL * part("refill"));
        readings.put(CommissioningCheck.REFILL_WATER, REFILL * part("refill") * Worked.REFILL_MINUTES * part("minutes"));
        readings.put(CommissioningCheck.BRINE_STRENGTH, 100 * part("strength"));
    }

    private void flows() {
        readings.put(CommissioningCheck.BACKWASH_FLOW, DRAIN * part("drain"));
        readings.put(CommissioningCheck.FAST_RINSE_FLOW, DRAIN * part("drain"));
        double motive = (BRINE_FLOW - SUCTION) * Math.min(1, part("drain"));
        readings.put(CommissioningCheck.SLOW_RINSE_FLOW, motive + SUCTION * part("suction"));
    }

    /** The level falls until the brine of the refill is gone, or until the step ends. */
    private void draw() {
        double litres = readings.get(CommissioningCheck.REFILL_WATER)
                * CycleDesign.saltGramsPerLitreWater(Salt.SODIUM_CHLORIDE, Worked.CELSIUS) / 1000
                / Brine.saltKilogramsPerLitreBrine(Salt.SODIUM_CHLORIDE, Worked.CELSIUS);
        double step = sound.step(CycleStep.Kind.BRINE_AND_SLOW_RINSE).orElseThrow().minutes();
        while (drawnLitres < litres && drawMinutes < step) {
            drawnLitres += Math.min(litres - drawnLitres, SUCTION * part("suction") * STEP_MINUTES);
            drawMinutes += STEP_MINUTES;
        }
        readings.put(CommissioningCheck.DRAW_MINUTES, drawMinutes);
        FirstRegeneration.BrineTank tank = sound.brineTank().orElseThrow();
        readings.put(CommissioningCheck.BRINE_LEVEL_FALL, drawnLitres / tank.shape().litres(tank.widthMetres(), 0, tank.voidShare(), 1, 1));
    }

    /** What enters the tank leaves it when as much has followed as room and voids hold. */
    private void rinse() {
        double held = 1000 * sound.softener().bed().areaSquareMetres() * sound.softener().tankHeightMetres()
                - (1 - VOIDS) * sound.softener().bed().resinLitres();
        double set = sound.step(CycleStep.Kind.BRINE_AND_SLOW_RINSE).orElseThrow().minutes();
        double step = Math.min(set, drawMinutes) + Math.max(0, set - drawMinutes) * part("slow");
        double fast = sound.step(CycleStep.Kind.FAST_RINSE).orElseThrow().minutes() * part("rinse");
        Deque<double[]> inTank = new ArrayDeque<>();
        double litres = 0;
        double last = 0;
        for (double minute = 0; minute < step + fast; minute += STEP_MINUTES) {
            double flow = minute < step ? readings.get(CommissioningCheck.SLOW_RINSE_FLOW) : DRAIN * part("drain");
            inTank.add(new double[] {flow * STEP_MINUTES, minute < drawMinutes ? part("strength") : 0});
            litres += flow * STEP_MINUTES;
            while (litres > held) {
                double[] out = inTank.remove();
                litres -= out[0];
                last = out[1];
            }
        }
        double brine = 60_000 * last;
        readings.put(CommissioningCheck.RINSE_CHLORIDE, brine);
        readings.put(CommissioningCheck.RINSE_CONDUCTIVITY, brine * 3.57);
    }

    private void serve() {
        double salt = drawnLitres * part("strength") / sound.brineLitres();
        double inner = parts.getOrDefault("inner", 0.0);
        double bypass = parts.getOrDefault("bypass", 0.0);
        double outlet = salt < LEAST_SALT_SHARE ? Worked.RAW_MG_PER_L : inner * Worked.RAW_MG_PER_L;
        readings.put(CommissioningCheck.OUTLET_HARDNESS, outlet);
        readings.put(CommissioningCheck.TAP_ABOVE_OUTLET, bypass * (Worked.RAW_MG_PER_L - outlet));
        readings.put(CommissioningCheck.METER_COUNT, 100 * part("meter"));
        readings.put(CommissioningCheck.PRESSURE_LOSS, sound.bedLossKilopascals() * part("loss") * part("resin"));
    }
}
