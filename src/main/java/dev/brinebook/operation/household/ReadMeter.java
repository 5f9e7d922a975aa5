// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.answer.household.HighDayAnswer;
import dev.brinebook.api.BodyForm;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Operation.QueryParameter;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violations;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.caution.Caution;
import dev.brinebook.household.Country;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Days;
import dev.brinebook.household.Demand;
import dev.brinebook.household.HighDay;
import dev.brinebook.household.HighDays;
import dev.brinebook.household.HouseholdFit;
import dev.brinebook.household.Meter;
import dev.brinebook.household.Meter.Kind;
import dev.brinebook.household.MeterHistory;
import dev.brinebook.household.MeteredDays;
import dev.brinebook.household.RowNote;
import dev.brinebook.household.UseChange;
import dev.brinebook.household.UseEstimate;
import dev.brinebook.household.UseModel;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.household.MeterRequest;
import dev.brinebook.request.household.OccupancyRequest;
import dev.brinebook.request.household.SeriesRequest;
import dev.brinebook.text.Message;
import java.time.DayOfWeek;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Estimates for a household from the readings of a water meter, and the forecast to send on. */
public final class ReadMeter {

    /** Rows listed with the refusal of all rows. */
    private static final int MAX_ROWS_REPORTED = 20;

    private static final BodyForm<MeterFileRequest, MeterReadingsAnswer> CSV = new BodyForm<>("text/csv",
            "Readings as CSV (RFC 4180) in UTF-8 without byte order mark: the header at,reading for a register or at,volume for "
                    + "volumes, then one row per reading. Times are written as in JSON. A value is digits with a decimal point. A row "
                    + "that cannot be read is skipped and reported by its line. 256 KiB hold more than a year of hourly readings.",
            "at,reading\r\n2026-01-01T00:00,15230.5\r\n2026-01-02T00:00,15542.0\r\n2026-01-03T00:00,15810.2\r\n",
            MeterFileRequest.class, List.of(
            QueryParameter.text("unit", "/meter/unit", "The unit of the readings: one of "
                    + String.join(", ", WireNames.all(VolumeUnit.class)) + ".", true, "gal"),
            QueryParameter.text("timeZone", "/meter/timeZone", "Time zone of the meter, by its IANA name. " + MeterRequest.UTC
                    + " by default.", false, "America/Chicago"),
            QueryParameter.number("rolloverAt", "/meter/rolloverAt", null, "Value at which the register rolls over to 0.",
                    false, "100000"),
            QueryParameter.number("intervalMinutes", "/meter/intervalMinutes", null, "Length of the interval of a volume.",
                    false, "60"),
            QueryParameter.number("people", "/people", null, "Number of residents.", false, "4"),
            QueryParameter.text("country", "/country", "Country: one of " + String.join(", ", WireNames.all(Country.class))
                    + ".", false, "germany"),
            QueryParameter.text("units", "/units", "The units of the answer: us or metric.", false, "us")),
            ReadMeter::ofFile);

    public static final Operation<MeterReadingsRequest, MeterReadingsAnswer> OPERATION = new Operation<>("readMeter",
            "/v1/meter-readings", "Convert meter readings to daily use and a forecast",
            "Choose this when a household's use was read from a water meter, as a register or as volumes, daily or more often. It "
                    + "splits the readings into days across clock changes and rollovers of the register. It lists every row that it "
                    + "repaired or skipped, and counts missing days instead of filling them. It estimates mean, scatter, weekdays and "
                    + "absence, finds a change of level, a drift or a continuous flow at night, and gives the household to send to the "
                    + "other operations. Readings can also be sent as text/csv. If only the people or a mean use are known, give them "
                    + "as household to the operation you need, such as sizeSoftener or assess.",
            MeterReadingsRequest.class, MeterReadingsAnswer.class,
            request -> answer(request.rows(), request.kind(), new MeterFileRequest(request.meter(), request.people(),
                    request.country(), request.units())), List.of(), List.of("well-family", "apartment")).taking(CSV);

    private ReadMeter() {
    }

    private static MeterReadingsAnswer ofFile(String text, MeterFileRequest settings) {
        ReadingsFile file = ReadingsFile.read(text);
        Violations violations = new Violations();
        settings.meter().check(file.kind(), violations.at("meter"));
        if (!violations.isEmpty()) {
            throw new InvalidRequest(violations.sorted());
        }
        return answer(file.rows(), file.kind(), settings);
    }

    private static MeterReadingsAnswer answer(ReadRows rows, Kind kind, MeterFileRequest asked) {
        AnswerUnits units = HomeCountry.units(asked.units(), asked.country());
        Explanation explanation = units.explanation();
        MeterHistory history = history(rows, asked.meter().toDomain(kind, "/meter", explanation), explanation);
        List<RowNote> notes = Stream.concat(rows.unread().stream(), history.notes().stream())
                .sorted(Comparator.comparingInt(RowNote::row).thenComparing(RowNote::code)).toList();
        refuseUnlessDays(rows, history, notes, units);
        MeteredDays days = history.days().orElseThrow();
        UseEstimate estimate = UseEstimate.of(days);
        Country country = asked.people() == null ? Country.UNITED_STATES
                : HomeCountry.of(asked.country(), explanation);
        MeterBasis.explain(explanation, kind, notes.size() > MeterCoverage.MAX_ROWS, asked.people(), country);
        MeteredDays like = estimate.latest(days);
        HouseholdFit fit = HouseholdFit.of(like, asked.people() == null ? OptionalDouble.empty()
                : OptionalDouble.of(asked.people() * country.usePerPersonLitres()));
        int before = (int) ChronoUnit.DAYS.between(days.firstDate(), like.firstDate());
        List<HighDay> highDays = Stream.concat(before == 0 ? Stream.of() : HighDays.of(days.until(before)).days().stream(),
                fit.highDays().stream()).toList();
        HouseholdRequest forecast = forecast(like, fit, asked.people(), units, explanation);
        if (history.nightFlow().unceasing().isPresent()) {
            explanation.caution(Caution.LEAK_SUSPECTED);
        }
        List<MeterFinding> findings = MeterFindings.of(history, estimate, highDays, asked.people(), country,
                units);
        VolumeUnit unit = units.volume(1).unit();
        return new MeterReadingsAnswer(summary(days, estimate, fit, findings, units), SeriesRequest.of(days, unit),
                MeterCoverage.of(rows.count(), notes, history, units), UseEstimates.of(estimate, units),
                highDays.stream().map(day -> HighDayAnswer.of(day, units)).toList(), asked.people() == null ? null
                        : UsualUse.of(estimate.occupiedMeanLitres(), asked.people(), country, units), forecast,
                findings, explanation.cautions(), explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static MeterHistory history(ReadRows rows, Meter meter, Explanation explanation) {
        MeterHistory history = MeterHistory.of(rows.readings(), meter);
        if (meter.kind() == Kind.VOLUME) {
            Resolved interval = Resolved.of("/meter/intervalMinutes", history.usualStep().toMinutes(), "minutes");
            explanation.assume(meter.interval().isPresent() ? interval : interval.estimated("CP-METER-READING"));
        }
        explanation.assume(Resolved.of("longestBetweenReadings", history.longestBetweenReadings().toHours(), "hours")
                .estimated("OWN-ASSUMPTION").noting(Message.of("assumed.household.hoursDaysTouchedLonger")));
        return history;
    }

    /** Rows that make no day are no answer: says which rows, as far as that helps. */
    private static void refuseUnlessDays(ReadRows rows, MeterHistory history, List<RowNote> notes, AnswerUnits units) {
        if (history.days().isPresent()) {
            return;
        }
        Message why = history.spanDays() > Days.MAX_DAYS
                ? Message.of("readMeter.wholeDaysSpanDays", history.spanDays(), Days.MAX_DAYS)
                : Message.of("readMeter.noWholeDayReadings", rows.readings().size(),
                        rows.count());
        throw new InvalidRequest(Stream.concat(Stream.of(why), notes.stream().limit(MAX_ROWS_REPORTED)
                .map(note -> rows.message(note, units)))
                .map(message -> new Violation(rows.place(), Violation.Code.IMPOSSIBLE, message)).toList());
    }

    private static HouseholdRequest forecast(MeteredDays like, HouseholdFit fit, Integer people, AnswerUnits units,
            Explanation explanation) {
        explanation.assume(Resolved.ofCode("estimatedFrom", like.firstDate().toString()).estimated("PETTITT-1979")
                .noting(Message.of("assumed.household.days")));
        explanation.assume(Resolved.inWords("meteredWaterIsIndoors", Message.of("assumed.household.allMeteredWaterTreated"))
                .byDefault("OWN-ASSUMPTION"));
        UseModel model = fit.model();
        if (Arrays.stream(like.known()).mapToDouble(like::litres).max().orElse(0) > Demand.MAX_MEASURED_DAY_LITRES
                || model.means().busiestLitres() > Demand.MAX_DAILY_USE_LITRES) {
            return null;
        }
        if (fit.cv() > DayVariation.MAX_CV) {
            explanation.assume(Resolved.of("forecastDayToDayVariation", DayVariation.MAX_CV, null).estimated("DAIAD")
                    .noting(Message.of("household.limitedHighestValueUsed", Text.digits(fit.cv()))));
        }
        UseChange change = model.change();
        return new HouseholdRequest(people, null, null, null, Arrays.stream(DayOfWeek.values())
                .map(day -> units.volume(model.means().litres(day))).toList(), null, Rounding.answer(model.cv()), null, null,
                OccupancyRequest.of(model.occupancy()), Rounding.answer(change.levelSpread()),
                Rounding.answer(change.scatterSpread()), Rounding.answer(change.dayCorrelation()),
                Rounding.answer(HouseholdRequest.uncertaintyShare(change)), null, null, null, null, null, null);
    }

    private static Message summary(MeteredDays days, UseEstimate estimate, HouseholdFit fit, List<MeterFinding> findings,
            AnswerUnits units) {
        Message known = Message.of("readMeter.houseUsesDayAverage", days.known().length, days.size(), days.firstDate(),
                Text.rounded(units.volume(estimate.meanLitres())), Text.whole(100 * estimate.occupiedCv()),
                Text.whole(100 * estimate.presence().emptyShare()));
        Message planned = Message.of("readMeter.planDay", Text.rounded(units.volume(fit.model().meanLitres())));
        return Message.sentences(findings.isEmpty() ? List.of(known, planned)
                : List.of(known, planned, findings.get(0).message()));
    }
}
