package dev.brinebook.answer.verdict;

import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.softener.Setup;
import dev.brinebook.wording.Message;

/** What is set on a softener, in one line. */
final class SettingsInWords {

    private SettingsInWords() {
    }

    static Message of(Setup setup, AnswerUnits units) {
        Message dose = Text.of(units.saltDose(setup.saltDoseGramsPerLitre()));
        Policy policy = setup.policy();
        if (policy instanceof ClockEveryDays clock) {
            return Message.counted("every {0} day with {1} of salt", "every {0} days with {1} of salt", clock.days(), dose);
        }
        if (policy.byClock()) {
            return Message.of("on its weekdays with {0} of salt", dose);
        }
        Message meter = Text.of(units.volume(policy.meterVolumeLitres()));
        return policy instanceof MeteredDelayed delayed
                ? Message.of("{0} between regenerations, {1} of it in reserve, with {2} of salt", meter,
                        Text.of(units.volume(Math.min(delayed.reserveLitres(), policy.meterVolumeLitres()))), dose)
                : Message.of("{0} between regenerations with {1} of salt", meter, dose);
    }
}
