// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.Exact;
import dev.brinebook.regeneration.Cycle.BrineDraw;
import dev.brinebook.regeneration.CycleStep.Kind;
import dev.brinebook.resin.Backwash;
import dev.brinebook.resin.Brining;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.Salt;
import dev.brinebook.water.WaterProperties;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Works out the steps of a regeneration from the bed, the water, the salt and its dose.
 *
 * <p>Where the guides give a band, the default is its frugal end: 8 minutes of backwash, one bed volume of slow rinse,
 * three of fast rinse. With them a cubic foot of resin at 8 to 10 lb of salt and 10 to 15 °C takes 62 to 65 US gallons;
 * 25 to 65 are usual.
 *
 * @param bed the resin in its tank
 * @param salt what it is regenerated with
 * @param saltDoseGrams salt of one regeneration, for the whole bed
 * @param waterTemperatureCelsius water that backwashes the bed
 * @param brineTankTemperatureCelsius brine over its salt
 * @param flows what the hardware fixes
 * @param secondBackwash whether a second backwash follows the brine
 */
public record CycleDesign(ResinBed bed, Salt salt, double saltDoseGrams, double waterTemperatureCelsius,
        double brineTankTemperatureCelsius, CycleFlows flows, boolean secondBackwash) {

    /** Upper limit of the input, about 31 lb/ft³: a setting found on site may be worse than any table covers. */
    public static final double MAX_SALT_DOSE_GRAMS_PER_LITRE = 500;
    public static final double MIN_SALT_DOSE_GRAMS_PER_LITRE = 10;

    /** Low end of [CP-CYCLE]. */
    public static final double BACKWASH_MINUTES = 8;
    /** In the band of 2 to 5; 10 lb/ft³ and the slow rinse then take the 60 minutes of [CP-CYCLE]. */
    public static final double ASSUMED_BRINE_BED_VOLUMES_PER_HOUR = 2.5;
    /** Refill flow controls are often half a US gallon per minute. */
    public static final double ASSUMED_REFILL_GALLONS_PER_MINUTE = 0.5;
    /** The same in litres. */
    public static final double ASSUMED_REFILL_LITRES_PER_MINUTE = ASSUMED_REFILL_GALLONS_PER_MINUTE * Exact.US_GALLON_LITRES;

    public CycleDesign {
        Objects.requireNonNull(salt, "salt");
        Guard.within(saltDoseGrams / bed.resinLitres(), MIN_SALT_DOSE_GRAMS_PER_LITRE, MAX_SALT_DOSE_GRAMS_PER_LITRE,
                "saltDoseGrams per litre of resin");
        Guard.within(waterTemperatureCelsius, WaterProperties.MIN_TEMPERATURE_CELSIUS,
                WaterProperties.MAX_TEMPERATURE_CELSIUS, "waterTemperatureCelsius");
        Guard.within(brineTankTemperatureCelsius, Brine.MIN_TEMPERATURE_CELSIUS, Brine.MAX_TEMPERATURE_CELSIUS,
                "brineTankTemperatureCelsius");
        Objects.requireNonNull(flows, "flows");
    }

    /** The steps with their minutes and water. */
    public Cycle cycle() {
        double targetFlow = bed.flowLitresPerMinute(Backwash.velocityMetresPerHour(bed.bead(),
                Backwash.TARGET_EXPANSION_SHARE, waterTemperatureCelsius));
        BackwashFlow backwash = flows.backwash(targetFlow);
        double drainFlow = backwash.litresPerMinute();
        BrineDraw brine = brineDraw();
        List<CycleStep> steps = new ArrayList<>();
        steps.add(plain(Kind.BACKWASH, BACKWASH_MINUTES, drainFlow));
        steps.add(brineAndSlowRinse(brine));
        if (secondBackwash) {
            steps.add(plain(Kind.SECOND_BACKWASH, BACKWASH_MINUTES, drainFlow));
        }
        double fastRinseFlow = Math.min(flows.fastRinseLitresPerMinute().orElse(drainFlow), flows.mostLitresPerMinute());
        steps.add(plain(Kind.FAST_RINSE, Brining.ASSUMED_FAST_RINSE_BED_VOLUMES * bed.resinLitres() / fastRinseFlow,
                fastRinseFlow));
        steps.add(refill());
        return new Cycle(steps, Backwash.expansionShare(bed.bead(), bed.velocityMetresPerHour(drainFlow),
                waterTemperatureCelsius), targetFlow, backwash, brine);
    }

    /**
     * Water that dissolves a dose: what the refill has to put into the brine tank.
     *
     * <pre>V = m / (s ρ)</pre>
     *
     * <p>V litres; m salt, g; s kg of salt per kg of water; ρ density of water, kg/m³ (grams per litre).
     * Validity: enough salt and time in the tank to saturate the water; 0 to 37.8 °C.
     * Source: [SALT-INSTITUTE] or [CRC-KCL] by way of {@link Brine}; [KELL-1975].
     * Deviation: none.
     */
    public static double refillLitres(Salt salt, double saltDoseGrams, double brineTankTemperatureCelsius) {
        return Guard.positive(saltDoseGrams, "saltDoseGrams")
                / saltGramsPerLitreWater(salt, brineTankTemperatureCelsius);
    }

    /** Salt that the water of a refill dissolves: the inverse of {@link #refillLitres}, to judge a setting found. */
    public static double saltGramsOfRefill(Salt salt, double refillLitres, double brineTankTemperatureCelsius) {
        return Guard.positive(refillLitres, "refillLitres")
                * saltGramsPerLitreWater(salt, brineTankTemperatureCelsius);
    }

    /** Salt that a litre of water dissolves, more than a litre of the brine holds. */
    public static double saltGramsPerLitreWater(Salt salt, double temperatureCelsius) {
        return Brine.saltKilogramsPerKilogramWater(salt, temperatureCelsius)
                * WaterProperties.densityKilogramsPerCubicMetre(temperatureCelsius);
    }

    private BrineDraw brineDraw() {
        double saturatedLitres = saltDoseGrams / 1000
                / Brine.saltKilogramsPerLitreBrine(salt, brineTankTemperatureCelsius);
        return flows.brineSuctionLitresPerMinute().isPresent() && flows.brineLitresPerMinute().isPresent()
                ? drawn(saturatedLitres, flows.brineSuctionLitresPerMinute().getAsDouble(),
                        flows.brineLitresPerMinute().getAsDouble())
                : drawnAtAssumedStrength(saturatedLitres);
    }

    /**
     * The suction sets the time; what passes the bed meanwhile is that brine with water, as {@link BrineMixing} has it. Where
     * drain or supply pass less, an injector keeps its ratio and draws less of both.
     */
    private BrineDraw drawn(double saturatedLitres, double knownSuctionLitresPerMinute, double knownFlowLitresPerMinute) {
        double flowLitresPerMinute = Math.min(knownFlowLitresPerMinute, flows.mostLitresPerMinute());
        double suctionLitresPerMinute = knownSuctionLitresPerMinute * flowLitresPerMinute / knownFlowLitresPerMinute;
        double minutes = saturatedLitres / suctionLitresPerMinute;
        BrineMixing.Mixture mixture = flows.injector().mixing().mix(salt,
                Injector.suctionShare(suctionLitresPerMinute, flowLitresPerMinute), brineTankTemperatureCelsius, waterTemperatureCelsius);
        return new BrineDraw(saltDoseGrams, saturatedLitres, mixture.saltShare(), minutes * flowLitresPerMinute,
                minutes * flowLitresPerMinute * mixture.waterShare(), bed.bedVolumesPerHour(flowLitresPerMinute),
                minutes, slowRinseLitres() / flowLitresPerMinute);
    }

    /**
     * The injector adds water by weight: what 10 % brine weighs less what the saturated brine does. A suction that is
     * known alone then sets the flow, as the flow does the suction.
     */
    private BrineDraw drawnAtAssumedStrength(double saturatedLitres) {
        double share = Brining.DILUTED_SALT_SHARE;
        double dilutedLitres = saltDoseGrams / share / Brine.densityKilogramsPerCubicMetre(salt, share);
        double motiveGrams = saltDoseGrams / share
                - saltDoseGrams / Brine.saturatedSaltShare(salt, brineTankTemperatureCelsius);
        double known = flows.brineSuctionLitresPerMinute().isPresent()
                ? flows.brineSuctionLitresPerMinute().getAsDouble() * dilutedLitres / saturatedLitres
                : flows.brineLitresPerMinute().orElse(
                        bed.flowLitresPerMinuteOfBedVolumes(ASSUMED_BRINE_BED_VOLUMES_PER_HOUR));
        double flow = Math.min(known, flows.mostLitresPerMinute());
        return new BrineDraw(saltDoseGrams, saturatedLitres, share, dilutedLitres,
                motiveGrams / WaterProperties.densityKilogramsPerCubicMetre(waterTemperatureCelsius),
                bed.bedVolumesPerHour(flow), dilutedLitres / flow, slowRinseLitres() / flow);
    }

    private CycleStep brineAndSlowRinse(BrineDraw brine) {
        return new CycleStep(Kind.BRINE_AND_SLOW_RINSE, brine.drawMinutes() + brine.slowRinseMinutes(),
                brine.dilutedLitres() / brine.drawMinutes(), brine.motiveLitres() + slowRinseLitres(),
                brine.dilutedLitres() + slowRinseLitres());
    }

    private CycleStep refill() {
        double litres = refillLitres(salt, saltDoseGrams, brineTankTemperatureCelsius);
        double flow = flows.refillOnSiteLitresPerMinute();
        return new CycleStep(Kind.REFILL, litres / flow, flow, litres, 0);
    }

    private static CycleStep plain(Kind kind, double minutes, double flowLitresPerMinute) {
        double litres = minutes * flowLitresPerMinute;
        return new CycleStep(kind, minutes, flowLitresPerMinute, litres, litres);
    }

    private double slowRinseLitres() {
        return Brining.SLOW_RINSE_BED_VOLUMES * bed.resinLitres();
    }
}
