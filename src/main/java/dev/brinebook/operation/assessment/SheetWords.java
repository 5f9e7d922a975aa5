package dev.brinebook.operation.assessment;

import dev.brinebook.wording.Worded;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/** Headings and other fixed words of the sheet. */
enum SheetWords implements Worded {
    TITLE("Water softener: findings and settings"),
    FOR_CUSTOMER("For the customer"),
    FOR_INSTALLER("For the installer"),
    HOUSEHOLD("Household"),
    DATE("Date"),
    PREPARED_BY("Prepared by"),
    INSTALLER("Installer"),
    SIGNATURE("Signature"),
    THE_WATER("The water and the softener"),
    WHAT("What"),
    VALUE("Value"),
    FITS("The softener that stands there is right for this water and household."),
    DOES_NOT_FIT("The softener that stands there does not fit:"),
    LADDER("What to do, step by step"),
    HARD_DAYS("Hard days a year"),
    SALT_A_YEAR("Salt a year"),
    COST_A_YEAR("Salt and water a year"),
    COST_NOW("Cost now"),
    SAVED_OVER_BELOW("Saved a year over the step before"),
    WHAT_IS_WRONG("What is set wrong on the control that stands there"),
    SET_NOW("Set now"),
    SET_INSTEAD("Set instead"),
    WHY("Why"),
    NOTHING_WRONG("No setting was found that should be another."),
    QUESTIONS("What to read off the control that was found"),
    CAUTIONS("Be careful"),
    OTHER_CAUTIONS("Also for the file"),
    PLAIN_CAUTION("Softened water holds more sodium or potassium than the water it is made of; a softener does not disinfect"
            + " and does not make an unsafe well safe. All figures are estimates for planning, not a certification: local codes"
            + " and licensed practice decide."),
    SETTINGS("What to set"),
    SETTING("Setting"),
    REASON("Reason"),
    STEPS("Steps of the regeneration"),
    STEP("Step"),
    MINUTES("Minutes to set"),
    FLOW("Flow"),
    WATER("Water"),
    TO_DRAIN("To the drain"),
    BEFORE("Check before"),
    AFTER("Put into service, in this order"),
    READINGS("Readings"),
    READING("Reading"),
    BEFORE_WORK("Before"),
    AFTER_WORK("After"),
    RAW_HARDNESS("Hardness of the raw water"),
    RAW_IRON("Iron of the raw water"),
    SOFT_HARDNESS("Hardness of the softened water"),
    METER("Water meter"),
    PRESSURE("Pressure"),
    DRAIN_FLOW("Drain flow, measured in a bucket"),
    REFILL_TIME("Minutes that the refill runs"),
    STOP("Stop"),
    WARNING("Warning"),
    INFO("Note"),
    MET("seen, in order"),
    NOT_MET("not met"),
    CHECK_ON_SITE("to check on site");

    private static final Map<String, SheetWords> BY_NAME = byName();

    private final String words;

    SheetWords(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }

    /** All of them, by the names that the template asks for. */
    static Map<String, SheetWords> all() {
        return BY_NAME;
    }

    /** The word for a constant of the same name. */
    static SheetWords of(Enum<?> constant) {
        return BY_NAME.get(constant.name());
    }

    private static Map<String, SheetWords> byName() {
        Map<String, SheetWords> all = new TreeMap<>();
        Arrays.stream(values()).forEach(word -> all.put(word.name(), word));
        return all;
    }
}
