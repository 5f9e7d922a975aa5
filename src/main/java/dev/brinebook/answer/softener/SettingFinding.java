// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.softener;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.caution.Severity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.Finding;
import dev.brinebook.softener.Setting;
import dev.brinebook.softener.Softener;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.List;

@SchemaDescription("A setting to change, and its effect after the preceding findings. The sum over all findings is the year with the "
        + "present settings less the year with all of them corrected.")
public record SettingFinding(
        @Property("Stable code of the reason.") Finding.Code code,
        @Property("The setting.") Setting setting,
        @Property("Group of settings that belong together.") Setting.Group group,
        @Property(value = "Step on the path from the present settings, from 1. Change all findings of the same step together.",
                min = 1, example = "1") Integer step,
        @Property("Severity.") Severity severity,
        @Property(value = "Present value.", example = "\"22 gpg\"") Message set,
        @Property(value = "Value to set instead.", example = "\"27 gpg\"") Message shouldBe,
        @Property(value = "Why.", example = "\"The hardness set leaves out iron, manganese and the uncertainty of the "
                + "test.\"") Message why,
        @Basis(formula = "formula.softener.yearEarlierFindingsCorrected", source = "DAIAD")
        @Property("Salt wasted per year, after the preceding findings. Negative when the better setting uses "
                + "more. If several findings have the same step, the first holds their combined effect.") MassQuantity saltPerYear,
        @Basis(formula = "formula.softener.yearEarlierFindingsCorrected", source = "DAIAD")
        @Property("Regeneration water wasted per year, after the preceding findings. Negative when the better setting uses more.")
        VolumeQuantity waterPerYear,
        @Basis(formula = "formula.softener.yearEarlierFindingsCorrected", source = "DAIAD")
        @Property(value = "Hard days per year caused by it, after the preceding findings. Negative when the better setting has "
                + "more.", unit = "days a year", example = "12") BigDecimal hardDaysPerYear,
        @Basis(formula = "formula.softener.yearEarlierFindingsCorrected", source = "DAIAD")
        @Property("Hard water per year caused by it, after the preceding findings, including that during regenerations.")
        VolumeQuantity hardWaterPerYear) {

    /** The finding in the units of the answer. */
    public static SettingFinding of(Finding finding, Softener softener, DesignConditions duty, AnswerUnits units) {
        var difference = finding.difference();
        ControllerQuantities set = new ControllerQuantities(duty, units);
        return new SettingFinding(finding.code(), finding.setting(), finding.setting().group(), finding.step(),
                finding.code().severity(), text(finding.setting(), finding.set(), softener, set),
                text(finding.setting(), finding.shouldBe(), softener, set), units.saying(finding.code()),
                units.mass(difference.saltKilograms()), units.volume(difference.waterLitres()),
                Rounding.toThousandth(difference.hardDays()), units.volume(difference.hardLitres()));
    }

    /** Explains below {@code pointer} why each of the settings is to be changed. */
    public static void explain(List<Finding> findings, AnswerUnits units, String pointer, Explanation explanation) {
        for (int i = 0; i < findings.size(); i++) {
            Finding.Code code = findings.get(i).code();
            explanation.because(pointer + "/" + i, units.saying(code), code.sourceKey());
        }
    }

    /** A value of a setting as the controller takes it. */
    public static Message text(Setting setting, double value, Softener softener, ControllerQuantities set) {
        return switch (setting.measure()) {
            case HARDNESS -> Text.setting(set.hardness(value));
            case CAPACITY -> Text.setting(set.capacity(value));
            case SALT_DOSE -> set.saltInWords(value, softener);
            case MINUTES -> Message.of("settingFinding.minutes", Text.digits(value));
            case DAYS -> value == 0 ? Message.of("settingFinding.off") : Message.of("settingFinding.days", Text.number(value));
            case VOLUME -> Text.of(set.volume(value));
            case FLOW -> Text.rounded(set.units().flow(value));
            case HOUR -> Message.of("pattern.value", LocalTime.of((int) value, 0));
        };
    }
}
