package dev.brinebook.payback;

import dev.brinebook.wording.Worded;

/** A number of a comparison that may not be known exactly, or whose break-even is asked for. Told as a factor on it. */
public enum Input implements Worded {
    HARDNESS("the hardness"),
    DAILY_USE("the daily use"),
    CAPACITY("what the salt restores"),
    SALT_PRICE("the price of salt"),
    WATER_PRICE("the price of water"),
    SEWER_PRICE("the price of the sewer"),
    SERVICE_PRICE("the price of a visit"),
    FIRST_COST("the first cost"),
    GROWTH("the growth of prices"),
    DISCOUNT("the discount rate");

    private final String words;

    Input(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
