// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.caution.Caution;
import dev.brinebook.caution.Reader;
import dev.brinebook.caution.Severity;
import dev.brinebook.text.Localizable;
import dev.brinebook.text.Message;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

@SchemaDescription("A caution to show with the numbers.")
public record CautionAnswer(
        @Property("Stable code of the caution.") Caution code,
        @Property("Severity: stop, warning or info.") Severity severity,
        @Property(value = "A plain sentence to show to the person.", example = "\"Iron is above 0.3 mg/L. It can stain laundry and "
                + "fixtures.\"")
        Message message,
        @Property(value = "Source of the caution.", example = "\"40 CFR 143.3 (2023)\"") String source,
        @Property("Who must act on it: the customer, the installer or the authority.") Reader reader,
        @Property(value = "Whether to show it first for this case. Every stop is shown first, up "
                + "to five cautions in all. Show the others after these.", example = "true") Boolean inFront) {

    /** Cautions by rank, most important first, each worded by {@code saying}. */
    public static List<CautionAnswer> of(Collection<Caution> cautions, Function<Localizable, Message> saying) {
        Set<Caution> inFront = Caution.inFront(cautions);
        List<CautionAnswer> answers = new ArrayList<>();
        for (Caution caution : Caution.ordered(cautions)) {
            answers.add(new CautionAnswer(caution, caution.severity(), saying.apply(caution), BasisAnswer.cite(caution.sourceKey()),
                    caution.reader(), inFront.contains(caution)));
        }
        return List.copyOf(answers);
    }
}
