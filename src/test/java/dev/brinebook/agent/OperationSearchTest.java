// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Questions as people ask them, invented here, each with the operation that answers it. */
class OperationSearchTest {

    private static final String QUESTIONS = """
            My test says 300 ppm, how many grains is that?                        | convertHardness
            How hard is 14 German degrees in mg/L?                                | convertHardness
            There is iron in the well, what hardness do I dial in?                | compensateHardness
            What does manganese add to the hardness setting of the controller?    | compensateHardness
            How many gallons per minute do two showers and a dishwasher need?     | estimatePeakFlow
            What is the peak flow of a house with three bathrooms?                | estimatePeakFlow
            I have daily water meter readings for two months, what do they say?   | readMeter
            Is there a leak in these meter readings?                              | readMeter
            Which softener should I buy for six people?                           | sizeSoftener
            How big must a new softener be?                                       | sizeSoftener
            Can I leave a bit of hardness with a mixing valve?                    | blendHardness
            On which days will it regenerate next month and when do I need salt?  | scheduleRegeneration
            How much reserve should a delayed meter keep?                         | chooseReserve
            How many minutes for backwash, brine draw and rinse?                  | designCycle
            How long should the brine refill run?                                 | designCycle
            What capacity does a cubic foot of resin have at 6 pounds of salt?    | chartResinCapacity
            What is the pressure drop through the bed at 8 gpm?                   | computeBedHydraulics
            How many years until a meter instead of the clock pays back?          | estimatePayback
            Compare a new softener, a twin tank and a loan over ten years         | compareAlternatives
            The installer programmed these settings, are they wrong?              | reviewSettings
            Would these settings have run out of soft water on my recorded days?  | backtestSettings
            Tell me everything about my existing softener, is it set right?       | assess
            """;

    private final OperationSearch search = new OperationSearch(Main.OPERATIONS);

    @Test
    void findsTheOperationThatAnswersAQuestion() {
        List<String> notFirst = new ArrayList<>();
        List<String> notFound = new ArrayList<>();
        List<String> questions = QUESTIONS.lines().toList();
        for (String line : questions) {
            String[] row = line.split(" +\\| ");
            List<String> found = search.find(row[0]).stream().<String>map(Operation::id).toList();
            if (!found.contains(row[1])) {
                notFound.add(line + found);
            }
            if (found.isEmpty() || !found.get(0).equals(row[1])) {
                notFirst.add(line + found);
            }
        }
        assertEquals(List.of(), notFound);
        assertTrue(notFirst.size() <= questions.size() - 18, notFirst.toString());
    }

    @Test
    void offersWhatTellsTheSaltOfAYear() {
        List<String> found = search.find("how much salt will I use a year").stream().<String>map(Operation::id).toList();
        assertTrue(found.containsAll(List.of("assess", "scheduleRegeneration")), found.toString());
    }

    @ParameterizedTest
    @CsvSource({"is softened water safe for a baby?, true", "May I drink it on a low-sodium diet?, true",
        "is there lead in the water, true", "How much reserve should a delayed meter keep?, false"})
    void sendsQuestionsAboutHealthElsewhere(String question, boolean ofHealth) {
        assertEquals(ofHealth, search.answer(question).startsWith("Health questions are outside"));
    }

    @Test
    void findsNothingForOtherWords() {
        assertEquals(List.of(), search.find("zebra xylophone"));
        assertTrue(search.answer("zebra xylophone").startsWith("No operation shares a word with the question. All: convertHardness, "));
    }

    @Test
    void tellsWhatAnOperationNeedsAndWhatATermMeans() {
        String answer = search.answer("what is the day override of a meter");
        assertTrue(answer.contains("Term day override: The most days between two regenerations"), answer);
        assertTrue(search.answer("which softener to buy").contains("Needs: water (The water test), household (The household)"));
    }

    /** Every operation of the service has words of its own, and no others are listed. */
    @Test
    void hasWordsForEveryOperation() {
        List<String> listed = Json.lines("synonyms.txt").stream().map(line -> line.substring(0, line.indexOf(':'))).toList();
        assertTrue(listed.containsAll(Main.OPERATIONS.stream().map(Operation::id).toList()), listed.toString());
    }
}
