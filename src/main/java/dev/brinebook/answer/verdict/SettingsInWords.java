// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.verdict;

import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.softener.ClockWeekdays;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.text.Joint;
import dev.brinebook.text.Message;
import java.time.DayOfWeek;
import java.util.OptionalInt;

/** Settings of a softener, in one line. */
final class SettingsInWords {

    private SettingsInWords() {
    }

    /** A name for them, in a list of options. */
    static Message of(SoftenerSettings setup, AnswerUnits units) {
        Message salt = salt(setup, units);
        Policy policy = setup.policy();
        if (policy.everyDays().isPresent()) {
            return Message.of("settings.everyDaysSaltPer", policy.everyDays().getAsInt(), salt);
        }
        if (policy.byClock()) {
            return Message.of("settings.setWeekdaysSaltPer", salt);
        }
        Message meter = Text.rounded(units.volume(policy.meterVolumeLitres()));
        return policy.fixedReserveLitres().isPresent()
                ? Message.of("settings.betweenRegenerationsReserveSalt", meter, reserve(policy, units), salt)
                : Message.of("settings.betweenRegenerationsSaltPer", meter, salt);
    }

    /** What to set, with the weekdays that suit the week where it is a clock that counts them, or seven days. */
    static Message instruction(SoftenerSettings setup, Policy found, DesignConditions duty, AnswerUnits units) {
        Message set = instruction(setup, units);
        boolean onWeekdays = found.byClock() && found.everyDays().isEmpty();
        OptionalInt days = setup.policy().everyDays();
        if (days.isEmpty() || !onWeekdays && days.getAsInt() != DayOfWeek.values().length || duty.meanLitres() == 0) {
            return set;
        }
        boolean even = ClockWeekdays.isEven(duty.demand().means());
        return even && !onWeekdays ? set : Message.sentences(set, Message.of(even ? "verdict.setWeekdays" : "verdict.setWeekdaysForPeak",
                Message.joined(Joint.AND, ClockWeekdays.forEvery(days.getAsInt(), duty.demand().means()).stream()
                        .map(day -> Message.of("weekday.name", WireNames.of(day))).toList())));
    }

    private static Message instruction(SoftenerSettings setup, AnswerUnits units) {
        Message salt = salt(setup, units);
        Policy policy = setup.policy();
        if (policy.byClock()) {
            return Message.of("verdict.setClockEveryDays", policy.everyDays().isPresent() ? "clock" : "weekdays",
                    policy.everyDays().orElse(0), salt, "", "");
        }
        Message meter = Text.rounded(units.volume(policy.meterVolumeLitres()));
        return policy.fixedReserveLitres().isPresent()
                ? Message.of("verdict.setClockEveryDays", "delayed", 0, salt, meter, reserve(policy, units))
                : Message.of("verdict.setClockEveryDays", "meter", 0, salt, meter, "");
    }

    private static Message salt(SoftenerSettings setup, AnswerUnits units) {
        return Text.rounded(units.mass(setup.softener().saltGrams(setup.saltDoseGramsPerLitre()) / 1000));
    }

    private static Message reserve(Policy policy, AnswerUnits units) {
        return Text.rounded(units.volume(Math.min(policy.fixedReserveLitres().getAsDouble(), policy.meterVolumeLitres())));
    }
}
