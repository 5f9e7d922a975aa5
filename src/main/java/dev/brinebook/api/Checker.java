package dev.brinebook.api;

import dev.brinebook.api.Violation.Code;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.Unit;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleUnaryOperator;

/** Holds a request record to what the {@link Property} of each component says, and tells every fault at once. */
public final class Checker {

    private static final int LONGEST_ECHO = 40;
    private static final MathContext SHORT = new MathContext(6);

    private static final Map<Class<?>, List<Component>> PLANS = new ConcurrentHashMap<>();

    private record Component(String name, RecordComponent component, Property property) {

        Class<?> type() {
            return component.getType();
        }

        Object of(Record owner) {
            try {
                return component.getAccessor().invoke(owner);
            } catch (IllegalAccessException | InvocationTargetException e) {
                throw new IllegalStateException(component + " cannot be read", e);
            }
        }
    }

    private Checker() {
    }

    /** Reports every fault of {@code request} and all it holds. */
    public static void check(Record request, Violations at) {
        for (Component component : PLANS.computeIfAbsent(request.getClass(), Checker::plan)) {
            Object value = component.of(request);
            Violations place = at.at(component.name());
            if (value != null) {
                checkValue(value, component.property(), place);
            } else if (component.property().required() && !place.here()) {
                place.add(missing(component, place.pointer()));
            }
        }
        if (request instanceof Checked checked) {
            checked.check(at);
        }
    }

    private static Violation missing(Component component, String pointer) {
        String message = component.name() + " is missing: " + firstSentence(component.property().value());
        if (!component.type().isEnum()) {
            return new Violation(pointer, Code.MISSING, message);
        }
        String allowed = String.join(", ", WireNames.all(component.type()));
        return new Violation(pointer, Code.MISSING, message + " It must be one of " + allowed, allowed, null, null);
    }

    private static List<Component> plan(Class<?> type) {
        return Arrays.stream(type.getRecordComponents()).map(component -> {
            Property property = component.getAnnotation(Property.class);
            if (property == null) {
                throw new IllegalStateException(type + "." + component.getName() + " has no @Property");
            }
            component.getAccessor().setAccessible(true);
            return new Component(component.getName(), component, property);
        }).toList();
    }

    private static void checkValue(Object value, Property property, Violations at) {
        if (value instanceof Record part) {
            check(part, at);
        }
        if (value instanceof Quantity<?> quantity) {
            checkQuantity(quantity, property, at);
        } else if (value instanceof Number number) {
            checkNumber(number, property, at);
        } else if (value instanceof CharSequence text) {
            checkCount(text.length(), "characters", property, at);
        } else if (value instanceof Collection<?> list) {
            checkCount(list.size(), "elements", property, at);
            int index = 0;
            for (Object element : list) {
                if (element != null) {
                    checkValue(element, property, at.at(index));
                }
                index++;
            }
        }
    }

    /** Compares in the base unit, as the calculation will, so that what passes here passes there. */
    private static void checkQuantity(Quantity<?> quantity, Property property, Violations at) {
        if (quantity.value() == null || quantity.unit() == null) {
            return;
        }
        Unit own = quantity.unit();
        Unit stated = property.unit().isEmpty() ? own : unit(property.unit(), own);
        Range range = new Range(stated.toBase(property.min()), stated.toBase(property.max()), property.aboveMin());
        check(quantity.value(), own::toBase, own::fromBase, range, " " + own.symbol(), at.at("value"));
    }

    private static void checkNumber(Number number, Property property, Violations at) {
        BigDecimal value = number instanceof BigDecimal decimal ? decimal : BigDecimal.valueOf(number.longValue());
        String unit = property.unit().isEmpty() ? "" : " " + property.unit();
        Range range = new Range(property.min(), property.max(), property.aboveMin());
        check(value, DoubleUnaryOperator.identity(), DoubleUnaryOperator.identity(), range, unit, at);
    }

    private static void check(BigDecimal value, DoubleUnaryOperator toBase, DoubleUnaryOperator fromBase, Range range,
            String unit, Violations at) {
        if (!range.holds(toBase.applyAsDouble(value.doubleValue()))) {
            String allowed = range.inWords(toBase, fromBase) + unit;
            String received = echo(value);
            at.add(new Violation(at.pointer(), Code.OUT_OF_RANGE, "must be " + allowed + ", was " + received + unit,
                    allowed, null, received));
        }
    }

    private static void checkCount(int count, String what, Property property, Violations at) {
        if (count < property.minItems() || count > property.maxItems()) {
            String allowed = property.minItems() == property.maxItems() ? property.minItems() + " " + what
                    : "from " + property.minItems() + " to " + property.maxItems() + " " + what;
            at.add(new Violation(at.pointer(), Code.WRONG_COUNT, "must have " + allowed + ", has " + count, allowed, null,
                    null));
        }
    }

    private static Unit unit(String symbol, Unit sibling) {
        for (Object constant : ((Enum<?>) sibling).getDeclaringClass().getEnumConstants()) {
            if (((Unit) constant).symbol().equals(symbol)) {
                return (Unit) constant;
            }
        }
        throw new IllegalStateException(symbol + " is no unit like " + sibling);
    }

    private static String echo(BigDecimal number) {
        String plain = Math.abs(number.scale()) > LONGEST_ECHO ? number.toString() : number.toPlainString();
        return plain.length() <= LONGEST_ECHO ? plain : number.round(SHORT).toString();
    }

    private static String firstSentence(String text) {
        int end = text.indexOf(". ");
        String sentence = end < 0 ? text : text.substring(0, end + 1);
        return sentence.endsWith(".") ? sentence : sentence + ".";
    }
}
