// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.verdict;

import dev.brinebook.answer.softener.ControllerQuantities;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.household.WeekdayMeans;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.softener.ClockWeekdays;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.MeterSettings;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.text.Joint;
import dev.brinebook.text.Message;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Settings of a softener, in one line. */
final class SettingsInWords {

    private SettingsInWords() {
    }

    /** A name for them, in a list of options. */
    static Message of(SoftenerSettings setup, ControllerQuantities set) {
        Message salt = salt(setup, set);
        Policy policy = setup.policy();
        if (policy.everyDays().isPresent()) {
            return Message.of("settings.everyDaysSaltPer", policy.everyDays().getAsInt(), salt);
        }
        if (policy.byClock()) {
            return Message.of("settings.setWeekdaysSaltPer", salt);
        }
        Message meter = meter(policy, set);
        return policy.fixedReserveLitres().isPresent()
                ? Message.of("settings.betweenRegenerationsReserveSalt", meter, reserve(policy, set), salt)
                : Message.of("settings.betweenRegenerationsSaltPer", meter, salt);
    }

    /** What to set: of a clock also why it is not set to more days, and the weekdays that suit the week. */
    static Message instruction(SoftenerSettings setup, Policy found, DesignConditions duty, AnswerUnits units) {
        List<Message> sentences = new ArrayList<>(List.of(instruction(setup, new ControllerQuantities(duty, units))));
        if (setup.policy().everyDays().isPresent() && duty.meanLitres() > 0) {
            limit(setup, duty).ifPresent(sentences::add);
            weekdays(setup.policy().everyDays().getAsInt(), found.byClock() && found.everyDays().isEmpty(), duty).ifPresent(sentences::add);
        }
        return Message.sentences(sentences);
    }

    /** Why a clock is not set to more days, where the salt would last longer. */
    private static Optional<Message> limit(SoftenerSettings setup, DesignConditions duty) {
        int days = setup.policy().everyDays().orElseThrow();
        boolean limited = days == MeterSettings.overrideDays(duty) && days < Policy.DEFAULT_OVERRIDE_DAYS && duty.isServed(
                new ClockEveryDays(days + 1), setup.regeneration(duty.water().temperatureCelsius()));
        return !limited ? Optional.empty() : Optional.of(duty.iron() ? Message.of("verdict.ironLimitsInterval", days)
                : Message.of("verdict.hygieneLimitsInterval", days));
    }

    private static Optional<Message> weekdays(int days, boolean onWeekdays, DesignConditions duty) {
        WeekdayMeans means = duty.demand().means();
        boolean even = ClockWeekdays.isEven(means);
        if (!onWeekdays && (even || days != DayOfWeek.values().length)) {
            return Optional.empty();
        }
        Message set = Message.joined(Joint.AND, ClockWeekdays.forEvery(days, means).stream()
                .map(day -> Message.of("weekday.name", WireNames.of(day))).toList());
        return Optional.of(even ? Message.of("verdict.setWeekdays", set) : Message.of("verdict.setWeekdaysForPeak", set));
    }

    private static Message instruction(SoftenerSettings setup, ControllerQuantities set) {
        Message salt = salt(setup, set);
        Policy policy = setup.policy();
        if (policy.byClock()) {
            return Message.of("verdict.setClockEveryDays", policy.everyDays().isPresent() ? "clock" : "weekdays",
                    policy.everyDays().orElse(0), salt, "", "");
        }
        Message meter = meter(policy, set);
        return policy.fixedReserveLitres().isPresent()
                ? Message.of("verdict.setClockEveryDays", "delayed", 0, salt, meter, reserve(policy, set))
                : Message.of("verdict.setClockEveryDays", "meter", 0, salt, meter, "");
    }

    private static Message salt(SoftenerSettings setup, ControllerQuantities set) {
        return Text.setting(set.salt(setup.softener().saltGrams(setup.saltDoseGramsPerLitre())));
    }

    private static Message meter(Policy policy, ControllerQuantities set) {
        return ControllerQuantities.meterInWords(set.volume(policy.meterVolumeLitres()));
    }

    private static Message reserve(Policy policy, ControllerQuantities set) {
        double meterLitres = policy.meterVolumeLitres();
        return set.reserveInWords(Math.min(policy.fixedReserveLitres().getAsDouble(), meterLitres), meterLitres);
    }
}
