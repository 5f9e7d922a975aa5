package dev.brinebook.softener;

/** What to set on a metered controller. */
public final class Recommendation {

    /** Days after which a meter regenerates whatever was used, where iron would build up: 3 to 4. Source: [CP-CYCLE]. */
    public static final int OVERRIDE_DAYS_WITH_IRON = 4;

    private Recommendation() {
    }
}
