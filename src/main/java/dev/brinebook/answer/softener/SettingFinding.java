package dev.brinebook.answer.softener;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.caution.Severity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.Finding;
import dev.brinebook.softener.Setting;
import dev.brinebook.softener.Softener;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.List;

@About("A setting to change, and what that changes after the findings before it. The sum over all findings is the year as found"
        + " less the year with all of them corrected.")
public record SettingFinding(
        @Property("Stable code of the reason.") Finding.Code code,
        @Property("The setting.") Setting setting,
        @Property("Settings that go together have the same group.") Setting.Group group,
        @Property(value = "Place on the path from the settings as found, from 1. Change all findings of the same step together.",
                min = 1, example = "1") Integer step,
        @Property("How much it matters.") Severity severity,
        @Property(value = "What is set.", example = "\"22 gpg\"") Message set,
        @Property(value = "What to set instead.", example = "\"27 gpg\"") Message shouldBe,
        @Property(value = "Why.", example = "\"The hardness set leaves out iron.\"") Message why,
        @Property("Salt that it costs in a year after those before it; negative when the better setting takes more. Where several"
                + " findings have the same step, the first holds what they change together.") MassQuantity saltPerYear,
        @Property("Regeneration water that it costs in a year after those before it; negative when the better setting takes more.")
        VolumeQuantity waterPerYear,
        @Property(value = "Days of the year on which hard water passes because of it, after those before it; negative when the"
                + " better setting has more.", unit = "days a year", example = "12") BigDecimal hardDaysPerYear,
        @Property("Hard water that passes in a year because of it, after those before it, that during regenerations included.")
        VolumeQuantity hardWaterPerYear) {

    /** The finding in the units of the answer. */
    public static SettingFinding of(Finding finding, Softener softener, Duty duty, AnswerUnits units) {
        var difference = finding.difference();
        ControllerQuantities set = new ControllerQuantities(duty, units);
        return new SettingFinding(finding.code(), finding.setting(), finding.setting().group(), finding.step(),
                finding.code().severity(), text(finding.setting(), finding.set(), softener, set),
                text(finding.setting(), finding.shouldBe(), softener, set), units.saying(finding.code()),
                units.mass(difference.saltKilograms()), units.volume(difference.waterLitres()),
                Rounding.toThousandth(difference.hardDays()), units.volume(difference.hardLitres()));
    }

    /** Explains below {@code pointer} why each of the settings is to be changed, and where the differences come from. */
    public static void explain(List<Finding> findings, AnswerUnits units, String pointer, Explanation explanation) {
        findings.stream().map(Finding::code).distinct().forEach(code -> explanation.because(pointer, Message.of("{0}: {1}",
                WireNames.of(code), units.saying(code)), code.sourceKey()));
        if (!findings.isEmpty()) {
            explanation.because(pointer + "/*", Message.of("a year after the findings before it less the same year with this one"
                    + " corrected too: what protects the bed comes first, then what stops hard water, then what saves"), "DAIAD");
        }
    }

    /** A value of a setting as the controller takes it. */
    public static Message text(Setting setting, double value, Softener softener, ControllerQuantities set) {
        return switch (setting.measure()) {
            case HARDNESS -> Text.of(set.hardness(value));
            case CAPACITY -> Text.of(set.capacity(value));
            case SALT_DOSE -> set.saltInWords(value, softener);
            case MINUTES -> Message.counted("{0} minute", "{0} minutes", Text.number(value));
            case DAYS -> value == 0 ? Message.of("never") : Message.counted("{0} day", "{0} days", Text.number(value));
            case VOLUME -> Text.of(set.volume(value));
            case FLOW -> Text.of(set.units().flow(value));
            case HOUR -> Message.verbatim("%02d:00".formatted((int) value));
        };
    }
}
