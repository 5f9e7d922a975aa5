// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.Unit;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Every kind of quantity that requests and answers use, read from the records and the enums of units themselves. */
public final class UnitRegister {

    private static final String SUFFIX = "Quantity";
    /** Digits of the longest factor that is a finite decimal; one without end has 34. */
    private static final int LONGEST_FACTOR = 20;

    private final Map<String, UnitKindAnswer> kinds = new TreeMap<>();
    private final Set<Class<?>> seen = new HashSet<>();

    private UnitRegister() {
    }

    public static UnitsAnswer of(List<Operation<?, ?>> operations) {
        UnitRegister register = new UnitRegister();
        operations.forEach(operation -> {
            register.collect(operation.requestType());
            register.collect(operation.answerType());
        });
        return new UnitsAnswer(List.copyOf(register.kinds.values()), ModelVersion.CURRENT);
    }

    private void collect(Type type) {
        if (type instanceof ParameterizedType generic) {
            Arrays.stream(generic.getActualTypeArguments()).forEach(this::collect);
        } else if (type instanceof Class<?> record && record.isRecord() && seen.add(record)) {
            for (RecordComponent component : record.getRecordComponents()) {
                if (Quantity.class.isAssignableFrom(record) && Unit.class.isAssignableFrom(component.getType())) {
                    add(record.getSimpleName(), Arrays.stream(component.getType().getEnumConstants()).map(Unit.class::cast).toList());
                }
                collect(component.getGenericType());
            }
        }
    }

    private void add(String schema, List<Unit> units) {
        String kind = Character.toLowerCase(schema.charAt(0)) + schema.substring(1, schema.length() - SUFFIX.length());
        String base = units.stream().filter(unit -> unit.toBase(1) == 1 && unit.fromBase(0) == 0).findFirst().map(Unit::symbol)
                .orElseThrow(() -> new IllegalStateException(schema + " has no base unit"));
        kinds.put(kind, new UnitKindAnswer(kind, schema, base, units.stream().map(UnitRegister::answer).toList()));
    }

    private static UnitAnswer answer(Unit unit) {
        Unit.Definition definition = unit.definition();
        double zero = unit.fromBase(0);
        return new UnitAnswer(definition.symbol(), definition.meaning(), definition.ucum().isEmpty() ? null : definition.ucum(),
                decimal(definition), zero == 0 ? null : plain(BigDecimal.valueOf(zero)));
    }

    /** The factor as it is, or where it has no end the shortest decimal that is read as the number by which is calculated. */
    private static BigDecimal decimal(Unit.Definition definition) {
        BigDecimal exact = definition.exact().exact().stripTrailingZeros();
        return plain(exact.precision() <= LONGEST_FACTOR ? exact : BigDecimal.valueOf(definition.factor()));
    }

    private static BigDecimal plain(BigDecimal number) {
        BigDecimal plain = number.stripTrailingZeros();
        return plain.scale() < 0 ? plain.setScale(0) : plain;
    }
}
