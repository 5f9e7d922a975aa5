package dev.brinebook.answer.softener;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.Question;
import dev.brinebook.softener.Setting;
import dev.brinebook.softener.Softener;
import dev.brinebook.wording.Message;
import java.util.List;

@About("A setting that was not given and that matters. No finding calls it right or wrong.")
public record SettingQuestion(
        @Property("The setting.") Setting setting,
        @Property(value = "What to read off.", example = "\"Read off the day override.\"") Message question,
        @Property(value = "Why it matters.", example = "\"It starts a regeneration whatever was used.\"") Message why,
        @Property("A year at the lower end of what is plausible.") PlausibleSetting low,
        @Property("A year at the higher end.") PlausibleSetting high) {

    /** The question in the units of the answer. */
    public static SettingQuestion of(Question question, Softener softener, Duty duty, AnswerUnits units) {
        return new SettingQuestion(question.setting(), readOff(question.setting()), why(question.setting()),
                PlausibleSetting.of(question.setting(), question.low(), softener, duty, units),
                PlausibleSetting.of(question.setting(), question.high(), softener, duty, units));
    }

    /** Explains below {@code pointer} where the ranges come from. */
    public static void explain(List<Question> questions, String pointer, Explanation explanation) {
        if (!questions.isEmpty()) {
            explanation.because(pointer, Message.of("a year at both ends of what is plausible for a setting that was not given, all else"
                    + " as found"), "DAIAD");
        }
    }

    private static Message readOff(Setting setting) {
        return switch (setting) {
            case SALT_DOSE -> Message.of("Read off the salt of each regeneration, or the minutes and the flow of the refill.");
            case DAY_OVERRIDE -> Message.of("Read off after how many days it regenerates whatever was used.");
            case HARDNESS -> Message.of("Read off the hardness set on the meter.");
            case CAPACITY -> Message.of("Read off the capacity set on the meter.");
            case RESERVE -> Message.of("Read off the reserve set on the meter.");
            default -> throw new IllegalArgumentException("nobody asks for " + setting);
        };
    }

    private static Message why(Setting setting) {
        return switch (setting) {
            case SALT_DOSE -> Message.of("The dose decides what the bed can take up, and how much salt each regeneration uses.");
            case DAY_OVERRIDE -> Message.of("A short day override can hide a meter that is set wrong, and use much salt.");
            case HARDNESS -> Message.of("A hardness without iron and manganese makes the meter wait too long.");
            case CAPACITY -> Message.of("A capacity above what the salt restores makes the meter wait too long.");
            case RESERVE -> Message.of("Without enough reserve, the last day before a regeneration runs hard.");
            default -> throw new IllegalArgumentException("nobody asks for " + setting);
        };
    }
}
