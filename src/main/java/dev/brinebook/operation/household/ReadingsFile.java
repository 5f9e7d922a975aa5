// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Violation;
import dev.brinebook.household.Meter;
import dev.brinebook.household.Meter.Kind;
import dev.brinebook.household.MeterReading;
import dev.brinebook.household.RowNote;
import dev.brinebook.household.RowNote.Code;
import dev.brinebook.request.household.WrittenTime;
import dev.brinebook.text.Message;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Readings as text/csv (RFC 4180): a header of two columns, {@code at} and {@code reading} or {@code volume}, then a row
 * for each reading. A file that is not such a table is refused; a row that cannot be read is reported and skipped.
 *
 * @param kind given by the column
 * @param rows each by the line on which it begins
 */
record ReadingsFile(Kind kind, ReadRows rows) {

    private static final Map<String, Kind> KINDS = Map.of("reading", Kind.REGISTER, "volume", Kind.VOLUME);
    private static final Pattern NUMBER = Pattern.compile("\\d{1,15}(\\.\\d{1,15})?");
    private static final Pattern BEYOND = Pattern.compile("-?\\d+(\\.\\d+)?([eE][+-]?\\d+)?");
    private static final Pattern COMMA = Pattern.compile("-?[\\d.]*,\\d+(\\.\\d+)?");

    static ReadingsFile read(String text) {
        try (CSVParser parser = CSVParser.parse(text, CSVFormat.RFC4180)) {
            return read(parser);
        } catch (UncheckedIOException e) {
            throw notATable(Message.of("problem.household.quoteClosedOrText"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ReadingsFile read(CSVParser parser) {
        Iterator<CSVRecord> records = parser.iterator();
        if (!records.hasNext()) {
            throw notATable(Message.of("problem.household.bodyEmptyLine1"));
        }
        List<String> header = records.next().stream().map(String::strip).toList();
        int time = header.indexOf("at");
        Kind kind = header.size() == 2 && time >= 0 ? KINDS.get(header.get(1 - time)) : null;
        if (kind == null) {
            throw notATable(Message.of("problem.household.line1MustHeader"));
        }
        List<MeterReading> readings = new ArrayList<>();
        List<RowNote> unread = new ArrayList<>();
        long line = parser.getCurrentLineNumber() + 1;
        while (records.hasNext()) {
            CSVRecord row = records.next();
            boolean blank = row.size() == 1 && row.get(0).isBlank();
            if (!blank) {
                read(row, (int) line, time, readings, unread);
            }
            if (readings.size() + unread.size() > Meter.MAX_READINGS) {
                throw notATable(Message.of("problem.household.fileMoreThanRows", Meter.MAX_READINGS));
            }
            line = parser.getCurrentLineNumber() + 1;
        }
        return new ReadingsFile(kind, new ReadRows("", readings, unread));
    }

    private static void read(CSVRecord row, int line, int time, List<MeterReading> readings, List<RowNote> unread) {
        if (row.size() != 2) {
            unread.add(new RowNote(line, Code.WRONG_CELLS));
            return;
        }
        Optional<WrittenTime> at = WrittenTime.parse(row.get(time).strip());
        String value = row.get(1 - time).strip();
        Code fault = at.isEmpty() ? Code.UNREADABLE_TIME : fault(value);
        if (fault == null) {
            readings.add(new MeterReading(line, at.get().local(), at.get().offset(), Double.parseDouble(value)));
        } else {
            unread.add(new RowNote(line, fault));
        }
    }

    private static Code fault(String value) {
        if (COMMA.matcher(value).matches()) {
            return Code.DECIMAL_COMMA;
        }
        if (!NUMBER.matcher(value).matches()) {
            return BEYOND.matcher(value).matches() ? Code.VALUE_OUT_OF_RANGE : Code.UNREADABLE_VALUE;
        }
        return Double.parseDouble(value) <= Meter.MAX_READING ? null : Code.VALUE_OUT_OF_RANGE;
    }

    private static InvalidRequest notATable(Message why) {
        return new InvalidRequest(List.of(new Violation("", Violation.Code.WRONG_TYPE, why)));
    }
}
