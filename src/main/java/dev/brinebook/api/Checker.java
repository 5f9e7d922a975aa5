// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.api.Violation.Code;
import dev.brinebook.guard.CancellationToken;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.Unit;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleUnaryOperator;

/** Checks a request record against the {@link Property} of each component, and reports all errors at once. */
public final class Checker {

    private static final int LONGEST_ECHO = 40;
    private static final MathContext SHORT = new MathContext(6);

    private static final Map<Class<?>, Plan> PLANS = new ConcurrentHashMap<>();

    private Checker() {
    }

    /** Reports every error of {@code request} and its parts. */
    public static void check(Record request, Violations at) {
        Plan plan = PLANS.computeIfAbsent(request.getClass(), Plan::of);
        String kind = plan.kind(request, at);
        if (kind != null) {
            at.replaceUnknown(plan.namesOf(kind));
        }
        for (Plan.Component component : plan.components()) {
            Object value = component.of(request);
            Violations place = at.at(component.name());
            Property property = component.property();
            if (value != null && kind != null && !DiscriminatorValues.belongs(property, kind)) {
                place.forgetBelow();
                place.add(Code.INCONSISTENT, plan.kinds().refusal(property));
            } else if (value != null) {
                checkValue(value, property, place);
            } else if (property.required() && !place.here()) {
                checkMissing(component, plan.kinds(), kind, place);
            }
        }
        plan.alternativesOf(kind).forEach(rule -> rule.check(name -> plan.has(name, request) || at.at(name).here(), at));
        if (request instanceof Checked checked) {
            checked.check(at);
        }
    }

    /** Reports a required property, unless it is for other kinds than the record is. */
    private static void checkMissing(Plan.Component component, DiscriminatorValues kinds, String kind, Violations place) {
        if (!DiscriminatorValues.depends(component.property())) {
            place.add(missing(component, place.pointer()));
        } else if (kind != null && DiscriminatorValues.belongs(component.property(), kind)) {
            place.add(Code.MISSING, Message.of("checker.missingRequiredWhen", component.name(), kinds.property(), kind));
        }
    }

    private static Violation missing(Plan.Component component, String pointer) {
        if (!component.type().isEnum()) {
            return new Violation(pointer, Code.MISSING, Message.of("checker.missing", component.name()));
        }
        List<String> names = WireNames.all(component.type());
        return new Violation(pointer, Code.MISSING, Message.of("checker.missingMustOne", component.name(), String.join(", ", names)),
                Violation.names(names), null, null);
    }

    private static void checkValue(Object value, Property property, Violations at) {
        if (value instanceof Record part) {
            check(part, at);
        }
        if (value instanceof Quantity<?> quantity) {
            checkQuantity(quantity, property, at);
        } else if (value instanceof Amount amount) {
            checkAmount(amount, property, at);
        } else if (value instanceof Number number) {
            checkNumber(number, property, at);
        } else if (value instanceof CharSequence text) {
            checkCount(text.length(), "characters", property, at);
        } else if (value instanceof Collection<?> list) {
            checkCount(list.size(), "elements", property, at);
            int index = 0;
            for (Object element : list) {
                CancellationToken.obey();
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
        check(quantity.value(), own::toBase, own::fromBase, range, own.symbol(), at.at("value"));
    }

    private static void checkAmount(Amount amount, Property property, Violations at) {
        if (amount.value() != null && amount.unit() != null) {
            check(amount.value(), DoubleUnaryOperator.identity(), DoubleUnaryOperator.identity(),
                    new Range(property.min(), property.max(), property.aboveMin()), at.at("unit").here() ? "" : amount.unit(),
                    at.at("value"));
        }
    }

    private static void checkNumber(Number number, Property property, Violations at) {
        Range range = new Range(property.min(), property.max(), property.aboveMin());
        if (number instanceof BigDecimal decimal) {
            check(decimal, DoubleUnaryOperator.identity(), DoubleUnaryOperator.identity(), range, property.unit(), at);
        } else if (!range.holdsWhole(number.longValue())) {
            report(BigDecimal.valueOf(number.longValue()), range.inWholeNumbers(property.unit()), property.unit(), at);
        }
    }

    private static void check(BigDecimal value, DoubleUnaryOperator toBase, DoubleUnaryOperator fromBase, Range range,
            String unit, Violations at) {
        if (!range.holds(toBase.applyAsDouble(value.doubleValue()))) {
            report(value, range.inWords(toBase, fromBase, unit), unit, at);
        }
    }

    private static void report(BigDecimal value, Message allowed, String unit, Violations at) {
        String received = echo(value);
        at.add(new Violation(at.pointer(), Code.OUT_OF_RANGE, Message.of("checker.outOfRange", allowed, received(value, unit)),
                List.of(allowed), null, received));
    }

    /** What came, with its unit, unless it is too long to be said again. */
    public static Object received(BigDecimal value, String unit) {
        String received = echo(value);
        return received.equals(value.toPlainString()) ? Range.withUnit(value, unit) : unit.isEmpty() ? received : received + " " + unit;
    }

    /** What a quantity in {@code unit} may be, of a range in the base unit. Every bound it states is accepted when it is sent. */
    public static Message allowed(Unit unit, double min, double max) {
        return new Range(min, max, false).inWords(unit::toBase, unit::fromBase, unit.symbol());
    }

    private static void checkCount(int count, String what, Property property, Violations at) {
        if (count < property.minItems() || count > property.maxItems()) {
            Message allowed = property.minItems() == property.maxItems()
                    ? Message.of("checker.count", property.minItems(), what)
                    : Message.of("checker.characters2", property.minItems(), property.maxItems(), what);
            at.add(new Violation(at.pointer(), Code.WRONG_COUNT, Message.of("problem.api.mustGiven2", allowed, count),
                    List.of(allowed), null, null));
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

    /** A number as it came, unless that is long. */
    public static String echo(BigDecimal number) {
        String plain = Math.abs(number.scale()) > LONGEST_ECHO ? number.toString() : number.toPlainString();
        return plain.length() <= LONGEST_ECHO ? plain : number.round(SHORT).toString();
    }
}
