// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.HasCurrency;
import dev.brinebook.text.Localizable;
import java.util.Currency;

/** Where a household lives: what a person uses indoors when nothing else is known, units, prices and rules go by it. */
public enum Country implements Localizable, HasCurrency {
    /**
     * Source: [REU-2016-PERSON] 58.6 gal, taken as 60. Rival readings: 75 gal is the traditional planning figure;
     * [USGS-2017-1131] has 82 gal with outdoor use.
     */
    UNITED_STATES(60 * Exact.US_GALLON_LITRES, "REU-2016-PERSON", "USD"),
    /** Source: [BDEW] 121 L in 2023. */
    GERMANY(121, "BDEW", "EUR"),
    /** Source: [SDES-2022] 149 L in 2020, small businesses on the same supply included. */
    FRANCE(149, "SDES-2022", "EUR"),
    /** Source: [EST-2013] 142 L. */
    UNITED_KINGDOM(142, "EST-2013", "GBP"),
    /** Source: [EEA] 144 L. */
    EUROPEAN_UNION(144, "EEA", "EUR");

    private final double usePerPersonLitres;
    private final String sourceKey;
    private final Currency currency;

    Country(double usePerPersonLitres, String sourceKey, String currency) {
        this.usePerPersonLitres = usePerPersonLitres;
        this.sourceKey = sourceKey;
        this.currency = Currency.getInstance(currency);
    }

    /** {@code given}, or the United States. */
    public static Country orAssumed(Country given) {
        return given == null ? UNITED_STATES : given;
    }

    /**
     * Days after which a softener for drinking water regenerates whatever was used: 14 by common practice; in Germany 4, as standing
     * resin breeds bacteria. Source: [CP-CYCLE]; [DIN-19636-100] from memory.
     */
    public int mostIdleDays() {
        return this == GERMANY ? 4 : 14;
    }

    /** Indoor use of a person and day. */
    public double usePerPersonLitres() {
        return usePerPersonLitres;
    }

    public String sourceKey() {
        return sourceKey;
    }

    @Override
    public Currency currency() {
        return currency;
    }

    @Override
    public String textId() {
        return Localizable.idOf("country", this);
    }
}
