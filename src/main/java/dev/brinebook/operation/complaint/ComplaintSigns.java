// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.complaint;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.complaint.CaseDesign;
import dev.brinebook.complaint.CaseSigns;
import dev.brinebook.complaint.Observation;
import dev.brinebook.complaint.Sign;
import dev.brinebook.field.FieldQuantity;
import dev.brinebook.field.FieldResults;
import dev.brinebook.field.RawWaterShare;
import dev.brinebook.field.ReadingCode;
import dev.brinebook.measurement.Measured;
import dev.brinebook.measurement.Reading;
import dev.brinebook.measurement.Readings;
import dev.brinebook.request.field.FieldMeasurementsRequest;
import dev.brinebook.request.field.FieldReadings;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.ExistingSoftener;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a request says of each sign. */
final class ComplaintSigns {

    /** Standard uncertainty of the days that people remember, as a share, and at least in days. */
    private static final double ASSUMED_DAYS_SHARE = 0.15;
    private static final double ASSUMED_DAYS = 0.5;
    /** Standard uncertainty of a chloride test, as a share, and at least in mg/L. */
    private static final double ASSUMED_CHLORIDE_SHARE = 0.1;
    private static final double ASSUMED_CHLORIDE_MG_PER_L = 15;
    /** Readings are corrected to it; it is that of the water test here. */
    private static final String TEMPERATURE = "/waterTemperature";

    private final Map<Sign, Observation> signs = new EnumMap<>(Sign.class);
    private final CaseDesign design;

    private ComplaintSigns(CaseDesign design) {
        this.design = design;
    }

    /** Each sign once; what was looked at goes before what readings or the case show. */
    static List<Observation> of(ComplaintDiagnosisRequest request, ExistingSoftener found, DesignConditions duty, CaseDesign design,
            AnswerUnits units, Explanation explanation) {
        ComplaintSigns all = new ComplaintSigns(design);
        boolean settingsRead = found.meter().hardnessMgPerL().isPresent() || found.meter().capacityGrams().isPresent();
        all.addAll(CaseSigns.ofCase(found, duty, design, settingsRead));
        all.addReadings(request, found, duty, units, explanation);
        all.addCounts(request.counts());
        all.addNumbers(request);
        if (request.looks() != null) {
            request.looks().answered().forEach((sign, yes) -> all.signs.put(sign, Observation.of(sign, yes)));
        }
        return List.copyOf(all.signs.values());
    }

    private void addAll(List<Observation> observations) {
        observations.forEach(one -> signs.put(one.sign(), one));
    }

    private void addReadings(ComplaintDiagnosisRequest request, ExistingSoftener found, DesignConditions duty, AnswerUnits units,
            Explanation explanation) {
        FieldMeasurementsRequest given = request.readings();
        Explanation own = units.explanation();
        Readings<ReadingCode> readings = FieldReadings.of(given, units, own);
        FieldResults results = FieldResults.of(readings, FieldReadings.setup(given, own), PreferencesRequest.seed(request.seed()));
        addAll(CaseSigns.ofReadings(results, readings, design, found.setup().softener().bed(), duty));
        if (request.brine() != null) {
            Optional<Measured<ReadingCode>> degrees = results.of(FieldQuantity.BRINE_DEGREES_AT_SCALE);
            degrees.ifPresent(known -> put(Sign.BRINE_STRENGTH, known.value() / 100, known.standardUncertainty() / 100));
        }
        if (request.hotHardness() != null) {
            Reading raw = readings.get(ReadingCode.RAW_HARDNESS);
            Reading tap = readings.get(ReadingCode.TAP_HARDNESS);
            if (RawWaterShare.isKnown(raw.value(), tap.value(), raw.standardUncertainty(), tap.standardUncertainty())) {
                put(Sign.HOT_SHARE, RawWaterShare.of(raw.value(), tap.value(), request.hotHardness().inBase()),
                        Math.sqrt(2) * tap.standardUncertainty() / (raw.value() - tap.value()));
            }
        }
        own.assumptions().stream().filter(assumed -> !assumed.place().equals(TEMPERATURE)).forEach(explanation::assume);
    }

    private void addCounts(CountsRequest counts) {
        if (counts != null && counts.regenerations() != null) {
            addAll(List.of(CaseSigns.counted(counts.regenerations(), counts.days(), design)));
        }
        if (counts != null && counts.meteredWater() != null) {
            addAll(List.of(CaseSigns.metered(counts.meteredWater().inBase(), counts.days(), design)));
        }
    }

    private void addNumbers(ComplaintDiagnosisRequest request) {
        if (request.softDays() != null) {
            double days = request.softDays().doubleValue();
            put(Sign.SOFT_DAYS, days, Math.max(ASSUMED_DAYS, ASSUMED_DAYS_SHARE * days));
        }
        if (request.chlorideExcess() != null) {
            double chloride = request.chlorideExcess().inBase();
            put(Sign.CHLORIDE_EXCESS, chloride, Math.max(ASSUMED_CHLORIDE_MG_PER_L, ASSUMED_CHLORIDE_SHARE * chloride));
        }
        if (request.drainInService() != null) {
            signs.put(Sign.DRAIN_RUNS_IN_SERVICE, Observation.of(Sign.DRAIN_RUNS_IN_SERVICE, request.drainInService().inBase() > 0));
        }
    }

    private void put(Sign sign, double value, double uncertainty) {
        signs.put(sign, design.observed(sign, value, uncertainty));
    }
}
