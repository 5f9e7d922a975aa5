// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.TestServer;
import dev.brinebook.operation.assessment.Assess;
import dev.brinebook.operation.assessment.AssessmentAnswer;
import dev.brinebook.operation.assessment.AssessmentRequest;
import dev.brinebook.operation.payback.AlternativesRequest;
import dev.brinebook.operation.payback.CompareAlternatives;
import dev.brinebook.operation.payback.EstimatePayback;
import dev.brinebook.operation.payback.RetrofitPaybackRequest;
import dev.brinebook.operation.softener.ReviewSettings;
import dev.brinebook.operation.softener.SettingsReviewRequest;
import dev.brinebook.operation.softener.SizeSoftener;
import dev.brinebook.operation.softener.SizingRequest;
import dev.brinebook.text.Language;
import dev.brinebook.verdict.Improvement;
import dev.brinebook.verdict.Step;
import dev.brinebook.verdict.Verdict;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Equal questions get the same verdict from every operation, and its steps are ranked as [NIST-HB135] ranks alternatives. */
class OneVerdictTest {

    /** More are asked for with -Dhomes=500. */
    private static final int HOMES = Integer.getInteger("homes", 12);
    private static final int YEARS = 10;
    private static final String GOODS = "{'sku':'invented-200','resinVolume':{'value':2,'unit':'ft3'}}";
    /** The defaults of the prices: growth and discount of a year. */
    private static final double GROWTH = 0.04;
    private static final double DISCOUNT = 0.05575;

    /** A case as JSON: water, household, softener, and what converting costs. */
    private record Case(String water, String household, String softener, int cost, int secondTank, int replacement) {

        /** Without other offers. */
        Case(String water, String household, String softener, int cost) {
            this(water, household, softener, cost, 0, 0);
        }

        static Case drawn(Random random) {
            String control = switch (random.nextInt(4)) {
                case 0 -> "{'kind':'meteredDelayed'}";
                case 1 -> "{'kind':'twinAlternating'}";
                default -> "{'kind':'clock','everyDays':" + (1 + random.nextInt(9)) + "}";
            };
            return new Case("{'hardness':{'value':%d,'unit':'gpg'},'iron':{'value':%.1f,'unit':'mg/L'}}".formatted(
                    2 + random.nextInt(35), random.nextInt(3) == 0 ? 2 * random.nextDouble() : 0),
                    random.nextBoolean() ? "{'people':%d}".formatted(1 + random.nextInt(6))
                            : "{'dailyUse':{'value':%d,'unit':'gal'}}".formatted(60 + random.nextInt(400)),
                    "{'resinVolume':{'value':%.2f,'unit':'ft3'},'saltDose':{'value':%d,'unit':'lb/ft3'},'control':%s}".formatted(
                            0.75 + 0.25 * random.nextInt(6), 6 + random.nextInt(10), control), 200 + 100 * random.nextInt(8),
                    300 * random.nextInt(4), 500 * random.nextInt(4));
        }

        String with(String more) {
            return String.format(Locale.ROOT, "{'water':%s,'household':%s,'softener':%s%s}", water, household, softener, more)
                    .replace('\'', '"');
        }

        String retrofit() {
            return ",'retrofit':{'cost':{'value':" + cost + ",'unit':'USD'},'upgrades':[" + (secondTank == 0 ? ""
                    : "{'kind':'secondTank','cost':{'value':" + secondTank + ",'unit':'USD'}}") + (secondTank * replacement == 0 ? "" : ",")
                    + (replacement == 0 ? "" : "{'kind':'replacement','cost':{'value':" + replacement + ",'unit':'USD'},'softener':"
                            + GOODS + "}") + "]}";
        }

        AssessmentAnswer assessed() {
            return Assess.OPERATION.answer(TestServer.read(with(retrofit()), AssessmentRequest.class));
        }

        VerdictAnswer byReview() {
            return ReviewSettings.OPERATION.answer(TestServer.read(with(retrofit()), SettingsReviewRequest.class)).verdict();
        }

        VerdictAnswer byPayback() {
            return EstimatePayback.OPERATION.answer(TestServer.read(with(retrofit() + ",'metered':{'kind':'meteredDelayed'}"),
                    RetrofitPaybackRequest.class)).verdict();
        }

        VerdictAnswer byAlternatives() {
            return CompareAlternatives.OPERATION.answer(TestServer.read(with(",'horizonYears':10,'alternatives':["
                    + "{'name':'now','kind':'asFound'},{'name':'meter','kind':'metered','cost':{'value':" + cost
                    + ",'unit':'USD'}}" + (secondTank == 0 ? "" : ",{'name':'two','kind':'twinBeds','cost':{'value':" + secondTank
                    + ",'unit':'USD'}}") + (replacement == 0 ? "" : ",{'name':'new','kind':'replacement','cost':{'value':" + replacement
                    + ",'unit':'USD'},'softener':" + GOODS + "}") + "]"), AlternativesRequest.class)).verdict();
        }
    }

    @Test
    void everyOperationSaysTheSame() {
        Random random = new Random(11);
        for (int i = 0; i < HOMES; i++) {
            Case drawn = Case.drawn(random);
            VerdictAnswer verdict = drawn.assessed().verdict();
            assertEquals(verdict, drawn.byReview(), "review of " + drawn);
            assertEquals(verdict, drawn.byPayback(), "payback of " + drawn);
            assertEquals(verdict, drawn.byAlternatives(), "alternatives of " + drawn);
        }
    }

    /**
     * Incremental ranking by first cost ends at the alternative of least life-cycle cost; here of those that serve and whose cost is
     * known, but for savings below 2 % of the running cost. Calculated independently by the sum over the years.
     */
    @Test
    void theStepTakenHasTheLeastLifeCycleCost() {
        Random random = new Random(12);
        for (int i = 0; i < 2 * HOMES; i++) {
            Case drawn = Case.drawn(random);
            VerdictAnswer verdict = drawn.byReview();
            List<RungAnswer> known = verdict.ladder().stream().filter(rung -> rung.settings() != null && rung.serves()
                    && rung.firstCost() != null).toList();
            if (verdict.step().compareTo(Step.AS_FOUND) >= 0 && !known.isEmpty()) {
                double least = known.stream().mapToDouble(OneVerdictTest::lifeCycleCost).min().orElseThrow();
                RungAnswer taken = verdict.ladder().get(verdict.step().ordinal());
                assertTrue(taken.serves(), drawn.toString());
                if (taken.firstCost() != null) {
                    assertEquals(least, lifeCycleCost(taken), 0.021 * least + 1, drawn.toString());
                }
            }
        }
    }

    private static double lifeCycleCost(RungAnswer rung) {
        double sum = rung.firstCost().value().doubleValue();
        for (int year = 1; year <= YEARS; year++) {
            sum += rung.costPerYear().value().doubleValue() * Math.pow(1 + GROWTH, year - 1) / Math.pow(1 + DISCOUNT, year);
        }
        return sum;
    }

    /** What each step saves over what was found is the difference of their costs; over the step below it that of theirs. */
    @Test
    void incrementsAddUp() {
        Random random = new Random(13);
        for (int i = 0; i < 2 * HOMES; i++) {
            VerdictAnswer verdict = Case.drawn(random).byReview();
            assertKeepsTheStandard(verdict);
            for (RungAnswer rung : verdict.ladder()) {
                for (IncrementAnswer increment : rung.overBelow() == null ? List.<IncrementAnswer>of()
                        : List.of(rung.overBelow(), rung.overAsFound())) {
                    RungAnswer other = verdict.ladder().get(increment.over().ordinal());
                    assertEquals(other.costPerYear().value().subtract(rung.costPerYear().value()).doubleValue(),
                            increment.savedPerYear().value().doubleValue(), 0.011);
                }
            }
        }
    }

    /** Of soft water it is not said that scale forms and soap is needed. Source: USGS, up to 60 mg/L is soft. */
    @ParameterizedTest
    @CsvSource({"3, false", "4, true", "20, true"})
    void scaleIsForHardWater(double gpg, boolean scale) {
        String note = new Case("{'hardness':{'value':" + gpg + ",'unit':'gpg'}}", "{'people':3}",
                "{'resinVolume':{'value':1,'unit':'ft3'},'control':{'kind':'clock','everyDays':3}}", 400).byReview().ladder().get(0)
                .note().in(Language.ENGLISH);
        assertEquals(scale, note.contains("more soap"), note);
        assertEquals(!scale, note.contains("soft water"), note);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', useHeadersInDisplayName = true, textBlock = """
            why                   | water                                                              | control                      | step
            soft water            | 'hardness':{'value':3,'unit':'gpg'}                                | 'kind':'clock','everyDays':3 | NONE_NEEDED
            bacterial iron        | 'hardness':{'value':15,'unit':'gpg'},'iron':{'value':2,'unit':'mg/L'},'ironForm':'bacterial' | 'kind':'clock','everyDays':3 | TREAT_FIRST
            much iron             | 'hardness':{'value':15,'unit':'gpg'},'iron':{'value':12,'unit':'mg/L'} | 'kind':'clock','everyDays':3 | TREAT_FIRST
            acid water            | 'hardness':{'value':15,'unit':'gpg'},'ph':5.5                      | 'kind':'clock','everyDays':3 | TREAT_FIRST
            """, quoteCharacter = '`')
    void someWaterAsksForSomethingElse(String why, String water, String control, Step step) {
        Case asked = new Case("{" + water + "}", "{'people':3}",
                "{'resinVolume':{'value':1,'unit':'ft3'},'control':{" + control + "}}", 400);
        assertEquals(step, asked.byReview().step());
        String sizing = asked.with("").replaceAll(",\"softener\":.*", "}");
        assertEquals(step, SizeSoftener.OPERATION.answer(TestServer.read(sizing, SizingRequest.class)).verdict().step());
    }

    /** A softener that is metered already is not converted, and a pair of beds keeps nothing back and gets no second tank. */
    @Test
    void theControlFoundIsKeptInMind() {
        Case twin = new Case("{'hardness':{'value':20,'unit':'gpg'}}", "{'people':4}",
                "{'resinVolume':{'value':1,'unit':'ft3'},'saltDose':{'value':8,'unit':'lb/ft3'},'control':"
                + "{'kind':'twinAlternating'}}", 400);
        AssessmentAnswer answer = twin.assessed();
        assertNull(answer.retrofit());
        assertEquals(0, answer.settings().reserve().value().doubleValue());
        assertEquals(List.of("METERED_ALREADY"), names(answer.verdict(), Step.CONVERT));
        assertEquals(List.of("TWIN_ALREADY"), answer.verdict().others().stream().filter(rung -> rung.improvement()
                == Improvement.SECOND_TANK).findFirst().orElseThrow().obstacles().stream().map(Enum::name).toList());
        assertTrue(answer.verdict().ladder().get(Step.SET_RIGHT.ordinal()).hardDays().doubleValue() <= 1);
    }

    /** At most one hard day a year is asked for where nothing else is. */
    private static void assertKeepsTheStandard(VerdictAnswer verdict) {
        for (RungAnswer rung : verdict.ladder()) {
            assertTrue(!rung.serves() || rung.hardDays() == null || rung.hardDays().doubleValue() <= 1.0005, rung.toString());
        }
    }

    /** A bed that needs a regeneration every few litres: the second one is not ready in time. */
    @Test
    void noStepServesWhoseYearRunsHard() {
        assertKeepsTheStandard(new Case("{'calcium':{'value':1500,'unit':'mg/L'},'magnesium':{'value':301.8,'unit':'mg/L'}}",
                "{'weeklyUse':[" + String.join(",", Stream.of(15000, 8681, 6884, 2645, 4344, 0, 13369).map(litres ->
                        "{'value':" + litres + ",'unit':'L'}").toList()) + "],'monthFactors':[0,0,0,3,2,3,3,0,0,1,0,0]}",
                "{'resinVolume':{'value':1.148,'unit':'L'},'salt':'potassiumChloride','resinAgeYears':60,'control':{'kind':'clock',"
                + "'weekdays':['wednesday','sunday','thursday']}}", 400).byReview());
    }

    private static List<String> names(VerdictAnswer verdict, Step step) {
        return verdict.ladder().get(step.ordinal()).obstacles().stream().map(Enum::name).toList();
    }

    /** A free step is worth its own money, and what comes after it only the rest. */
    @Test
    void aMeterIsNotCreditedWithWhatSettingsSave() {
        Case wasteful = new Case("{'hardness':{'value':12,'unit':'gpg'}}", "{'dailyUse':{'value':150,'unit':'gal'}}",
                "{'resinVolume':{'value':1.5,'unit':'ft3'},'tankDiameter':{'value':10,'unit':'in'},'tankHeight':{'value':54,'unit':'in'},"
                + "'saltDose':{'value':15,'unit':'lb/ft3'},'control':{'kind':'clock','everyDays':2}}", 900);
        VerdictAnswer verdict = wasteful.byReview();
        RungAnswer right = verdict.ladder().get(Step.SET_RIGHT.ordinal());
        RungAnswer convert = verdict.ladder().get(Step.CONVERT.ordinal());
        assertEquals(Step.SET_RIGHT, verdict.step());
        assertEquals(Step.SET_RIGHT, convert.overBelow().over());
        assertEquals(convert.overAsFound().savedPerYear().value().doubleValue(), right.overAsFound().savedPerYear().value().doubleValue()
                + convert.overBelow().savedPerYear().value().doubleValue(), 0.02);
        assertTrue(convert.overBelow().savedPerYear().value().compareTo(right.overAsFound().savedPerYear().value()) < 0);
        assertTrue(convert.overBelow().savedPerYearOverSeasonalClock().value().compareTo(convert.overBelow().savedPerYear().value()) <= 0);
        assertEquals(Verdict.Confidence.HIGH, verdict.confidence());
    }
}
