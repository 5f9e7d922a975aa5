// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import dev.brinebook.api.BasisAnswer;
import java.util.List;

/** Finds the entries of the basis of an answer that speak of a result. */
final class AnswerExplanation {

    private AnswerExplanation() {
    }

    /** The entries for {@code pointer}; of the nearest part around it where it has none of its own. */
    static List<BasisAnswer> of(Record answer, String pointer) {
        List<BasisAnswer> basis = AnswerTree.list(answer, "/basis").stream().map(BasisAnswer.class::cast).toList();
        String place = pointer;
        while (!place.isEmpty()) {
            String here = place;
            List<BasisAnswer> found = basis.stream().filter(entry -> matches(entry.pointer(), here)).toList();
            if (!found.isEmpty()) {
                return found;
            }
            place = place.substring(0, place.lastIndexOf('/'));
        }
        return List.of();
    }

    /** Whether a pattern, in which {@code *} is any element of a list, is this pointer. */
    private static boolean matches(String pattern, String pointer) {
        String[] wanted = pattern.split("/");
        String[] given = pointer.split("/");
        boolean same = wanted.length == given.length;
        for (int i = 0; same && i < wanted.length; i++) {
            same = wanted[i].equals(given[i]) || wanted[i].equals("*") && given[i].matches("\\d+");
        }
        return same;
    }
}
