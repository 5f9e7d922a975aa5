// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.quantity.Quantity;
import dev.brinebook.source.Sources;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

/** What an input came to; made by the factory of its kind of value, then by the method of its origin. */
@SchemaDescription("A value that the calculation used, and where it comes from.")
public record Resolved(
        @Property(value = "JSON pointer to the property of the request that sets it.", optional = "if no property sets it",
                example = "\"/water/temperature\"") String pointer,
        @Property(value = "Name of an assumption that no property of the request sets.", optional = "if a property sets it",
                example = "\"columnStages\"") String name,
        @Property(value = "The number used.", optional = "if it is not a number", example = "12") BigDecimal value,
        @Property(value = "The unit of the number: that of a quantity, or days, years, minutes, bedVolumes, %, or one of these per year.",
                optional = "without a number, and for a number without a unit",
                example = "\"C\"") String unit,
        @Property(value = "The choice, date, time or list used, as a request would write it.", optional = "for a number",
                example = "\"coCurrent\"") String code,
        @Property("Origin of the value: given in the request, a default, estimated from other values, or by the country.")
        Origin origin,
        @Property(value = "Key of its source in the register of sources.", optional = "for what the request gives",
                example = "\"CP-CYCLE\"") String source,
        @Property(value = "What else there is to say of it.", optional = "if nothing is",
                example = "\"of sodium chloride, the common setting\"") Message note) {

    /** Where a value came from. */
    public enum Origin {
        CALLER, DEFAULT, ESTIMATED, COUNTRY
    }

    /** A quantity, as it is shown. */
    public static Resolved of(String place, Quantity<?> shown) {
        return of(place, shown.value(), shown.unit().symbol());
    }

    /** A number, one that is calculated to four significant digits; {@code unit} is null for one without. */
    public static Resolved of(String place, Number number, String unit) {
        BigDecimal value = number instanceof BigDecimal decimal ? decimal
                : number instanceof Double calculated ? Text.number(calculated) : BigDecimal.valueOf(number.longValue());
        return at(place, value, unit, null);
    }

    /** A choice, by its name on the wire. */
    public static Resolved of(String place, Enum<?> choice) {
        return at(place, null, null, WireNames.of(choice));
    }

    /** A date, a time, a name or a list, as a request would write it. */
    public static Resolved ofCode(String place, String code) {
        return at(place, null, null, code);
    }

    /** What only words say. */
    public static Resolved inWords(String place, Message note) {
        return at(place, null, null, null).noting(note);
    }

    private static Resolved at(String place, BigDecimal value, String unit, String code) {
        boolean property = place.startsWith("/");
        return new Resolved(property ? place : null, property ? null : place, value, unit, code, Origin.CALLER, null, null);
    }

    /** A default. */
    public Resolved byDefault(String sourceKey) {
        return from(Origin.DEFAULT, sourceKey);
    }

    /** Worked out from other values. */
    public Resolved estimated(String sourceKey) {
        return from(Origin.ESTIMATED, sourceKey);
    }

    /** The value of a country. */
    public Resolved byCountry(String sourceKey) {
        return from(Origin.COUNTRY, sourceKey);
    }

    private Resolved from(Origin other, String sourceKey) {
        return new Resolved(pointer, name, value, unit, code, other, Sources.get(sourceKey).key(), note);
    }

    /** The same with something to say of it. */
    public Resolved noting(Message said) {
        return new Resolved(pointer, name, value, unit, code, origin, source, said);
    }

    /** The pointer, or the name where there is none. */
    public String place() {
        return pointer == null ? name : pointer;
    }
}
