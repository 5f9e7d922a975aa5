// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.ChangePoint;
import dev.brinebook.household.Country;
import dev.brinebook.household.HighDay;
import dev.brinebook.household.MeterHistory;
import dev.brinebook.household.MeteredDays;
import dev.brinebook.household.NightFlow;
import dev.brinebook.household.Trend;
import dev.brinebook.household.UseEstimate;
import dev.brinebook.text.Message;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Finds what the days of a meter show. */
final class MeterFindings {

    /** Use per person beyond twice the usual, or less than a third of it, is worth checking. */
    private static final double ASSUMED_HIGH_SHARE = 2;
    private static final double ASSUMED_LOW_SHARE = 1 / 3.0;
    private static final int MONTH_DAYS = 30;

    private MeterFindings() {
    }

    static List<MeterFinding> of(MeterHistory history, UseEstimate estimate, List<HighDay> highDays, Integer people,
            Country country, AnswerUnits units) {
        List<MeterFinding> findings = new ArrayList<>();
        MeteredDays days = history.days().orElseThrow();
        history.nightFlow().unceasing().ifPresent(leak -> findings.add(leak(leak, units)));
        estimate.step(days).ifPresent(step -> findings.add(step(step, estimate, days, units)));
        estimate.drift(days).ifPresent(drift -> findings.add(drift(drift, days, units)));
        if (!highDays.isEmpty()) {
            findings.add(highDays(highDays, units));
        }
        double share = people == null ? 1 : estimate.occupiedMeanLitres() / people / country.usePerPersonLitres();
        if (share > ASSUMED_HIGH_SHARE || share < ASSUMED_LOW_SHARE) {
            VolumeQuantity perPerson = units.volume(estimate.occupiedMeanLitres() / people);
            findings.add(new MeterFinding(MeterFinding.Code.UNUSUAL_USE, Message.of("meterFindings.usePerPersonDay",
                    Text.rounded(perPerson),
                    Text.rounded(units.volume(country.usePerPersonLitres()))), null, null, null, perPerson));
        }
        return findings;
    }

    private static MeterFinding leak(NightFlow.Unceasing leak, AnswerUnits units) {
        VolumeQuantity perDay = units.volume(leak.litresPerDay());
        return new MeterFinding(MeterFinding.Code.NIGHT_FLOW, inWords(leak, Text.rounded(perDay)), leak.firstDate(), leak.lastDate(),
                null, perDay);
    }

    private static Message inWords(NightFlow.Unceasing leak, Message perDay) {
        return leak.goesOn()
                ? Message.of("meterFindings.flow020004", leak.nights(), leak.firstDate(), leak.lastDate(),
                        perDay)
                : Message.of("meterFindings.flow02000400", leak.nights(), leak.firstDate(), leak.lastDate(), perDay);
    }

    private static MeterFinding highDays(List<HighDay> days, AnswerUnits units) {
        HighDay most = days.stream().max(Comparator.comparingDouble(HighDay::litres)).orElseThrow();
        return new MeterFinding(MeterFinding.Code.HIGH_DAYS, Message.of(
                "meterFindings.usedMoreThanFour", days.size(), most.date(), Text.rounded(units.volume(most.litres()))), days.get(0).date(),
                days.get(days.size() - 1).date(), null, null);
    }

    private static MeterFinding step(ChangePoint step, UseEstimate estimate, MeteredDays days, AnswerUnits units) {
        LocalDate first = days.dateOf(estimate.presence().occupied()[step.lastBefore() + 1]);
        VolumeQuantity before = units.volume(step.meanBefore());
        VolumeQuantity after = units.volume(step.meanAfter());
        return new MeterFinding(MeterFinding.Code.LEVEL_CHANGED, Message.of("meterFindings.aboutDaySomeoneHome", first,
                Text.rounded(after), Text.rounded(before)), first, days.dateOf(days.size() - 1),
                before, after);
    }

    private static MeterFinding drift(Trend drift, MeteredDays days, AnswerUnits units) {
        VolumeQuantity perMonth = units.volume(drift.slopePerDay() * MONTH_DAYS);
        boolean rises = drift.slopePerDay() > 0;
        Message change = Text.rounded(units.volume(Math.abs(drift.slopePerDay()) * MONTH_DAYS));
        return new MeterFinding(MeterFinding.Code.DRIFT, rises
                ? Message.of("meterFindings.dailyUseRisesSteadily",
                        change)
                : Message.of("meterFindings.dailyUseFallsSteadily", change),
                days.firstDate(), days.dateOf(days.size() - 1), null, perMonth);
    }
}
