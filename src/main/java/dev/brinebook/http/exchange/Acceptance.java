// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.exchange;

import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.text.Message;
import io.javalin.http.Context;
import java.util.List;

/** Content negotiation: which form of an answer a caller gets (RFC 9110, section 12.5.1). */
public final class Acceptance {

    private Acceptance() {
    }

    /**
     * The form that the caller gives the most weight, the earlier of two with the same; the first when nothing is asked.
     *
     * @param offered media types that the answer can have, in the order of preference
     */
    public static String choose(Context context, List<String> offered) {
        List<String> ranges = ListHeader.of(context, "Accept");
        String chosen = offered.get(0);
        if (ranges.isEmpty() || ranges.get(0).equals(chosen) || ranges.size() == 1 && ranges.get(0).equals("*/*")) {
            return chosen;
        }
        double most = weight(chosen, ranges);
        for (String form : offered) {
            if (weight(form, ranges) > most) {
                chosen = form;
                most = weight(form, ranges);
            }
        }
        if (!(most > 0)) {
            throw new ProblemException(ProblemType.NOT_ACCEPTABLE, Message.of("acceptance.answerAvailable", anyOf(offered)));
        }
        return chosen;
    }

    /** Whether the caller names {@code form} itself, and wants it no less than {@code usual}. */
    public static boolean asksFor(Context context, String form, String usual) {
        List<String> ranges = ListHeader.of(context, "Accept");
        double weight = weight(form, ranges);
        return ranges.stream().anyMatch(range -> ListHeader.value(range).equals(form)) && weight > 0
                && weight >= weight(usual, ranges);
    }

    /** The weight of the most specific range that takes in the form: that one decides. */
    private static double weight(String form, List<String> ranges) {
        for (String wanted : List.of(form, form.substring(0, form.indexOf('/')) + "/*", "*/*")) {
            for (String range : ranges) {
                if (ListHeader.value(range).equals(wanted)) {
                    return ListHeader.weight(range);
                }
            }
        }
        return 0;
    }

    /** The forms, one of which is wanted. */
    static Message anyOf(List<String> forms) {
        int last = forms.size() - 1;
        return last == 0 ? Message.verbatim(forms.get(0))
                : Message.of("pattern.or", String.join(", ", forms.subList(0, last)), forms.get(last));
    }
}
