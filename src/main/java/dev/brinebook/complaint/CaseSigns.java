// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.complaint;

import dev.brinebook.field.BedLift;
import dev.brinebook.field.FieldQuantity;
import dev.brinebook.field.FieldResults;
import dev.brinebook.field.ReadingCode;
import dev.brinebook.household.DayVariation;
import dev.brinebook.measurement.Measured;
import dev.brinebook.measurement.Reading;
import dev.brinebook.measurement.Readings;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.ExistingSoftener;
import dev.brinebook.softener.Setting;
import dev.brinebook.water.WaterCautions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Signs that follow from readings, and from what is known of the case without going there. */
public final class CaseSigns {

    /**
     * Long-run variance of daily use over the square of its mean, of a household that is away now and then. Source: [DAIAD].
     *
     * <pre>v = (p (1 − p)(1 + ρ)/(1 − ρ) + p CV²) / p²,   p = 0.938, ρ = 0.659, CV = 0.45</pre>
     */
    static final double VARIANCE_OF_USE = 0.535;
    /** Standard uncertainty of a count at both ends, each a triangle of ± 1. */
    private static final double COUNT_UNCERTAINTY = Math.sqrt(1.0 / 6);

    private final CaseDesign design;
    private final List<Observation> signs = new ArrayList<>();

    private CaseSigns(CaseDesign design) {
        this.design = design;
    }

    /** What readings show. */
    public static List<Observation> ofReadings(FieldResults results, Readings<ReadingCode> readings, CaseDesign design, ResinBed bed,
            DesignConditions duty) {
        CaseSigns all = new CaseSigns(design);
        all.addHardness(results, readings, duty.water().hardnessUncertaintyMgPerL());
        all.add(Sign.SUCTION, results.of(FieldQuantity.BRINE_DRAW_FLOW));
        all.add(Sign.DRAIN_FLOW, results.of(FieldQuantity.DRAIN_FLOW));
        all.add(Sign.METER_SHARE, results.of(FieldQuantity.METER_SHARE));
        all.add(Sign.SALT_BY_BOOKS, results.of(FieldQuantity.SALT_BY_BOOKS));
        all.add(Sign.BREAKTHROUGH, results.capacity());
        all.add(Sign.RESIN_VOLUME, results.of(FieldQuantity.RESIN_BY_GEOMETRY));
        if (readings.has(List.of(ReadingCode.REFILL_MINUTES))) {
            double minutes = readings.get(ReadingCode.REFILL_MINUTES).value();
            results.of(FieldQuantity.REFILL_FLOW).ifPresent(flow -> all.signs.add(design.observed(Sign.REFILL_WATER,
                    minutes * flow.value(), minutes * flow.standardUncertainty())));
        }
        results.of(FieldQuantity.PRESSURE_LOSS).ifPresent(loss -> results.of(FieldQuantity.SERVICE_FLOW).ifPresent(flow -> {
            double clean = BedLift.dropKilopascals(bed.resinLitres(), bed.tankDiameterMetres(), flow.value(),
                    duty.water().temperatureCelsius());
            all.signs.add(design.observed(Sign.PRESSURE_LOSS, loss.value() / clean, loss.standardUncertainty() / clean));
        }));
        return List.copyOf(all.signs);
    }

    private void add(Sign sign, Optional<Measured<ReadingCode>> measured) {
        measured.ifPresent(known -> signs.add(design.observed(sign, known.value(), known.standardUncertainty())));
    }

    private void addHardness(FieldResults results, Readings<ReadingCode> readings, double testUncertainty) {
        if (!readings.has(List.of(ReadingCode.RAW_HARDNESS, ReadingCode.OUTLET_HARDNESS))) {
            return;
        }
        Reading raw = readings.get(ReadingCode.RAW_HARDNESS);
        Reading outlet = readings.get(ReadingCode.OUTLET_HARDNESS);
        double share = outlet.value() / raw.value();
        signs.add(design.observed(Sign.OUTLET_SHARE, share, StrictMath.hypot(outlet.standardUncertainty(),
                share * raw.standardUncertainty()) / raw.value()));
        signs.add(design.observed(Sign.RAW_CHANGE, raw.value(), StrictMath.hypot(raw.standardUncertainty(), testUncertainty)));
        add(Sign.RAW_SHARE, results.of(FieldQuantity.RAW_SHARE));
        if (results.of(FieldQuantity.RAW_SHARE).isEmpty() && readings.has(List.of(ReadingCode.TAP_HARDNESS))) {
            signs.add(Observation.none(Sign.RAW_SHARE));
        }
    }

    /** What the case itself shows: its settings, as far as they were read, and its water. */
    public static List<Observation> ofCase(ExistingSoftener found, DesignConditions duty, CaseDesign design, boolean settingsRead) {
        CaseSigns all = new CaseSigns(design);
        duty.water().ironMgPerL().ifPresent(iron -> all.signs.add(Observation.of(Sign.IRON_IN_WATER,
                iron > WaterCautions.IRON_STAINS_MG_PER_L)));
        ExistingSoftener.Meter meter = found.meter();
        if (!found.policy().byClock() && settingsRead) {
            all.signs.add(design.observed(Sign.METER_SETTING, meter.meterLitres(), meter.meterLitres()
                    * duty.water().hardnessUncertaintyMgPerL() / duty.loadMgPerL()));
        }
        OptionalDouble reserve = found.policy().fixedReserveLitres();
        double day = duty.demand().means().meanLitres();
        if (reserve.isPresent() && !found.unknown().contains(Setting.RESERVE) && day > 0) {
            all.signs.add(design.observed(Sign.HARD_NIGHTS, dayAbove(reserve.getAsDouble(), day, duty.demand().model().cv()), 0));
        }
        return List.copyOf(all.signs);
    }

    /**
     * Probability that a day takes more than a reserve.
     *
     * <pre>P = 1 − F(reserve / m),   F gamma of mean 1 and scatter CV</pre>
     *
     * <p>m mean of a day at home, L, above 0; CV its scatter.
     * Validity: as {@link DayVariation#shareOfDaysBelow}.
     * Source: [DAIAD] for gamma.
     * Deviation: days alike.
     */
    public static double dayAbove(double reserveLitres, double meanLitres, double cv) {
        return 1 - DayVariation.shareOfDaysBelow(cv, reserveLitres / meanLitres);
    }

    /** Regenerations counted over some days. */
    public static Observation counted(int regenerations, int days, CaseDesign design) {
        double rate = (double) regenerations / days;
        return design.observed(Sign.REGENERATION_RATE, rate, StrictMath.hypot(rate * Math.sqrt(VARIANCE_OF_USE / days),
                COUNT_UNCERTAINTY / days));
    }

    /** Litres by the display over some days. */
    public static Observation metered(double litres, int days, CaseDesign design) {
        return design.observed(Sign.METERED_USE, litres / days, litres / days * Math.sqrt(VARIANCE_OF_USE / days));
    }
}
