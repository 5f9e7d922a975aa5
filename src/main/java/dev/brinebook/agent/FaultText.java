// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Faults of arguments as text that lets a model correct them all at once. */
final class FaultText {

    static final int MOST_FAULTS = 8;
    /** So that eight of them stay within 350 tokens. */
    private static final int LONGEST_LINES = 1_000;
    private static final int LONGEST_LINE = 330;

    private FaultText() {
    }

    /**
     * The text.
     *
     * @param faults at least one
     * @param parts names of parts that can be described
     */
    static String of(List<Fault> faults, Set<String> parts) {
        StringBuilder lines = new StringBuilder();
        int written = 0;
        for (Fault fault : faults.subList(0, Math.min(MOST_FAULTS, faults.size()))) {
            String line = cut(fault.line());
            if (written > 0 && lines.length() + line.length() > LONGEST_LINES) {
                break;
            }
            lines.append(line).append('\n');
            written++;
        }
        String head = (faults.size() == 1 ? "1 fault" : faults.size() + " faults") + "; nothing was calculated. Correct "
                + (faults.size() == 1 ? "it" : "all of them") + " and call once more. Ask the person for a missing fact; do not make it "
                + "up. The same fault twice: ask the person or stop.\n";
        String more = written == faults.size() ? "" : "and " + (faults.size() - written) + " more\n";
        return head + lines + more + hint(faults, parts);
    }

    private static String cut(String line) {
        int end = line.lastIndexOf(", ", LONGEST_LINE);
        return line.length() <= LONGEST_LINE ? line : line.substring(0, end < 0 ? LONGEST_LINE : end) + ", …";
    }

    /** The part that holds the first fault of one. */
    private static String hint(List<Fault> faults, Set<String> parts) {
        return faults.stream().flatMap(fault -> {
            List<String> names = Arrays.asList(fault.pointer().split("/"));
            for (int i = names.size() - 1; i > 0; i--) {
                if (parts.contains(names.get(i))) {
                    return Stream.of("describe_operation part " + names.get(i) + " has its fields.\n");
                }
            }
            return Stream.empty();
        }).findFirst().orElse("");
    }
}
