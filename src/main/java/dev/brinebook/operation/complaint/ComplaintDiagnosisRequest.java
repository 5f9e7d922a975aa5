// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.complaint;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.complaint.Symptom;
import dev.brinebook.request.field.BreakthroughRunRequest;
import dev.brinebook.request.field.BrineTestRequest;
import dev.brinebook.request.field.BucketRequest;
import dev.brinebook.request.field.DropTestsRequest;
import dev.brinebook.request.field.FieldMeasurementsRequest;
import dev.brinebook.request.field.MeterCheckRequest;
import dev.brinebook.request.field.PressureTestRequest;
import dev.brinebook.request.field.ResinTankRequest;
import dev.brinebook.request.field.SaltBooksRequest;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.softener.CaseRequest;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SiteRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.request.water.WaterRequest;
import dev.brinebook.text.Message;
import dev.brinebook.water.Hardness;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;

@SchemaDescription("A complaint about a softener: its symptoms, the case, and what was seen and measured so far.")
public record ComplaintDiagnosisRequest(
        @Property(value = "What the people say is wrong.", required = true, minItems = 1,
                maxItems = ComplaintDiagnosisRequest.MOST_SYMPTOMS, eachOf = Symptom.class) List<Symptom> symptoms,
        @Property(value = "Symptoms that were asked for and are not there.",
                maxItems = ComplaintDiagnosisRequest.MOST_SYMPTOMS, eachOf = Symptom.class) List<Symptom> notSeen,
        @Property(value = "Days from a regeneration until it runs hard, where it does.", min = 0, max = 365, unit = "days",
                example = "4.5", fallback = "unknown") BigDecimal softDays,
        @Property("What was looked at, by yes or no.") LooksRequest looks,
        @Property("What the controller counted.") CountsRequest counts,
        @Property("Salt bought and regenerations counted.") SaltBooksRequest books,
        @Property("Drop tests at raw water, outlet and tap.") DropTestsRequest hardness,
        @Property(value = "Hardness of hot water. Needs hardness with tap.", min = 0, max = Hardness.MAX_MG_PER_L, unit = "mg/L",
                fallback = "not tested") HardnessQuantity hotHardness,
        @Property("Flow at the end of the drain line in backwash, after a minute.") BucketRequest drain,
        @Property(value = "Flow to the drain in service, 0 if none.", min = 0, max = 100, unit = "L/min", fallback = "not measured")
        FlowQuantity drainInService,
        @Property("Flow of the brine refill, caught from the brine line.") BucketRequest refill,
        @Property(value = "Minutes of the brine refill.", min = 0.1, max = 240, unit = "minutes", example = "6",
                fallback = "the refill minutes of the softener; else the water of the refill is not known") BigDecimal refillMinutes,
        @Property("Flow that the injector draws from a bucket by the brine line.") BucketRequest brineDraw,
        @Property(value = "What it drew.", defaultCode = "brine", example = "\"water\"")
        FieldMeasurementsRequest.DrawnLiquid brineDrawLiquid,
        @Property("Hydrometer in the brine.") BrineTestRequest brine,
        @Property("Check of the meter against a bucket.") MeterCheckRequest meterCheck,
        @Property("Run until it ran hard. Needs hardness.") BreakthroughRunRequest run,
        @Property("Tape and dip rod in the resin tank.") ResinTankRequest resinTank,
        @Property("Flow of the pressure test, at open taps. Without it the pressure cannot be compared.") BucketRequest serviceFlow,
        @Property("Pressures in service and in bypass.") PressureTestRequest pressure,
        @Property(value = "Chloride in the first water after a regeneration, above that of raw water.", min = 0, max = 20_000,
                unit = "mg/L", fallback = "not tested") ConcentrationQuantity chlorideExcess,
        @Property(value = "Whether raw water is unsafe to drink, so that raw water past the softener or its treatment can hurt.",
                fallback = "not unsafe", example = "false") Boolean unsafeRawWater,
        @Property("Weights of the classes of symptoms.") SymptomWeightsRequest weights,
        @Property(value = "The water test.", required = true) WaterRequest water,
        @Property(value = "The household.", required = true) HouseholdRequest household,
        @Property(value = "The softener as it is set and built, with its present control, minutes and flows. Do not send the one that "
                + "reduceFieldMeasurements returns: a fault would be compared with itself.", required = true) SoftenerRequest softener,
        @Property("Preferences: the reserve and the capacity table.") PreferencesRequest preferences,
        @Property(value = "Conditions seen on site.", fallback = "none") SiteRequest site,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units,
        @Property(value = "Seed of the simulation of uncertainties. The same seed gives the same answer.", min = 0,
                max = PreferencesRequest.MAX_SEED, byDefault = PreferencesRequest.DEFAULT_SEED, example = "1") Long seed)
        implements CaseRequest, Checked {

    /** Each of {@link Symptom} once. */
    static final int MOST_SYMPTOMS = 17;

    @Override
    public void check(Violations at) {
        CaseRequest.requireControl(softener, at);
        readings().check(at);
        if (symptoms != null && notSeen != null && !new HashSet<>(symptoms).stream().filter(notSeen::contains).toList().isEmpty()) {
            at.add("notSeen", Code.INCONSISTENT, Message.of("problem.complaint.seenAndNotSeen"));
        }
        if (hotHardness != null && (hardness == null || hardness.tap() == null)) {
            at.add("hardness", Code.MISSING, Message.of("problem.complaint.hotNeedsTap"));
        }
    }

    /** The readings, as the operation that reduces them takes them. */
    FieldMeasurementsRequest readings() {
        return new FieldMeasurementsRequest(drain, refill, refillMinutes, brineDraw, brineDrawLiquid, serviceFlow, meterCheck, resinTank,
                null, brine, pressure, hardness, run, books, water == null ? null : water.temperature(), softener, site,
                household == null ? null : household.country(), units, seed);
    }
}
