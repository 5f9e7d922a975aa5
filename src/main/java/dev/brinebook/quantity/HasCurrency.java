// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

import java.util.Currency;

/** What has money of its own, as a country does. */
public interface HasCurrency {

    /** The money. */
    Currency currency();
}
