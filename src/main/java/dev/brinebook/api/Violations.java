// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.api.Violation.Code;
import dev.brinebook.text.Message;
import java.util.Collection;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * Collects the errors of one request, and ends the request at {@link #MAX_FAULTS}. The first error of a place is kept, because later ones
 * result from it. Each step takes at most logarithmic time in the number of errors.
 */
public final class Violations {

    /** Errors after which the search stops: nobody reads more, and finding them would cost processor time. */
    public static final int MAX_FAULTS = 100;

    /** The sign after the one that separates the names of a pointer: all that is below a place sorts before it. */
    private static final char AFTER_SLASH = '/' + 1;

    private final NavigableMap<String, Violation> byPointer;
    private final Violations owner;
    private final String name;

    public Violations() {
        this(new TreeMap<>(), null, "");
    }

    private Violations(NavigableMap<String, Violation> byPointer, Violations owner, String name) {
        this.byPointer = byPointer;
        this.owner = owner;
        this.name = name;
    }

    /** The same collection, seen from a property below. */
    public Violations at(String property) {
        return new Violations(byPointer, this, property);
    }

    /** The same collection, seen from an element of a list. */
    public Violations at(int index) {
        return new Violations(byPointer, this, Integer.toString(index));
    }

    /** The same collection, seen from a property of the object at the complete pointer {@code owner}. */
    public Violations at(String owner, String property) {
        return new Violations(byPointer, new Violations(byPointer, null, owner), property);
    }

    /** Drops the errors reported below this place, which do not matter once this place is refused as a whole. */
    public void forgetBelow() {
        if (!byPointer.isEmpty()) {
            below(pointer()).clear();
        }
    }

    /** Drops what was found at this place, where something more exact is known. */
    public void withdraw() {
        byPointer.remove(pointer());
    }

    /** Says of unknown properties of this object which there are, now that its kind is known. */
    void replaceUnknown(List<String> known) {
        if (byPointer.isEmpty()) {
            return;
        }
        String base = pointer() + '/';
        below(pointer()).replaceAll((pointer, violation) -> {
            String name = pointer.substring(base.length());
            return violation.code() != Code.UNKNOWN_FIELD || name.indexOf('/') >= 0 ? violation
                    : Violation.unknownField(pointer, name.replace("~1", "/").replace("~0", "~"), known);
        });
    }

    /** An error at this place. */
    public void add(Code code, Message message) {
        add(new Violation(pointer(), code, message));
    }

    /** An error at {@code property} below this place. */
    public void add(String property, Code code, Message message) {
        at(property).add(code, message);
    }

    /**
     * An error whose pointer is already complete.
     *
     * @throws InvalidRequest with all errors, when the limit is reached
     */
    public void add(Violation violation) {
        if (byPointer.putIfAbsent(violation.pointer(), violation) == null && byPointer.size() >= MAX_FAULTS) {
            throw new InvalidRequest(sorted());
        }
    }

    public void addAll(Collection<Violation> violations) {
        violations.forEach(this::add);
    }

    /** The pointer of this place, built on demand: most places have no error. */
    public String pointer() {
        return owner == null ? name : owner.pointer() + "/" + escape(name);
    }

    /** Whether this place or anything below it has an error. */
    public boolean here() {
        if (byPointer.isEmpty()) {
            return false;
        }
        String base = pointer();
        return byPointer.containsKey(base) || !below(base).isEmpty();
    }

    private NavigableMap<String, Violation> below(String base) {
        return byPointer.subMap(base + '/', true, base + AFTER_SLASH, false);
    }

    public boolean isEmpty() {
        return byPointer.isEmpty();
    }

    /** All errors, sorted by pointer. */
    public List<Violation> sorted() {
        return List.copyOf(byPointer.values());
    }

    private static String escape(String property) {
        return property.replace("~", "~0").replace("/", "~1");
    }
}
