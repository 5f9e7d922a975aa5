// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.text;

import com.ibm.icu.text.MessagePattern;
import com.ibm.icu.text.MessagePattern.ArgType;
import com.ibm.icu.text.MessagePattern.Part;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/** What a test wants to know of a text of the store, by ICU's own parser. */
final class Patterns {

    private Patterns() {
    }

    /** Numbers and names of the slots. */
    static Set<String> slots(String text) {
        MessagePattern pattern = new MessagePattern(text);
        Set<String> slots = new TreeSet<>();
        for (int part = 0; part < pattern.countParts(); part++) {
            Part.Type type = pattern.getPartType(part);
            if (type == Part.Type.ARG_NUMBER || type == Part.Type.ARG_NAME) {
                slots.add(pattern.getSubstring(pattern.getPart(part)));
            }
        }
        return slots;
    }

    /** Slots that choose a branch, each with its codes; of counts with no codes, as they differ by language. */
    static TreeMap<String, Set<String>> choices(String text) {
        MessagePattern pattern = new MessagePattern(text);
        TreeMap<String, Set<String>> choices = new TreeMap<>();
        for (int part = 0; part < pattern.countParts(); part++) {
            if (pattern.getPartType(part) == Part.Type.ARG_START && pattern.getPart(part).getArgType() != ArgType.NONE) {
                Set<String> codes = choices.computeIfAbsent(pattern.getSubstring(pattern.getPart(part + 1)), slot -> new TreeSet<>());
                if (pattern.getPart(part).getArgType() == ArgType.SELECT) {
                    int end = pattern.getLimitPartIndex(part);
                    for (int at = part + 2; at < end; at = pattern.getLimitPartIndex(at + 1) + 1) {
                        codes.add(pattern.getSubstring(pattern.getPart(at)));
                    }
                } else {
                    codes.add("#");
                }
            }
        }
        return choices;
    }

    /** The text with {@code change} made to what is not syntax. */
    static String changeWords(String text, UnaryOperator<String> change) {
        MessagePattern pattern = new MessagePattern(text);
        StringBuilder changed = new StringBuilder();
        int from = 0;
        boolean words = false;
        for (int part = 0; part < pattern.countParts(); part++) {
            Part at = pattern.getPart(part);
            String between = text.substring(from, Math.max(from, at.getIndex()));
            changed.append(words ? change.apply(between) : between).append(text, at.getIndex(), Math.max(at.getIndex(), at.getLimit()));
            from = Math.max(from, at.getLimit());
            words = switch (at.getType()) {
                case MSG_START, ARG_LIMIT, REPLACE_NUMBER, SKIP_SYNTAX -> true;
                case MSG_LIMIT, ARG_START -> false;
                default -> words;
            };
        }
        return changed.append(text.substring(from)).toString();
    }
}
