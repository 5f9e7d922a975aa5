// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import dev.brinebook.api.CsvColumn;
import dev.brinebook.api.CsvColumns;
import dev.brinebook.api.CsvColumnsAnswer;
import dev.brinebook.api.Operation;
import dev.brinebook.contract.Contract;
import dev.brinebook.http.Resources;
import dev.brinebook.http.exchange.Acceptance;
import dev.brinebook.http.exchange.Cached;
import dev.brinebook.http.json.JsonWriter;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.text.Message;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A table to start from: every column of an operation's requests, and a row for each of its examples that fits one. */
public final class BulkTemplate {

    private static final ObjectMapper JSON = JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES).build();

    private final Function<String, Operation<?, ?>> operations;
    private final JsonWriter writer;

    public BulkTemplate(Function<String, Operation<?, ?>> operations, JsonWriter writer) {
        this.operations = operations;
        this.writer = writer;
    }

    static String path(Operation<?, ?> operation) {
        return Contract.TEMPLATE_PATH.replace("{calculator}", operation.id());
    }

    /** The table itself, or what each of its columns is, as JSON. */
    public void get(Context context) {
        Operation<?, ?> operation = operations.apply(context.pathParam("calculator"));
        CsvColumns.missing(operation.requestType()).ifPresent(missing -> {
            throw new ProblemException(ProblemType.NOT_FOUND, Message.of(
                    "bulkTemplate.doesAcceptCsvList", operation.id(), missing));
        });
        context.res().addHeader("Vary", "Accept");
        String form = Acceptance.choose(context, List.of(AnswerTable.MEDIA_TYPE, Operation.JSON));
        if (form.equals(Operation.JSON)) {
            context.contentType(form).result(writer.write(CsvColumnsAnswer.of(operation)));
        } else {
            context.contentType(form + "; charset=utf-8").result(table(operation).getBytes(StandardCharsets.UTF_8));
        }
        Cached.mark(context);
    }

    static String table(Operation<?, ?> operation) {
        List<CsvColumn> columns = CsvColumns.ofRequest(operation.requestType());
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            csv.writeRecord(columns.stream().map(CsvColumn::name).toList());
            for (String example : operation.examples()) {
                row(columns, JSON.readTree(Resources.example(operation.exampleFile(example, "request"))))
                        .ifPresent(csv::writeRecord);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /** The request as a row, if the columns hold the whole of it. */
    private static Optional<List<String>> row(List<CsvColumn> columns, JsonNode request) {
        List<String> cells = new ArrayList<>();
        int held = 0;
        for (CsvColumn column : columns) {
            JsonNode value = request;
            for (String name : column.path()) {
                value = value.path(name);
            }
            List<String> values = new ArrayList<>();
            if (value.isArray()) {
                value.forEach(element -> values.add(element.asText()));
            } else if (value.isValueNode()) {
                values.add(value.asText());
            }
            held += values.size();
            cells.add(String.join(CsvColumn.SEPARATOR, values));
        }
        return held == values(request) ? Optional.of(cells) : Optional.empty();
    }

    private static int values(JsonNode node) {
        if (node.isValueNode()) {
            return 1;
        }
        int count = 0;
        for (JsonNode below : node) {
            count += values(below);
        }
        return count;
    }
}
