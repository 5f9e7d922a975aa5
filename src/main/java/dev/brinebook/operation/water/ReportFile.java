// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Checker;
import dev.brinebook.api.FormulaGuard;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.WireNames;
import dev.brinebook.text.Message;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The results of a report as text/csv (RFC 4180), or with semicolons and decimal commas: a header of properties of a result,
 * {@code parameter} among them, then a row for each result. It is held to the same rules as a report in JSON; an error names line and
 * column.
 */
final class ReportFile {

    /** What a column may be called. */
    static final List<String> NAMES = Arrays.stream(ReportResultRequest.class.getRecordComponents()).map(RecordComponent::getName).toList();

    private static final String REQUIRED = "parameter";

    private final List<String> header;
    /** Whether cells are separated by semicolons, as where a comma is the decimal sign. */
    private final boolean semicolons;
    private final Violations violations = new Violations();
    private final Violations results = violations.at("results");
    private final List<ReportResultRequest> read = new ArrayList<>();
    /** The line on which each result begins. */
    private final List<Long> lines = new ArrayList<>();
    /** Results whose row has another number of cells than the header. */
    private final List<Integer> unread = new ArrayList<>();

    private ReportFile(List<String> header, boolean semicolons) {
        this.header = header;
        this.semicolons = semicolons;
    }

    /**
     * The request with the results of a table.
     *
     * @throws InvalidRequest with every error, where the text is no such table or a cell holds what no request may
     */
    static WaterReportRequest read(String text, ReportFileRequest settings) {
        String first = text.lines().findFirst().orElse("");
        boolean semicolons = first.contains(";") && !first.contains(",");
        CSVFormat format = semicolons ? CSVFormat.RFC4180.builder().setDelimiter(';').get() : CSVFormat.RFC4180;
        try (CSVParser parser = CSVParser.parse(text, format)) {
            Iterator<CSVRecord> records = parser.iterator();
            if (!records.hasNext()) {
                throw new InvalidRequest(List.of(ofHeader(Code.MISSING, Message.of("problem.waterReport.headerMissing"))));
            }
            ReportFile file = new ReportFile(records.next().stream().map(cell -> FormulaGuard.removedFrom(cell.strip())).toList(),
                    semicolons);
            file.checkHeader();
            return file.request(parser, records, settings);
        } catch (UncheckedIOException e) {
            throw new InvalidRequest(List.of(ofHeader(Code.WRONG_TYPE, Message.of("problem.household.quoteClosedOrText"))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private WaterReportRequest request(CSVParser parser, Iterator<CSVRecord> records, ReportFileRequest settings) {
        try {
            readRows(parser, records);
            WaterReportRequest request = new WaterReportRequest(read, settings.supply(), settings.appearance(), settings.naturalSodium(),
                    null, settings.country(), settings.units());
            Checker.check(request, violations);
            unread.forEach(row -> results.at(row).forgetBelow());
            if (!violations.isEmpty()) {
                throw new InvalidRequest(violations.sorted());
            }
            return request;
        } catch (InvalidRequest invalid) {
            throw new InvalidRequest(invalid.violations().stream().map(this::placed).toList());
        }
    }

    private static Violation ofHeader(Code code, Message message) {
        return new Violation("", code, message);
    }

    private void checkHeader() {
        List<Violation> faults = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String name : header) {
            if (!NAMES.contains(name)) {
                Violation unknown = Violation.unknownField("", name, NAMES);
                faults.add(new Violation("", Code.UNKNOWN_FIELD, Message.sentences(List.of(place(1, column(name, header.indexOf(name))),
                        unknown.message())), unknown.allowed(), unknown.didYouMean(), null));
            } else if (!seen.add(name)) {
                faults.add(ofHeader(Code.INCONSISTENT, Message.sentences(List.of(place(1, name),
                        Message.of("tableHeader.duplicateColumnHeader")))));
            }
        }
        if (faults.isEmpty() && !seen.contains(REQUIRED)) {
            faults.add(ofHeader(Code.MISSING, Message.of("problem.waterReport.headerMissing")));
        }
        if (!faults.isEmpty()) {
            throw new InvalidRequest(faults.stream().limit(Violations.MAX_FAULTS).toList());
        }
    }

    /** A name that is short and harmless, else the number of the column. */
    private static String column(String name, int index) {
        return name.matches("[\\w ./-]{1,40}") ? name : Integer.toString(index + 1);
    }

    private static Message place(long line, String column) {
        return Message.of("problem.waterReport.lineColumn", line, column);
    }

    /** Reads one row more than a request may have, so that a longer table is refused for its length. */
    private void readRows(CSVParser parser, Iterator<CSVRecord> records) {
        long line = parser.getCurrentLineNumber() + 1;
        while (records.hasNext() && read.size() <= WaterReportRequest.MAX_RESULTS) {
            CSVRecord row = records.next();
            if (row.size() > 1 || !row.get(0).isBlank()) {
                lines.add(line);
                if (row.size() == header.size()) {
                    read.add(new ReportRow(header, row.toList(), semicolons, results.at(read.size())).toRequest());
                } else {
                    unread.add(read.size());
                    results.at(read.size()).add(Code.WRONG_COUNT, Message.of("problem.http.rowCellHeaderRow", row.size(), header.size()));
                    read.add(ReportRow.EMPTY);
                }
            }
            line = parser.getCurrentLineNumber() + 1;
        }
    }

    /** The same with the line and the column, where it is about one. */
    private Violation placed(Violation violation) {
        String[] parts = violation.pointer().split("/");
        if (parts.length < 3 || !parts[1].equals("results")) {
            return violation;
        }
        long line = lines.get(Integer.parseInt(parts[2]));
        Message where = parts.length > 3 ? place(line, parts[3]) : Message.of("problem.waterReport.line", line);
        return new Violation(violation.pointer(), violation.code(), Message.sentences(List.of(where, violation.message())),
                violation.allowed(), violation.didYouMean(), violation.received());
    }

    /** How the names of a closed list are written in the description of a column. */
    static String names(Class<?> enumeration) {
        return String.join(", ", WireNames.all(enumeration));
    }
}
