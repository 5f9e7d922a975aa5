// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import java.math.BigDecimal;

/** A number of a currency that the caller chooses. {@link Checker} takes its range in whatever currency it has. */
public interface Amount {

    BigDecimal value();

    /** ISO 4217 code of the currency. */
    String unit();
}
