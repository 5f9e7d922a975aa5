package dev.brinebook.operation.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.api.AnswerForm;
import dev.brinebook.http.TestServer;
import dev.brinebook.wording.Wording;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What the files of a schedule say is in the language asked for; what programs read is not. */
class ScheduleLanguageTest {

    /** Another language: all in capitals, with a comma before the decimals. */
    private static final Wording LOUD = new Wording() {
        @Override
        public String template(String english) {
            return english.toUpperCase(Locale.ROOT);
        }

        @Override
        public String number(BigDecimal number) {
            return number.toPlainString().replace('.', ',');
        }

        @Override
        public boolean isOne(BigDecimal count) {
            return count.compareTo(BigDecimal.ONE) == 0;
        }
    };

    private static String file(String mediaType, Wording language) {
        ScheduleRequest request = TestServer.read(TestServer.example("scheduleRegeneration.apartment"),
                ScheduleRequest.class);
        AnswerForm<ScheduleRequest> form = ScheduleRegeneration.OPERATION.forms().stream()
                .filter(one -> one.mediaType().equals(mediaType)).findAny().orElseThrow();
        return new String(form.write().apply(request, language), StandardCharsets.UTF_8).replace("\r\n ", "");
    }

    private static List<String> lines(String file, String start) {
        return file.lines().filter(line -> line.startsWith(start)).toList();
    }

    @Test
    void aCalendarSpeaksTheLanguageAndItsEventsStayTheSame() {
        String english = file("text/calendar", Wording.ENGLISH);
        String loud = file("text/calendar", LOUD);
        assertEquals(List.of("NAME:Water softener: as found"), lines(english, "NAME"));
        assertEquals(List.of("NAME:WATER SOFTENER: AS FOUND"), lines(loud, "NAME"));
        assertTrue(loud.contains("SUMMARY:SOFTENER REGENERATES"));
        assertTrue(loud.contains("DESCRIPTION:THE CLOCK STARTS IT. IT USES 1\\,92 kg OF SALT"), loud);
        assertNotEquals(lines(english, "DESCRIPTION"), lines(loud, "DESCRIPTION"));
        for (String same : List.of("UID", "DTSTART", "DTEND", "CATEGORIES")) {
            assertEquals(lines(english, same), lines(loud, same));
        }
    }

    @Test
    void aTableKeepsItsColumnsAndNumbersForPrograms() {
        assertEquals(file("text/csv", Wording.ENGLISH).replace("as found", "AS FOUND"), file("text/csv", LOUD));
    }
}
