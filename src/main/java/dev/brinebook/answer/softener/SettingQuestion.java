// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.softener;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.Question;
import dev.brinebook.softener.Setting;
import dev.brinebook.softener.Softener;
import dev.brinebook.text.Message;

@SchemaDescription("A setting that was not given but affects the result. No finding judges it.")
public record SettingQuestion(
        @Property("The setting.") Setting setting,
        @Property(value = "Instruction what to read off.", example = "\"Read off the day override.\"") Message question,
        @Property(value = "Reason why it matters.", example = "\"It starts a regeneration regardless of use.\"") Message why,
        @Basis(formula = "formula.softener.yearBothEndsPlausible", source = "DAIAD")
        @Property("A year at the lower end of the plausible range.") PlausibleSetting low,
        @Basis(formula = "formula.softener.yearBothEndsPlausible", source = "DAIAD")
        @Property("A year at the upper end of the plausible range.") PlausibleSetting high) {

    /** The question in the units of the answer. */
    public static SettingQuestion of(Question question, Softener softener, DesignConditions duty, AnswerUnits units) {
        return new SettingQuestion(question.setting(), readOff(question.setting()), why(question.setting()),
                PlausibleSetting.of(question.setting(), question.low(), softener, duty, units),
                PlausibleSetting.of(question.setting(), question.high(), softener, duty, units));
    }

    private static Message readOff(Setting setting) {
        return switch (setting) {
            case SALT_DOSE -> Message.of("settingQuestion.readOffSaltPer");
            case DAY_OVERRIDE -> Message.of("settingQuestion.readOffDayOverride");
            case HARDNESS -> Message.of("settingQuestion.readOffHardnessSet");
            case CAPACITY -> Message.of("settingQuestion.readOffCapacitySet");
            case RESERVE -> Message.of("settingQuestion.readOffReserveSet");
            default -> throw new IllegalArgumentException("nobody asks for " + setting);
        };
    }

    private static Message why(Setting setting) {
        return switch (setting) {
            case SALT_DOSE -> Message.of("settingQuestion.doseDecidesHowMuch");
            case DAY_OVERRIDE -> Message.of("settingQuestion.shortDayOverrideCan");
            case HARDNESS -> Message.of("settingQuestion.hardnessWithoutIronManganese");
            case CAPACITY -> Message.of("settingQuestion.capacityAboveWhatSalt");
            case RESERVE -> Message.of("settingQuestion.withoutEnoughReserveHard");
            default -> throw new IllegalArgumentException("nobody asks for " + setting);
        };
    }
}
