// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.field;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.caution.Caution;
import dev.brinebook.field.FieldFinding;
import dev.brinebook.field.FieldKnown;
import dev.brinebook.field.FieldQuantity;
import dev.brinebook.field.FieldQuestion;
import dev.brinebook.field.FieldResults;
import dev.brinebook.field.FieldSetup;
import dev.brinebook.field.NextMeasurement;
import dev.brinebook.field.ReadingCode;
import dev.brinebook.field.SaltDissolving;
import dev.brinebook.field.Witnesses;
import dev.brinebook.measurement.Measured;
import dev.brinebook.measurement.Reading;
import dev.brinebook.measurement.Readings;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.request.field.BrineTankRequest;
import dev.brinebook.request.field.FieldMeasurementsRequest;
import dev.brinebook.request.field.FieldReadings;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.text.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/** Readings taken at a softener, reduced to what they say of it. */
public final class ReduceFieldMeasurements {

    public static final Operation<FieldMeasurementsRequest, FieldMeasurementsAnswer> OPERATION = new Operation<>(
            "reduceFieldMeasurements", "/v1/field-measurements", "Calculate from readings taken at a softener",
            "Choose this when somebody measured at the softener: bucket and watch, tape and dip rod, hydrometer, gauge, drop tests, salt "
                    + "bought, litres until it ran hard. It gives flows, the salt really given in each regeneration, the volume and "
                    + "remaining capacity of the resin, the raw water that passes by, and the lift of the bed, each with its "
                    + "uncertainty by propagation and by simulation. It states what contradicts what, which measurement to take next, "
                    + "and gives the softener and the site to send to reviewSettings or assess. For readings of a water meter over "
                    + "days choose readMeter. With Accept text/html or application/pdf it returns a sheet to print.",
            FieldMeasurementsRequest.class, FieldMeasurementsAnswer.class, ReduceFieldMeasurements::answer, List.of(),
            List.of("well-family", "apartment")).answeringIn(MeasurementSheet.forms(ReduceFieldMeasurements::answer));

    private static final String OWN = "OWN-ASSUMPTION";

    private ReduceFieldMeasurements() {
    }

    private static FieldMeasurementsAnswer answer(FieldMeasurementsRequest request) {
        AnswerUnits units = HomeCountry.units(request.units(), request.country());
        Explanation explanation = units.explanation();
        Readings<ReadingCode> readings = FieldReadings.of(request, units, explanation);
        FieldSetup setup = FieldReadings.setup(request, explanation);
        explanation.resolve(request.seed(), Resolved.of("/seed", PreferencesRequest.DEFAULT_SEED, null).byDefault(OWN));
        FieldResults results = FieldResults.of(readings, setup, PreferencesRequest.seed(request.seed()));
        Map<FieldFinding, OptionalDouble> found = FieldFinding.of(results, new FieldKnown(setSalt(request.softener()),
                request.brine() != null));
        MeasuredSoftener softener = MeasuredSoftener.of(request, results, units);
        softener.leftOut().forEach(finding -> found.put(finding, OptionalDouble.empty()));
        List<NextMeasurement.Advice> next = NextMeasurement.of(results);
        explanation.caution(Caution.POWER_AND_PRESSURE, Caution.LOCAL_CODE_DECIDES);
        assumeMethod(units, explanation);
        Reading voids = readings.get(ReadingCode.VOID_SHARE);
        return new FieldMeasurementsAnswer(summary(results, found, next, units), FieldFlows.of(results, units),
                FieldSalt.of(results, units), FieldBrine.of(results, voids == null
                ? BrineTankRequest.SaltForm.PELLETS.voidShare() : voids.value(), units), FieldResin.of(results, units),
                FieldBed.of(results, units), found.entrySet().stream().map(finding -> FieldFindingLine.of(finding.getKey(),
                finding.getValue(), units)).toList(), next.stream().map(advice -> NextMeasurementLine.of(advice, units)).toList(),
                softener.request(), MeasuredSoftener.site(request.site(), results, found.keySet()),
                explanation.cautions(), explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    /** What no property of the request sets. */
    private static void assumeMethod(AnswerUnits units, Explanation explanation) {
        explanation.assume(Resolved.of("saltPieces", units.length(SaltDissolving.ASSUMED_PIECE_METRES)).byDefault(OWN));
        explanation.assume(Resolved.of("uncertaintyOfTheUnknown", 100 * FieldQuestion.ASSUMED_UNKNOWN_SPREAD, "%").byDefault(OWN));
        explanation.assume(Resolved.of("uncertaintyThatIsEnough", 100 * NextMeasurement.ASSUMED_ENOUGH_SPREAD, "%").byDefault(OWN));
        explanation.assume(Resolved.of("agreementOfSimulation", 100 * Measured.ASSUMED_AGREEMENT_SHARE, "%").byDefault(OWN));
    }

    /** Salt of a regeneration by the setting, kg, as far as it is given. */
    private static OptionalDouble setSalt(SoftenerRequest softener) {
        if (softener == null) {
            return OptionalDouble.empty();
        }
        if (softener.saltPerRegeneration() != null) {
            return OptionalDouble.of(softener.saltPerRegeneration().inBase());
        }
        return softener.saltDose() == null || softener.resinVolume() == null ? OptionalDouble.empty()
                : OptionalDouble.of(softener.saltDose().inBase() * softener.resinVolume().inBase() / 1000);
    }

    private static Message summary(FieldResults results, Map<FieldFinding, OptionalDouble> found, List<NextMeasurement.Advice> next,
            AnswerUnits units) {
        List<Message> sentences = new ArrayList<>();
        sentences.add(first(results, units));
        sentences.add(found.isEmpty() ? Message.of("field.nothingContradicts") : units.saying(found.keySet().iterator().next()));
        next.stream().findFirst().ifPresent(advice -> sentences.add(units.saying(advice.measurement())));
        return Message.sentences(sentences);
    }

    /** What was asked for most: the salt, else the resin, else the drain flow. */
    private static Message first(FieldResults results, AnswerUnits units) {
        Optional<Measured<ReadingCode>> salt = results.salt().flatMap(Witnesses::mean);
        if (salt.isPresent()) {
            return Message.of("field.saltGiven", Text.of(units.mass(salt.get().value())), span(salt.get(), units::mass));
        }
        if (results.salt().isPresent()) {
            return Message.of("field.saltContradicts", results.salt().get().quantities().size());
        }
        if (results.bestResin().isPresent()) {
            Measured<ReadingCode> resin = results.bestResin().get();
            return Message.of("field.resinHeld", Text.of(units.resinVolume(resin.value())), span(resin, units::resinVolume));
        }
        Optional<Measured<ReadingCode>> drain = results.of(FieldQuantity.DRAIN_FLOW);
        return drain.isPresent() ? Message.of("field.drainTakes", Text.of(units.flow(drain.get().value())),
                span(drain.get(), units::flow)) : withoutDrain(results, units);
    }

    private static Message withoutDrain(FieldResults results, AnswerUnits units) {
        Optional<Measured<ReadingCode>> refill = results.of(FieldQuantity.REFILL_FLOW);
        Optional<Measured<ReadingCode>> raw = results.of(FieldQuantity.RAW_SHARE);
        if (refill.isPresent()) {
            return Message.of("field.refillTakes", Text.of(units.flow(refill.get().value())), span(refill.get(), units::flow));
        }
        return raw.isPresent() ? Message.of("field.rawWaterShare", Text.measure(Text.whole(100 * Math.max(0, raw.get().value())), "%"))
                : Message.of("field.quantitiesMeasured", results.measured().size());
    }

    private static Message span(Measured<ReadingCode> measured, DoubleFunction<Quantity<?>> shown) {
        return Text.span(shown.apply(MeasuredValue.low(measured)), shown.apply(measured.simulated().high()));
    }
}
