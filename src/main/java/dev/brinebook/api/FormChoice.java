// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.api.Violation.Code;
import dev.brinebook.text.Message;
import java.util.List;

/**
 * A choice that a form of an answer offers, as a parameter of the query.
 *
 * @param name name of the parameter
 * @param values what it may be, by their names on the wire
 * @param description what it chooses, and what is taken when it is left out
 * @param usual what is taken then; null where it depends on the request
 * @param <E> the values
 */
public record FormChoice<E extends Enum<E>>(String name, Class<E> values, String description, E usual) {

    /** Every value by its name on the wire. */
    public List<String> names() {
        return WireNames.all(values);
    }

    /** The value of a name; null, reported in {@code violations} at the name of the parameter, where there is none. */
    public E parse(String given, Violations violations) {
        int place = names().indexOf(given);
        if (place >= 0) {
            return values.getEnumConstants()[place];
        }
        Violations at = violations.at(name);
        at.add(new Violation(at.pointer(), Code.UNKNOWN_VALUE, Message.of("problem.http.mustOne", String.join(", ", names())),
                Violation.names(names()), WireNames.nearest(given, names()).orElse(null), null));
        return null;
    }
}
