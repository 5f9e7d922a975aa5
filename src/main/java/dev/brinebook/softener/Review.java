package dev.brinebook.softener;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Holds the settings found on a softener against the water, the bed and the household. */
public final class Review {

    private Review() {
    }

    /**
     * Every setting that should be another, gravest first. What each costs is the year as found less the same year with
     * that one setting mended; the costs of several do not add up, because one mistake can hide another. What to set
     * instead holds together: capacity and interval are those of the salt that reaches the bed once the salt is mended.
     */
    public static List<Finding> of(Found found, Duty duty) {
        OptionalDouble needed = SaltReview.capacityNeededGrams(found, duty);
        double capacity = SaltReview.mendedCapacityGrams(found, duty, needed);
        List<Finding> findings = new ArrayList<>(found.policy().byClock() ? ClockReview.of(found, duty, capacity)
                : MeterReview.of(found, duty, capacity));
        findings.addAll(SaltReview.of(found, duty, needed));
        findings.addAll(CycleReview.of(found, duty));
        findings.sort(Finding.ORDER);
        return List.copyOf(findings);
    }

    /** What the settings as found cost in a year against {@code better}. */
    static Setup.Difference difference(Found found, Setup better, Duty duty) {
        return found.setup().year(duty).minus(better.year(duty));
    }
}
