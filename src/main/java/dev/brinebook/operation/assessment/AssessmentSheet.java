package dev.brinebook.operation.assessment;

import dev.brinebook.answer.verdict.RungAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.caution.Reader;
import dev.brinebook.sheet.Paper;
import dev.brinebook.sheet.Row;
import dev.brinebook.sheet.Sheet;
import dev.brinebook.sheet.Shown;
import dev.brinebook.softener.Readiness;
import dev.brinebook.wording.Message;
import dev.brinebook.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The answer on two pages, one for the customer and one for the installer. Every number is one of the answer and says where
 * it stands there.
 */
record AssessmentSheet(Map<String, SheetWords> say, AssessmentAnswer answer, List<Row> ladder, List<Row> water, boolean fits,
        List<Row> changes, boolean untreated, List<Row> questions, List<Row> settings, List<Row> steps, List<Check> before,
        List<SheetWords> readings, List<Caution> cautions, List<Caution> alsoForCustomer, List<Caution> alsoForInstaller) {

    static final String HTML = "text/html";
    static final String PDF = "application/pdf";
    static final String DESCRIPTION = "A sheet of two pages in the language of Accept-Language: for the customer what, why, cost,"
            + " payback and cautions; for the installer each setting with its reason, the steps, what to check before and after,"
            + " and room for readings and a signature. Its numbers are those of the JSON answer, of which it leaves out the rest."
            + " The paper is US Letter, or A4 where units is metric.";

    private static final Shown NOT_KNOWN = new Shown(null, "–");

    /** A condition, how it stands, and what to do where it is not met. */
    record Check(Message wanted, SheetWords state, List<Message> whenNotMet) {

        private static Check of(dev.brinebook.answer.softener.ReadinessCheck check) {
            return new Check(check.wanted(), SheetWords.of(check.state()),
                    check.state() == Readiness.State.NOT_MET ? List.of(check.whenNotMet()) : List.of());
        }
    }

    /** A caution with its weight in words. */
    record Caution(SheetWords severity, Message message) {

        private static Caution of(CautionAnswer caution) {
            return new Caution(SheetWords.of(caution.severity()), caution.message());
        }
    }

    /** The sheet as a page. */
    static String xhtml(AssessmentAnswer answer, AnswerUnits units, Wording language) {
        Paper paper = units == AnswerUnits.METRIC ? Paper.A4 : Paper.LETTER;
        return Sheet.xhtml("assessment", paper, of(answer), language);
    }

    private static AssessmentSheet of(AssessmentAnswer answer) {
        return new AssessmentSheet(SheetWords.all(), answer, ladder(answer), water(answer), answer.fit().fits(), changes(answer),
                answer.settings() == null, questions(answer), settings(answer), steps(answer),
                answer.readiness().stream().map(Check::of).toList(),
                toRead(),
                answer.cautions().stream().filter(CautionAnswer::inFront).map(Caution::of).toList(),
                behind(answer, reader -> reader == Reader.CUSTOMER), behind(answer, reader -> reader != Reader.CUSTOMER));
    }

    /** Cautions that are not in front, on the page of whom they concern. */
    private static List<Caution> behind(AssessmentAnswer answer, Predicate<Reader> of) {
        return answer.cautions().stream().filter(caution -> !caution.inFront() && of.test(caution.reader())).map(Caution::of).toList();
    }

    /** The steps that can be taken; a cost that is not given, and what the first step saves, stay empty. */
    private static List<Row> ladder(AssessmentAnswer answer) {
        List<RungAnswer> rungs = answer.verdict().ladder();
        return IntStream.range(0, rungs.size()).filter(i -> rungs.get(i).settings() != null).mapToObj(i -> {
            RungAnswer rung = rungs.get(i);
            String at = "/verdict/ladder/" + i;
            return Row.of(rung.name(), new Shown(at + "/hardDays", rung.hardDays()), new Shown(at + "/salt", rung.salt()),
                    new Shown(at + "/costPerYear", rung.costPerYear()),
                    rung.firstCost() == null ? NOT_KNOWN : new Shown(at + "/firstCost", rung.firstCost()),
                    rung.overBelow() == null ? NOT_KNOWN
                            : new Shown(at + "/overBelow/savedPerYear", rung.overBelow().savedPerYear()));
        }).toList();
    }

    private static List<Row> water(AssessmentAnswer answer) {
        List<Row> rows = new ArrayList<>(List.of(
                row(Message.of("Hardness as tested"), "/hardness/tested", answer.hardness().tested()),
                row(Message.of("Hardness with what iron and manganese add"), "/hardness/compensated",
                        answer.hardness().compensated()),
                row(Message.of("Softened water on a mean day"), "/demand/dailyUse", answer.demand().dailyUse()),
                row(Message.of("Capacity that a regeneration restores, as found"), "/fit/capacity", answer.fit().capacity())));
        if (answer.fit().daysBetweenRegenerations() != null) {
            rows.add(row(Message.of("Days between regenerations"), "/fit/daysBetweenRegenerations",
                    answer.fit().daysBetweenRegenerations()));
        }
        rows.add(row(Message.of("Sodium that softening adds"), "/softenedWater/addedSodium", answer.softenedWater().addedSodium()));
        rows.add(row(Message.of("Potassium that softening adds"), "/softenedWater/addedPotassium",
                answer.softenedWater().addedPotassium()));
        return rows;
    }

    private static List<Row> changes(AssessmentAnswer answer) {
        return IntStream.range(0, answer.findings().size()).mapToObj(i -> {
            String at = "/findings/" + i;
            return Row.of(answer.findings().get(i).why(), new Shown(at + "/set", answer.findings().get(i).set()),
                    new Shown(at + "/shouldBe", answer.findings().get(i).shouldBe()));
        }).toList();
    }

    private static List<Row> questions(AssessmentAnswer answer) {
        return IntStream.range(0, answer.questions().size()).mapToObj(i -> {
            String at = "/questions/" + i;
            return Row.of(answer.questions().get(i).question(), new Shown(at + "/why", answer.questions().get(i).why()));
        }).toList();
    }

    private static List<Row> settings(AssessmentAnswer answer) {
        if (answer.settings() == null) {
            return List.of();
        }
        RecommendedSettings set = answer.settings();
        Stream<Row> rows = Stream.of(setting(Message.of("Hardness"), "hardness", set.hardness(), set),
                setting(Message.of("Capacity"), "capacity", set.capacity(), set),
                setting(Message.of("Water between regenerations"), "meterVolume", set.meterVolume(), set),
                setting(Message.of("Reserve, a part of it"), "reserve", set.reserve(), set),
                setting(Message.of("Salt dose"), "saltDose", set.saltDose(), set),
                setting(Message.of("Salt of one regeneration"), "saltPerRegeneration", set.saltPerRegeneration(), set),
                setting(Message.of("Day override, days"), "dayOverride", set.dayOverride(), set),
                setting(Message.of("Hour of regeneration"), "regenerationHour", set.regenerationHour(), set),
                setting(Message.of("Refill, minutes"), "refillMinutes", set.refillMinutes(), set));
        return rows.toList();
    }

    private static Row setting(Message label, String name, Object value, RecommendedSettings set) {
        int place = IntStream.range(0, set.reasons().size()).filter(i -> set.reasons().get(i).setting().equals(name)).findFirst()
                .orElseThrow();
        return Row.of(label, new Shown("/settings/" + name, value),
                new Shown("/settings/reasons/" + place + "/reason", set.reasons().get(place).reason()));
    }

    private static List<Row> steps(AssessmentAnswer answer) {
        if (answer.cycle() == null) {
            return List.of();
        }
        return IntStream.range(0, answer.cycle().steps().size()).mapToObj(i -> {
            var step = answer.cycle().steps().get(i);
            String at = "/cycle/steps/" + i;
            return Row.of(Message.saying(step.step()), step.tenthMinutes() == null
                    ? new Shown(at + "/wholeMinutes", step.wholeMinutes()) : new Shown(at + "/tenthMinutes", step.tenthMinutes()),
                    new Shown(at + "/flow", step.flow()), new Shown(at + "/waterTaken", step.waterTaken()),
                    new Shown(at + "/waterToDrain", step.waterToDrain()));
        }).toList();
    }

    private static List<SheetWords> toRead() {
        return List.of(SheetWords.RAW_HARDNESS, SheetWords.RAW_IRON, SheetWords.SOFT_HARDNESS, SheetWords.METER, SheetWords.PRESSURE,
                SheetWords.DRAIN_FLOW, SheetWords.REFILL_TIME);
    }

    private static Row row(Message label, String at, Object value) {
        return Row.of(label, new Shown(at, value));
    }
}
