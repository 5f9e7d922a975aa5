// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;

/**
 * Checks the arguments of a tool against its input schema, of which it knows the keywords that our schemas use. Requests of operations
 * are checked where those of every caller are.
 */
final class SchemaCheck {

    private final List<Fault> faults = new ArrayList<>();

    private SchemaCheck() {
    }

    /** Every fault of {@code arguments}. */
    static List<Fault> check(JsonNode schema, Map<String, JsonNode> arguments) {
        SchemaCheck check = new SchemaCheck();
        List<String> known = schema.get("properties").properties().stream().map(Map.Entry::getKey).toList();
        arguments.forEach((name, value) -> {
            JsonNode property = schema.get("properties").get(name);
            if (property == null) {
                check.faults.add(Fault.unknownField("", name, known));
            } else {
                check.value("/" + name, property, value);
            }
        });
        schema.path("required").forEach(name -> {
            if (!arguments.containsKey(name.textValue())) {
                check.faults.add(new Fault("/" + name.textValue(), "missing", "must be given"));
            }
        });
        return check.faults;
    }

    private void value(String pointer, JsonNode schema, JsonNode value) {
        String type = schema.path("type").asText();
        boolean right = switch (type) {
            case "number" -> value.isNumber();
            case "integer" -> value.isNumber() && isWhole(value.decimalValue());
            case "string" -> value.isTextual();
            case "array" -> value.isArray();
            default -> value.isObject();
        };
        if (!right) {
            faults.add(new Fault(pointer, "wrongType", "must be a JSON value of type " + type));
        } else if (schema.has("enum")) {
            List<String> allowed = StreamSupport.stream(schema.get("enum").spliterator(), false).map(JsonNode::textValue).toList();
            if (!allowed.contains(value.textValue())) {
                faults.add(Fault.unknownValue(pointer, value.textValue(), allowed));
            }
        } else if (value.isNumber()) {
            number(pointer, schema, value.decimalValue());
        } else if (value.isTextual()) {
            text(pointer, schema, value.textValue());
        } else if (value.isArray()) {
            list(pointer, schema, value);
        }
    }

    private static boolean isWhole(BigDecimal number) {
        return number.signum() == 0 || number.precision() < 20 && Math.abs(number.scale()) < 20
                && number.stripTrailingZeros().scale() <= 0;
    }

    private void number(String pointer, JsonNode schema, BigDecimal number) {
        boolean low = schema.has("minimum") && number.compareTo(schema.get("minimum").decimalValue()) < 0
                || schema.has("exclusiveMinimum") && number.compareTo(schema.get("exclusiveMinimum").decimalValue()) <= 0;
        boolean high = schema.has("maximum") && number.compareTo(schema.get("maximum").decimalValue()) > 0;
        if (low || high) {
            String least = schema.has("minimum") ? "from " + schema.get("minimum").asText() : "above 0";
            faults.add(new Fault(pointer, "outOfRange", "allowed " + least + (schema.has("maximum") ? " to "
                    + schema.get("maximum").asText() : "")));
        }
    }

    private void text(String pointer, JsonNode schema, String text) {
        int least = schema.path("minLength").asInt(0);
        int most = schema.path("maxLength").asInt(Integer.MAX_VALUE);
        if (text.length() < least || text.length() > most) {
            faults.add(new Fault(pointer, "wrongCount", "allowed " + least + " to " + most + " characters"));
        } else if (schema.has("pattern") && !text.matches("(?s)" + schema.get("pattern").asText() + ".*")) {
            faults.add(new Fault(pointer, "unknownValue", "must match " + schema.get("pattern").asText()));
        }
    }

    private void list(String pointer, JsonNode schema, JsonNode list) {
        if (list.size() > schema.get("maxItems").asInt()) {
            faults.add(new Fault(pointer, "wrongCount", "at most " + schema.get("maxItems").asInt() + " elements"));
            return;
        }
        for (int i = 0; i < list.size(); i++) {
            value(pointer + "/" + i, schema.get("items"), list.get(i));
        }
    }
}
