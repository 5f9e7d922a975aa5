// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.model;

import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * The formulas and data that a calculation uses: a version, as the changes that are in force. It goes as an argument from the
 * edge to where a change matters.
 *
 * @param version the version, or the one that it was made from by {@link #toggling}
 * @param changes the changes in force
 */
public record Model(String version, Set<ModelChange> changes) {

    /** The version before the current one. */
    public static final Model PREVIOUS = new Model("2.2.0", Set.of());
    /** The one that calculates where none is asked for. */
    public static final Model CURRENT = new Model("2.3.0", EnumSet.allOf(ModelChange.class));
    /** The versions that can be called, newest first. */
    public static final List<Model> CALLABLE = List.of(CURRENT, PREVIOUS);

    public Model {
        Objects.requireNonNull(version, "version");
        changes = Set.copyOf(changes);
    }

    /** The callable model of a version. */
    public static Optional<Model> of(String version) {
        return CALLABLE.stream().filter(model -> model.version().equals(version)).findFirst();
    }

    /** The numbers of the versions that can be called, newest first. */
    public static List<String> versions() {
        return CALLABLE.stream().map(Model::version).toList();
    }

    public boolean has(ModelChange change) {
        return changes.contains(change);
    }

    /** This model with one change made, or unmade where it is in force: what that change alone does. */
    public Model toggling(ModelChange change) {
        Set<ModelChange> other = EnumSet.noneOf(ModelChange.class);
        other.addAll(changes);
        if (!other.remove(change)) {
            other.add(change);
        }
        return new Model(version, other);
    }

    /** The changes in force in one of two models only, in the order of their declaration. */
    public List<ModelChange> differencesTo(Model other) {
        return List.of(ModelChange.values()).stream().filter(change -> has(change) != other.has(change)).toList();
    }
}
