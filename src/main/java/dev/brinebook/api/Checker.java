package dev.brinebook.api;

import dev.brinebook.api.Violation.Code;
import dev.brinebook.guard.StopSign;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.Unit;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleUnaryOperator;

/** Holds a request record to what the {@link Property} of each component says, and tells every fault at once. */
public final class Checker {

    private static final int LONGEST_ECHO = 40;
    private static final MathContext SHORT = new MathContext(6);

    private static final Map<Class<?>, Plan> PLANS = new ConcurrentHashMap<>();

    private Checker() {
    }

    /** Reports every fault of {@code request} and all it holds. */
    public static void check(Record request, Violations at) {
        Plan plan = PLANS.computeIfAbsent(request.getClass(), Plan::of);
        String kind = plan.kind(request, at);
        for (Plan.Component component : plan.components()) {
            Object value = component.of(request);
            Violations place = at.at(component.name());
            Property property = component.property();
            if (value != null && kind != null && !Kinds.belongs(property, kind)) {
                place.forgetBelow();
                place.add(Code.INCONSISTENT, plan.kinds().refusal(property));
            } else if (value != null) {
                checkValue(value, property, place);
            } else if (property.required() && !place.here()) {
                checkMissing(component, plan.kinds(), kind, place);
            }
        }
        if (request instanceof Checked checked) {
            checked.check(at);
        }
    }

    /** Reports a required property, unless it is for other kinds than the record is. */
    private static void checkMissing(Plan.Component component, Kinds kinds, String kind, Violations place) {
        if (!Kinds.depends(component.property())) {
            place.add(missing(component, place.pointer()));
        } else if (kind != null && Kinds.belongs(component.property(), kind)) {
            place.add(Code.MISSING, Message.of("{0} is missing: the {1} {2} needs it", component.name(), kinds.property(), kind));
        }
    }

    private static Violation missing(Plan.Component component, String pointer) {
        Message what = firstSentence(component.property());
        if (!component.type().isEnum()) {
            return new Violation(pointer, Code.MISSING, Message.of("{0} is missing: {1}", component.name(), what));
        }
        Message allowed = Message.verbatim(String.join(", ", WireNames.all(component.type())));
        return new Violation(pointer, Code.MISSING, Message.of("{0} is missing: {1} It must be one of {2}", component.name(),
                what, allowed), allowed, null, null);
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
            checkCount(text.length(), Message.of("characters"), property, at);
        } else if (value instanceof Collection<?> list) {
            checkCount(list.size(), Message.of("elements"), property, at);
            int index = 0;
            for (Object element : list) {
                StopSign.obey();
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
        check(quantity.value(), own::toBase, own::fromBase, range, Message.verbatim(" " + own.symbol()), at.at("value"));
    }

    private static void checkNumber(Number number, Property property, Violations at) {
        Message unit = property.unit().isEmpty() ? Message.verbatim("") : Message.of(" {0}", Message.of(property.unit()));
        Range range = new Range(property.min(), property.max(), property.aboveMin());
        if (number instanceof BigDecimal decimal) {
            check(decimal, DoubleUnaryOperator.identity(), DoubleUnaryOperator.identity(), range, unit, at);
        } else if (!range.holdsWhole(number.longValue())) {
            report(BigDecimal.valueOf(number.longValue()), range.inWholeNumbers(), unit, at);
        }
    }

    private static void check(BigDecimal value, DoubleUnaryOperator toBase, DoubleUnaryOperator fromBase, Range range,
            Message unit, Violations at) {
        if (!range.holds(toBase.applyAsDouble(value.doubleValue()))) {
            report(value, range.inWords(toBase, fromBase), unit, at);
        }
    }

    private static void report(BigDecimal value, Message range, Message unit, Violations at) {
        Message allowed = Message.joined("", List.of(range, unit));
        String received = echo(value);
        at.add(new Violation(at.pointer(), Code.OUT_OF_RANGE, Message.of("must be {0}, was {1}{2}", allowed, received, unit),
                allowed, null, received));
    }

    /** What a quantity in {@code unit} may be, of a range in the base unit. Every bound it states is accepted when it is sent. */
    public static Message allowed(Unit unit, double min, double max) {
        return Message.joined("", List.of(new Range(min, max, false).inWords(unit::toBase, unit::fromBase),
                Message.verbatim(" " + unit.symbol())));
    }

    private static void checkCount(int count, Message what, Property property, Violations at) {
        if (count < property.minItems() || count > property.maxItems()) {
            Message allowed = property.minItems() == property.maxItems() ? Message.of("{0} {1}", property.minItems(), what)
                    : Message.of("from {0} to {1} {2}", property.minItems(), property.maxItems(), what);
            at.add(new Violation(at.pointer(), Code.WRONG_COUNT, Message.of("must have {0}, has {1}", allowed, count), allowed,
                    null, null));
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

    /** What the property is, in short. */
    private static Message firstSentence(Property property) {
        String text = property.value();
        int end = text.indexOf(". ");
        String sentence = end < 0 ? text : text.substring(0, end + 1);
        return Message.of(sentence.endsWith(".") ? sentence : sentence + ".");
    }
}
