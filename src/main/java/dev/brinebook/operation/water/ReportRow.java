// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.FormulaGuard;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.WireNames;
import dev.brinebook.text.Message;
import dev.brinebook.water.report.Parameter;
import dev.brinebook.water.report.PrintedResult.Qualifier;
import dev.brinebook.water.report.PrintedResult.Tap;
import dev.brinebook.water.report.ReportForm;
import dev.brinebook.water.report.ReportUnit;
import dev.brinebook.water.report.TestMethod;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * One row of a table of results. An empty cell is a property that is not given; a cell that cannot be read is reported and taken as empty.
 *
 * @param header names of the columns
 * @param cells of the row, as many
 * @param commas whether numbers may have a decimal comma
 * @param at where its errors go
 */
record ReportRow(List<String> header, List<String> cells, boolean commas, Violations at) {

    /** A row that could not be read. */
    static final ReportResultRequest EMPTY = new ReportResultRequest(null, null, null, null, null, null, null, null, null, null, null, null,
            null, null);

    /** As in JSON, of a length that a reader would still write. */
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,20}(\\.\\d{1,20})?([eE][+-]?\\d{1,2})?");
    private static final Pattern WHOLE = Pattern.compile("-?\\d{1,9}");
    /** Years of a date, as in JSON. */
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2199;
    private static final Pattern HARMLESS = Pattern.compile("[\\w ,./°'<>-]{1,40}");

    ReportResultRequest toRequest() {
        return new ReportResultRequest(constant("parameter", Parameter.class), number("value"), constant("unit", ReportUnit.class),
                constant("form", ReportForm.class), constant("qualifier", Qualifier.class), constant("method", TestMethod.class),
                number("uncertainty"), number("resolution"), constant("tap", Tap.class), flag("onSite"), flag("firstDraw"),
                whole("report"), date("sampledOn"), number("hoursHeld"));
    }

    private <T> T read(String column, Function<String, T> reader) {
        int index = header.indexOf(column);
        String cell = index < 0 ? "" : FormulaGuard.removedFrom(cells.get(index).strip());
        return cell.isEmpty() ? null : reader.apply(cell);
    }

    private <E extends Enum<E>> E constant(String column, Class<E> type) {
        return read(column, cell -> {
            List<String> names = WireNames.all(type);
            int index = names.indexOf(type == ReportUnit.class ? plain(cell) : cell);
            if (index < 0) {
                Violations place = at.at(column);
                place.add(new Violation(place.pointer(), Code.UNKNOWN_VALUE, Message.of("problem.http.mustOne", String.join(", ", names)),
                        Violation.names(names), WireNames.nearest(cell, names).orElse(null), harmless(cell)));
            }
            return index < 0 ? null : type.getEnumConstants()[index];
        });
    }

    private BigDecimal number(String column) {
        return read(column, cell -> NUMBER.matcher(pointed(cell)).matches() ? new BigDecimal(pointed(cell))
                : refused(column, cell, Message.of("problem.waterReport.numberCell")));
    }

    private String pointed(String cell) {
        return commas ? cell.replace(',', '.') : cell;
    }

    /** A unit as it is printed, {@code µg/l} or {@code °dH}, in the letters of the list. */
    private static String plain(String cell) {
        return cell.replace('\u00B5', 'u').replace('\u03BC', 'u').replaceFirst("^\u00B0", "").replaceFirst("/l$", "/L");
    }

    private Integer whole(String column) {
        return read(column, cell -> WHOLE.matcher(cell).matches() ? Integer.valueOf(cell)
                : refused(column, cell, Message.of("problem.waterReport.wholeCell")));
    }

    private LocalDate date(String column) {
        return read(column, cell -> {
            try {
                LocalDate date = LocalDate.parse(cell);
                if (date.getYear() >= FIRST_YEAR && date.getYear() <= LAST_YEAR) {
                    return date;
                }
            } catch (DateTimeParseException notADate) {
                // reported below, together with a year out of range
            }
            return refused(column, cell, Message.of("problem.http.mustDate19002199"));
        });
    }

    private Boolean flag(String column) {
        return read(column, cell -> cell.equalsIgnoreCase("true") || cell.equalsIgnoreCase("false") ? Boolean.valueOf(cell)
                : refused(column, cell, Message.of("problem.waterReport.flagCell")));
    }

    private <T> T refused(String column, String cell, Message message) {
        Violations place = at.at(column);
        place.add(new Violation(place.pointer(), Code.WRONG_TYPE, message, null, null, harmless(cell)));
        return null;
    }

    private static String harmless(String cell) {
        return HARMLESS.matcher(cell).matches() ? cell : null;
    }
}
