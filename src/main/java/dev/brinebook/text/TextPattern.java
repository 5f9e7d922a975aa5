// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.text;

import com.ibm.icu.text.MessagePattern;
import com.ibm.icu.text.MessagePattern.ArgType;
import com.ibm.icu.text.MessagePattern.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A text of the store, taken apart: the plural and select forms of the message syntax of ICU, read by ICU's own parser. The
 * slots are numbered; the one named argument is {@code units}, which is {@code us} or {@code metric}.
 *
 * <p>It is written here and not by ICU's formatter, which would bring its number formats and their data into memory at start.
 */
final class TextPattern {

    private static final String UNITS = "units";
    private static final String OTHER = "other";

    private final List<Node> nodes;

    private TextPattern(List<Node> nodes) {
        this.nodes = nodes;
    }

    /** @throws IllegalArgumentException when ICU cannot read it, or it uses more of the syntax than is understood here */
    static TextPattern parse(String text) {
        if (text.indexOf('{') < 0 && text.indexOf('\'') < 0) {
            return new TextPattern(List.of(new Literal(text)));
        }
        return new TextPattern(new Reader(new MessagePattern(text)).nodes());
    }

    void render(Message message, Language language, StringBuilder to) {
        render(nodes, message, language, to);
    }

    private static void render(List<Node> nodes, Message message, Language language, StringBuilder to) {
        for (Node node : nodes) {
            node.render(message, language, to);
        }
    }

    private interface Node {
        void render(Message message, Language language, StringBuilder to);
    }

    private record Literal(String text) implements Node {
        @Override
        public void render(Message message, Language language, StringBuilder to) {
            to.append(text);
        }
    }

    private record Slot(int number) implements Node {
        @Override
        public void render(Message message, Language language, StringBuilder to) {
            message.renderValue(number, language, to);
        }
    }

    /** Branches by a count: those for exact numbers, such as {@code =0}, before those of the language's plural rules. */
    private record Plural(int number, Map<String, List<Node>> branches) implements Node {
        @Override
        public void render(Message message, Language language, StringBuilder to) {
            List<Node> exact = branches.get("=" + message.count(number).stripTrailingZeros().toPlainString());
            List<Node> chosen = exact != null ? exact : branches.get(language.pluralCategory(message.count(number)));
            TextPattern.render(chosen != null ? chosen : branches.get(OTHER), message, language, to);
        }
    }

    /** Branches by a code; {@code number} is negative for the units. */
    private record Select(int number, Map<String, List<Node>> branches) implements Node {
        @Override
        public void render(Message message, Language language, StringBuilder to) {
            String code = number >= 0 ? message.code(number) : message.isMetric() ? "metric" : "us";
            TextPattern.render(branches.getOrDefault(code, branches.get(OTHER)), message, language, to);
        }
    }

    /** Reads the parts that ICU's parser found, from one index on. */
    private static final class Reader {

        private final MessagePattern pattern;
        private final String text;
        private int at;

        Reader(MessagePattern pattern) {
            this.pattern = pattern;
            this.text = pattern.getPatternString();
        }

        List<Node> nodes() {
            return message(-1);
        }

        /** The nodes from a start of a message to its end; {@code count} is the slot that {@code #} refers to. */
        private List<Node> message(int count) {
            List<Node> nodes = new ArrayList<>();
            int end = pattern.getLimitPartIndex(at);
            int from = pattern.getPart(at).getLimit();
            at++;
            while (at <= end) {
                Part part = pattern.getPart(at);
                literal(nodes, from, part.getIndex());
                switch (part.getType()) {
                    case ARG_START -> nodes.add(argument(count));
                    case REPLACE_NUMBER -> nodes.add(new Slot(count));
                    default -> { }
                }
                from = pattern.getPart(at).getLimit();
                at++;
            }
            return List.copyOf(nodes);
        }

        private void literal(List<Node> nodes, int from, int to) {
            if (to > from) {
                nodes.add(new Literal(text.substring(from, to)));
            }
        }

        /** The argument that starts here; ends on its last part. */
        private Node argument(int count) {
            int end = pattern.getLimitPartIndex(at);
            ArgType type = pattern.getPart(at).getArgType();
            Part name = pattern.getPart(at + 1);
            boolean units = name.getType() == Part.Type.ARG_NAME && pattern.partSubstringMatches(name, UNITS);
            if (name.getType() != Part.Type.ARG_NUMBER && !(units && type == ArgType.SELECT)) {
                throw new IllegalArgumentException("unknown argument " + pattern.getSubstring(name) + " in: " + text);
            }
            int number = units ? -1 : name.getValue();
            at += 2;
            Node node = switch (type) {
                case NONE -> new Slot(number);
                case PLURAL -> new Plural(number, branches(end, number));
                case SELECT -> new Select(number, branches(end, count));
                default -> throw new IllegalArgumentException("unknown kind of argument in: " + text);
            };
            at = end;
            return node;
        }

        private Map<String, List<Node>> branches(int end, int count) {
            Map<String, List<Node>> branches = new LinkedHashMap<>();
            while (at < end) {
                String selector = pattern.getSubstring(pattern.getPart(at));
                at++;
                if (pattern.getPart(at).getType().hasNumericValue()) {
                    at++;
                }
                branches.put(selector, message(count));
            }
            return branches;
        }
    }
}
