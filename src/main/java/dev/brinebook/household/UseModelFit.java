package dev.brinebook.household;

/**
 * The {@link UseModel} that a measured series is fitted by: what to expect of the household, while the days themselves are
 * what was.
 *
 * @param model weekday means of the days with somebody there, their scatter within the weekday, and how absences come about
 * @param presence who was there when
 * @param cv scatter of the days with somebody there about the mean of their weekday, before it is held to
 *     {@link DayVariation#MAX_CV} in the model
 * @param occupiedDays days that the scatter is taken from
 * @param degreesOfFreedom these less the means that were fitted; 0 when there are too few, and the usual scatter stands in
 */
public record UseModelFit(UseModel model, Presence presence, double cv, int occupiedDays, int degreesOfFreedom) {

    /** Each weekday must have been seen so often before it gets a mean of its own: then some scatter is left within it. */
    public static final int ASSUMED_LEAST_OF_A_WEEKDAY = 2;

    /**
     * The model of these days.
     * <pre>m(w) = mean of the occupied days of weekday w,   CV² = Σ (V / m(w) − 1)² / (n − k)</pre>
     *
     * <p>V use of an occupied day, litres; n occupied days; k weekdays with a mean of their own, seven unless some are
     * idle. With fewer than {@value #ASSUMED_LEAST_OF_A_WEEKDAY} occupied days of a weekday one mean stands for all, and
     * k is 1. An idle weekday keeps the mean of all its days, over the share of days with somebody there.
     * Source: [CHOI-WETTE] the sample mean is the most likely mean of gamma days; the degrees of freedom are those of an
     * analysis of variance. [DAIAD] for the family.
     * Deviation: all months count alike.
     *
     * @param usual the scatter to take when fewer than two days have somebody there
     */
    public static UseModelFit of(MeteredDays days, DayVariation usual) {
        Presence presence = Presence.of(days);
        int[] occupied = presence.occupied();
        WeekdayLevels levels = presence.levels(days, ASSUMED_LEAST_OF_A_WEEKDAY);
        WeekdayMeans means = WeekdayMeans.mondayFirst(levels.mondayFirst());
        double squares = 0;
        for (int i : occupied) {
            double deviation = days.litres(i) / levels.meanLitres(days.weekday(i)) - 1;
            squares += deviation * deviation;
        }
        int freedom = occupied.length - levels.fitted();
        if (freedom == 0 && occupied.length > 0) {
            return new UseModelFit(new UseModel(means, usual, UseModel.EVEN_MONTHS, presence.occupancy()), presence, usual.cv(),
                    occupied.length, 0);
        }
        double cv = freedom == 0 ? 0 : Math.sqrt(squares / freedom);
        DayVariation variation = DayVariation.ofCv(Math.min(DayVariation.MAX_CV, cv));
        return new UseModelFit(new UseModel(means, variation, UseModel.EVEN_MONTHS, presence.occupancy()), presence, cv,
                occupied.length, freedom);
    }
}
