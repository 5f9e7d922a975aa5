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
            if (value != null && kind != null && !DiscriminatorValues.belongs(component.property(), kind)) {
                place.forgetBelow();
                place.add(Code.INCONSISTENT, plan.kinds().refusal(component.property()));
            } else if (value != null) {
                checkValue(value, component.limits(), place);
            } else if (component.limits().required() && !place.here()) {
                checkMissing(component, plan.kinds(), kind, place);
            }
        }
        for (AlternativeRule rule : plan.alternativesOf(kind)) {
            rule.check(name -> plan.has(name, request) || at.at(name).here(), at);
        }
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

    private static void checkValue(Object value, Limits limits, Violations at) {
        if (value instanceof Record part) {
            check(part, at);
        }
        if (value instanceof Quantity<?> quantity) {
            checkQuantity(quantity, limits, at);
        } else if (value instanceof Amount amount) {
            checkAmount(amount, limits, at);
        } else if (value instanceof Number number) {
            checkNumber(number, limits, at);
        } else if (value instanceof CharSequence text) {
            checkCount(text.length(), "characters", limits, at);
        } else if (value instanceof Collection<?> list) {
            checkCount(list.size(), "elements", limits, at);
            int index = 0;
            for (Object element : list) {
                CancellationToken.obey();
                if (element != null) {
                    checkValue(element, limits, at.at(index));
                }
                index++;
            }
        }
    }

    /** Compares in the base unit, as the calculation will, so that what passes here passes there. */
    private static void checkQuantity(Quantity<?> quantity, Limits limits, Violations at) {
        if (quantity.value() == null || quantity.unit() == null) {
            return;
        }
        Unit own = quantity.unit();
        check(quantity.value(), own::toBase, own::fromBase, limits.inBaseOf(own), own.symbol(), at.at("value"));
    }

    private static void checkAmount(Amount amount, Limits limits, Violations at) {
        if (amount.value() != null && amount.unit() != null) {
            check(amount.value(), DoubleUnaryOperator.identity(), DoubleUnaryOperator.identity(), limits.range(),
                    at.at("unit").here() ? "" : amount.unit(), at.at("value"));
        }
    }

    private static void checkNumber(Number number, Limits limits, Violations at) {
        if (number instanceof BigDecimal decimal) {
            check(decimal, DoubleUnaryOperator.identity(), DoubleUnaryOperator.identity(), limits.range(), limits.unit(), at);
        } else if (!limits.range().holdsWhole(number.longValue())) {
            report(BigDecimal.valueOf(number.longValue()), limits.range().inWholeNumbers(limits.unit()), limits.unit(), at);
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

    private static void checkCount(int count, String what, Limits limits, Violations at) {
        if (count < limits.minItems() || count > limits.maxItems()) {
            Message allowed = limits.minItems() == limits.maxItems()
                    ? Message.of("checker.count", limits.minItems(), what)
                    : Message.of("checker.characters2", limits.minItems(), limits.maxItems(), what);
            at.add(new Violation(at.pointer(), Code.WRONG_COUNT, Message.of("problem.api.mustGiven2", allowed, count),
                    List.of(allowed), null, null));
        }
    }

    /** A number as it came, unless that is long. */
    public static String echo(BigDecimal number) {
        String plain = Math.abs(number.scale()) > LONGEST_ECHO ? number.toString() : number.toPlainString();
        return plain.length() <= LONGEST_ECHO ? plain : number.round(SHORT).toString();
    }
}
