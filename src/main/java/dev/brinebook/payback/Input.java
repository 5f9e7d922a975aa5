// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.text.Localizable;

/** An input of a comparison that may be uncertain, or whose break-even is requested. Given as a factor on it. */
public enum Input implements Localizable {
    HARDNESS,
    DAILY_USE,
    CAPACITY,
    SALT_PRICE,
    WATER_PRICE,
    SEWER_PRICE,
    SERVICE_PRICE,
    FIRST_COST,
    GROWTH,
    DISCOUNT;

    @Override
    public String textId() {
        return Localizable.idOf("input", this);
    }
}
