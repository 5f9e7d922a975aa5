// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import dev.brinebook.api.Rendering;
import dev.brinebook.guard.WorkingMemory;
import dev.brinebook.http.TestServer;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.json.JsonWriter;
import dev.brinebook.model.Model;
import dev.brinebook.text.Language;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An assessment that is asked for again, or for another sheet of it, is what it was, whatever was asked for between. */
class AssessAgainTest {

    private static final List<String> HOUSEHOLDS = List.of("well-family", "apartment", "holiday-cabin");

    @BeforeEach
    void forget() {
        WorkingMemory.clear();
    }

    private static AssessmentRequest request(String body) {
        return new JsonReader().read(body.getBytes(StandardCharsets.UTF_8), AssessmentRequest.class);
    }

    private static Assess.Assessed assessed(String body) {
        return WorkingMemory.during(() -> Assess.assessed(request(body), Model.CURRENT));
    }

    private static String answer(String body) {
        return new String(new JsonWriter().write(WorkingMemory.during(() -> Assess.OPERATION.answer(request(body)))),
                StandardCharsets.UTF_8);
    }

    private static String sheet(String body) {
        return WorkingMemory.during(() -> AssessmentSheets.xhtml(request(body), Model.CURRENT, Rendering.in(Language.ENGLISH)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"well-family", "apartment", "holiday-cabin"})
    void isTheSameAsWithoutAMemory(String household) {
        String body = TestServer.example("assess." + household);
        String alone = answer(body);
        WorkingMemory.clear();
        String sheetAlone = sheet(body);
        assertEquals(alone, answer(body), "after its sheet");
        assertEquals(alone, answer(body), "again");
        HOUSEHOLDS.forEach(other -> answer(TestServer.example("assess." + other)));
        assertEquals(alone, answer(body), "after all others");
        assertEquals(sheetAlone, sheet(body));
    }

    @Test
    void isCalculatedOnceForItsAnswerAndItsSheets() {
        String body = TestServer.example("assess.apartment");
        Assess.Assessed first = assessed(body);
        answer(body);
        sheet(body);
        assertSame(first, assessed(body));
        assertNotSame(first, assessed(body.replaceFirst("\"people\": 2", "\"people\": 3")));
    }

    /** Two that run at once have a memory each, so that neither reads what the other changes. */
    @Test
    void isTheSameForManyAtOnce() {
        String body = TestServer.example("assess.well-family");
        String alone = answer(body);
        List<String> answers = IntStream.range(0, 40).parallel()
                .mapToObj(i -> i % 4 == 0 ? answer(TestServer.example("assess.apartment")) : answer(body)).toList();
        IntStream.range(0, answers.size()).filter(i -> i % 4 != 0).forEach(i -> assertEquals(alone, answers.get(i)));
    }
}
