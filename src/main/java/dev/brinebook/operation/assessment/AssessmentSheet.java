// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.answer.verdict.RungAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.caution.Reader;
import dev.brinebook.sheet.PageSize;
import dev.brinebook.sheet.Row;
import dev.brinebook.sheet.Sheet;
import dev.brinebook.sheet.SheetCell;
import dev.brinebook.softener.Readiness;
import dev.brinebook.text.Language;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The answer on two pages, one for the customer and one for the installer. Every number is one of the answer, with its pointer.
 */
record AssessmentSheet(Map<String, SheetWords> say, AssessmentAnswer answer, List<Row> ladder, List<Row> water, boolean fits,
        List<Row> changes, boolean untreated, List<Row> questions, SheetWords settingsTitle, List<Row> settings, List<Row> steps,
                List<Check> before,
        List<SheetWords> readings, List<Caution> cautions, List<Caution> alsoForCustomer, List<Caution> alsoForInstaller) {

    static final String HTML = "text/html";
    static final String PDF = "application/pdf";
    static final String DESCRIPTION = "A sheet of two pages in the language of Accept-Language. The page for the customer has the "
            + "recommendation, the reasons, cost, payback and cautions. The page for the installer has each setting with its reason, "
            + "the steps, checks before and after, and space for readings and a signature. Its numbers are a selection of those in the "
            + "JSON answer. The paper is US Letter, or A4 if units is metric.";

    private static final SheetCell NOT_KNOWN = new SheetCell(null, "–");

    /** A condition, its state, and what to do if it is not met. */
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
    static String xhtml(AssessmentAnswer answer, AnswerUnits units, Language language) {
        PageSize paper = units == AnswerUnits.METRIC ? PageSize.A4 : PageSize.LETTER;
        return Sheet.xhtml("assessment", paper, of(answer), language);
    }

    private static AssessmentSheet of(AssessmentAnswer answer) {
        return new AssessmentSheet(SheetWords.all(), answer, ladder(answer), water(answer), answer.fit().fits(), changes(answer),
                answer.settings() == null, questions(answer), settingsTitle(answer), settings(answer), steps(answer),
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
            return Row.of(rung.name(), new SheetCell(at + "/hardDays", rung.hardDays()), new SheetCell(at + "/salt", rung.salt()),
                    new SheetCell(at + "/costPerYear", rung.costPerYear()),
                    rung.firstCost() == null ? NOT_KNOWN : new SheetCell(at + "/firstCost", rung.firstCost()),
                    rung.overBelow() == null ? NOT_KNOWN
                            : new SheetCell(at + "/overBelow/savedPerYear", rung.overBelow().savedPerYear()));
        }).toList();
    }

    private static List<Row> water(AssessmentAnswer answer) {
        List<Row> rows = new ArrayList<>(List.of(
                row(Message.of("assessmentSheet.testedHardness"), "/hardness/tested", answer.hardness().tested()),
                row(Message.of("assessmentSheet.hardnessIronManganese"), "/hardness/compensated",
                        answer.hardness().compensated()),
                row(Message.of("assessmentSheet.softenedWaterPerDay"), "/demand/dailyUse", answer.demand().dailyUse()),
                row(Message.of("assessmentSheet.capacityPerRegenerationNow"), "/fit/capacity", answer.fit().capacity())));
        if (answer.fit().daysBetweenRegenerations() != null) {
            rows.add(row(Message.of("assessmentSheet.daysBetweenRegenerations"), "/fit/daysBetweenRegenerations",
                    answer.fit().daysBetweenRegenerations()));
        }
        rows.add(row(Message.of("assessmentSheet.sodiumAddedSoftening"), "/softenedWater/addedSodium",
                answer.softenedWater().addedSodium()));
        rows.add(row(Message.of("assessmentSheet.potassiumAddedSoftening"), "/softenedWater/addedPotassium",
                answer.softenedWater().addedPotassium()));
        return rows;
    }

    private static List<Row> changes(AssessmentAnswer answer) {
        return IntStream.range(0, answer.findings().size()).mapToObj(i -> {
            String at = "/findings/" + i;
            return Row.of(answer.findings().get(i).why(), new SheetCell(at + "/set", answer.findings().get(i).set()),
                    new SheetCell(at + "/shouldBe", answer.findings().get(i).shouldBe()));
        }).toList();
    }

    private static List<Row> questions(AssessmentAnswer answer) {
        return IntStream.range(0, answer.questions().size()).mapToObj(i -> {
            String at = "/questions/" + i;
            return Row.of(answer.questions().get(i).question(), new SheetCell(at + "/why", answer.questions().get(i).why()));
        }).toList();
    }

    /** The settings are those of a meter; a clock that only has to be set right gets them if it is converted. */
    private static SheetWords settingsTitle(AssessmentAnswer answer) {
        boolean staysClock = answer.retrofit() != null && answer.verdict().step() == Step.SET_RIGHT;
        return staysClock ? SheetWords.SETTINGS_IF_CONVERTED : SheetWords.SETTINGS;
    }

    private static List<Row> settings(AssessmentAnswer answer) {
        if (answer.settings() == null) {
            return List.of();
        }
        RecommendedSettings set = answer.settings();
        Stream<Row> rows = Stream.of(setting(Message.of("assessmentSheet.hardness"), "hardness", Text.exact(set.hardness()), set),
                setting(Message.of("assessmentSheet.capacity"), "capacity", Text.exact(set.capacity()), set),
                setting(Message.of("assessmentSheet.waterBetweenRegenerations"), "meterVolume", Text.of(set.meterVolume()), set),
                setting(Message.of("assessmentSheet.reserveIncludedAbove"), "reserve", Text.exact(set.reserve()), set),
                setting(Message.of("assessmentSheet.saltDose"), "saltDose", Text.of(set.saltDose()), set),
                setting(Message.of("assessmentSheet.saltPerRegeneration"), "saltPerRegeneration", Text.of(set.saltPerRegeneration()),
                        set),
                setting(Message.of("assessmentSheet.dayOverrideDays"), "dayOverride", set.dayOverride(), set),
                setting(Message.of("assessmentSheet.hourRegeneration"), "regenerationHour", set.regenerationHour(), set),
                setting(Message.of("assessmentSheet.brineRefillMinutes"), "refillMinutes", set.refillMinutes(), set));
        return rows.toList();
    }

    private static Row setting(Message label, String name, Object value, RecommendedSettings set) {
        int place = IntStream.range(0, set.reasons().size()).filter(i -> set.reasons().get(i).setting().equals(name)).findFirst()
                .orElseThrow();
        return Row.of(label, new SheetCell("/settings/" + name, value),
                new SheetCell("/settings/reasons/" + place + "/reason", set.reasons().get(place).reason()));
    }

    private static List<Row> steps(AssessmentAnswer answer) {
        if (answer.cycle() == null) {
            return List.of();
        }
        return IntStream.range(0, answer.cycle().steps().size()).mapToObj(i -> {
            var step = answer.cycle().steps().get(i);
            String at = "/cycle/steps/" + i;
            return Row.of(Message.of(step.step()), step.tenthMinutes() == null
                    ? new SheetCell(at + "/wholeMinutes", step.wholeMinutes()) : new SheetCell(at + "/tenthMinutes", step.tenthMinutes()),
                    new SheetCell(at + "/flow", step.flow()), new SheetCell(at + "/waterTaken", step.waterTaken()),
                    new SheetCell(at + "/waterToDrain", step.waterToDrain()));
        }).toList();
    }

    private static List<SheetWords> toRead() {
        return List.of(SheetWords.RAW_HARDNESS, SheetWords.RAW_IRON, SheetWords.SOFT_HARDNESS, SheetWords.METER, SheetWords.PRESSURE,
                SheetWords.DRAIN_FLOW, SheetWords.REFILL_TIME);
    }

    private static Row row(Message label, String at, Object value) {
        return Row.of(label, new SheetCell(at, value));
    }
}
