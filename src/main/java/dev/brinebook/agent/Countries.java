// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import dev.brinebook.api.Operation;
import dev.brinebook.api.Property;
import dev.brinebook.api.WireNames;
import dev.brinebook.quantity.HasCurrency;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;

/** The countries that the household of a request can name, read from the request itself. */
final class Countries {

    private final RecordComponent country;

    Countries(Operation<?, ?> operation) {
        this.country = component(component(operation.requestType(), "household").getType(), "country");
    }

    private static RecordComponent component(Class<?> part, String name) {
        return Arrays.stream(part.getRecordComponents()).filter(one -> one.getName().equals(name)).findFirst().orElseThrow();
    }

    /** Their names. */
    List<String> names() {
        return WireNames.all(country.getType());
    }

    /** The name of that which is assumed where none is given. */
    String assumed() {
        return country.getAnnotation(Property.class).defaultCode();
    }

    /** The ISO 4217 code of the money of the country of that name. */
    String currency(String name) {
        return ((HasCurrency) country.getType().getEnumConstants()[names().indexOf(name)]).currency().getCurrencyCode();
    }
}
