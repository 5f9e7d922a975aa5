// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.Rendering;
import dev.brinebook.http.TestServer;
import dev.brinebook.model.Model;
import dev.brinebook.text.Language;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the files of a schedule say is in the language asked for; what programs read is not. */
class ScheduleLanguageTest {

    private static final Language GERMAN = Language.of("de");

    private static String file(String mediaType, Language language) {
        ScheduleRequest request = TestServer.read(TestServer.example("scheduleRegeneration.apartment"),
                ScheduleRequest.class);
        AnswerForm<ScheduleRequest> form = ScheduleRegeneration.OPERATION.forms().stream()
                .filter(one -> one.mediaType().equals(mediaType)).findAny().orElseThrow();
        return new String(form.write().write(request, Model.CURRENT, Rendering.in(language)), StandardCharsets.UTF_8).replace("\r\n ", "");
    }

    private static List<String> lines(String file, String start) {
        return file.lines().filter(line -> line.startsWith(start)).toList();
    }

    @Test
    void aCalendarSpeaksTheLanguageAndItsEventsStayTheSame() {
        String english = file("text/calendar", Language.ENGLISH);
        String german = file("text/calendar", GERMAN);
        assertEquals(List.of("NAME:Water softener: Now"), lines(english, "NAME"));
        assertEquals(List.of("NAME:Enthärter: Jetzt"), lines(german, "NAME"));
        assertTrue(german.contains("SUMMARY:Regeneration des Enthärters"), german);
        assertTrue(german.contains(" 1\\,9\u00a0kg Salz"), german);
        assertNotEquals(lines(english, "DESCRIPTION"), lines(german, "DESCRIPTION"));
        for (String same : List.of("UID", "DTSTART", "DTEND", "CATEGORIES")) {
            assertEquals(lines(english, same), lines(german, same));
        }
    }

    @Test
    void aTableKeepsItsColumnsAndNumbersForPrograms() {
        assertEquals(file("text/csv", Language.ENGLISH).replace("Now", "Jetzt"), file("text/csv", GERMAN));
    }
}
