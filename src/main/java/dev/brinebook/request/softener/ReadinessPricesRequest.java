// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.Retrofit;
import dev.brinebook.softener.Readiness.Condition;
import java.util.EnumMap;
import java.util.Map;

@SchemaDescription("Cost of meeting each unmet condition of the retrofit, parts and labour, in the currency of the prices.")
public record ReadinessPricesRequest(
        @Property(value = "Replacing the brine tank or its line.", min = 0, max = Retrofit.MAX_COST,
                fallback = "not priced") Money brineTankAndLine,
        @Property(value = "A drain line large enough for the backwash, with an air gap.", min = 0, max = Retrofit.MAX_COST,
                fallback = "not priced") Money drain,
        @Property(value = "A valve with a larger bore.", min = 0, max = Retrofit.MAX_COST,
                fallback = "not priced") Money valveBore,
        @Property(value = "Piping changes to make room for the meter.", min = 0, max = Retrofit.MAX_COST,
                fallback = "not priced") Money placeForMeter,
        @Property(value = "An outlet within reach, installed by an electrician.", min = 0, max = Retrofit.MAX_COST,
                fallback = "not priced") Money powerWithinReach,
        @Property(value = "A surge protector.", min = 0, max = Retrofit.MAX_COST,
                fallback = "not priced") Money surgeProtection,
        @Property(value = "A bypass.", min = 0, max = Retrofit.MAX_COST,
                fallback = "not priced") Money bypass,
        @Property(value = "New or cleaned resin.", min = 0, max = Retrofit.MAX_COST,
                fallback = "not priced") Money resin) implements Checked {

    /** The prices that are given, each by its condition. */
    Map<Condition, Money> given() {
        Map<Condition, Money> given = new EnumMap<>(Condition.class);
        put(given, Condition.BRINE_TANK_AND_LINE, brineTankAndLine);
        put(given, Condition.DRAIN, drain);
        put(given, Condition.VALVE_BORE, valveBore);
        put(given, Condition.PLACE_FOR_METER, placeForMeter);
        put(given, Condition.POWER_WITHIN_REACH, powerWithinReach);
        put(given, Condition.SURGE_PROTECTION, surgeProtection);
        put(given, Condition.BYPASS, bypass);
        put(given, Condition.RESIN, resin);
        return given;
    }

    private static void put(Map<Condition, Money> given, Condition condition, Money price) {
        if (price != null) {
            given.put(condition, price);
        }
    }

    @Override
    public void check(Violations at) {
        given().forEach((condition, price) -> RetrofitRequest.checkAmount(price, name(condition), at));
    }

    /** The field that prices a condition. */
    public static String name(Condition condition) {
        return switch (condition) {
            case BRINE_TANK_AND_LINE -> "brineTankAndLine";
            case DRAIN -> "drain";
            case VALVE_BORE -> "valveBore";
            case PLACE_FOR_METER -> "placeForMeter";
            case POWER_WITHIN_REACH -> "powerWithinReach";
            case SURGE_PROTECTION -> "surgeProtection";
            case BYPASS -> "bypass";
            case RESIN -> "resin";
        };
    }
}
