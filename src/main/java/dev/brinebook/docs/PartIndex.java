// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.Operation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.docs.PartTables.Part;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/** Every record that requests and answers hold, by its name in the contract, with the operations that hold it. */
final class PartIndex {

    private static final Function<Property, String> OF_REQUEST = property -> property.required() ? "required" : "optional";
    private static final Function<Property, String> OF_ANSWER = property -> property.optional().isEmpty() ? "always"
            : "absent " + property.optional();

    private final Map<String, Use> uses = new TreeMap<>();

    /** Where a record is used. */
    private record Use(Class<?> type, Set<String> requests, Set<String> answers) {
    }

    /** A record with a page of its own: its name, and what it is. */
    record Link(String name, String about) {
    }

    /** The content of the page of a record: its table, and the ids of the operations whose requests and answers hold it. */
    record PartPage(Part part, Set<String> requests, Set<String> answers) {
    }

    PartIndex(List<Operation<?, ?>> operations) {
        for (Operation<?, ?> operation : operations) {
            reachable(operation.requestType()).forEach(type -> use(type).requests().add(operation.id()));
            reachable(operation.answerType()).forEach(type -> use(type).answers().add(operation.id()));
        }
    }

    private Use use(Class<?> type) {
        Use use = uses.computeIfAbsent(type.getSimpleName(), name -> new Use(type, new LinkedHashSet<>(), new LinkedHashSet<>()));
        if (use.type() != type) {
            throw new IllegalStateException(type + " and " + use.type() + " have one name");
        }
        return use;
    }

    Set<String> names() {
        return uses.keySet();
    }

    /** The page of a record of this name, if there is one. */
    Optional<PartPage> page(String name) {
        return Optional.ofNullable(uses.get(name)).map(use -> new PartPage(PartTables.of(use.type(), "", presence(use)),
                use.requests(), use.answers()));
    }

    Part request(Operation<?, ?> operation) {
        return PartTables.of(operation.requestType(), "request-", OF_REQUEST);
    }

    Part answer(Operation<?, ?> operation) {
        return PartTables.of(operation.answerType(), "answer-", OF_ANSWER);
    }

    /** The records that a record may hold, at any depth, in the order in which one meets them. */
    List<Link> below(Class<?> root) {
        return reachable(root).stream().skip(1).map(PartIndex::link).toList();
    }

    Collection<Link> all() {
        return uses.values().stream().map(use -> link(use.type())).toList();
    }

    private static Link link(Class<?> type) {
        return new Link(type.getSimpleName(), type.getAnnotation(SchemaDescription.class).value());
    }

    private static Function<Property, String> presence(Use use) {
        if (use.answers().isEmpty()) {
            return OF_REQUEST;
        } else if (use.requests().isEmpty()) {
            return OF_ANSWER;
        }
        return property -> "in requests " + OF_REQUEST.apply(property) + ", in answers " + OF_ANSWER.apply(property);
    }

    private static Set<Class<?>> reachable(Class<?> root) {
        Set<Class<?>> types = new LinkedHashSet<>(Set.of(root));
        for (int i = 0; i < types.size(); i++) {
            for (RecordComponent component : new ArrayList<>(types).get(i).getRecordComponents()) {
                Class<?> type = held(component);
                if (type.isRecord()) {
                    types.add(type);
                }
            }
        }
        return types;
    }

    /** The type of a component, or of the elements of its list. */
    static Class<?> held(RecordComponent component) {
        if (component.getType() != List.class) {
            return component.getType();
        }
        var element = ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
        return element instanceof Class<?> type ? type : (Class<?>) ((ParameterizedType) element).getRawType();
    }
}
