package dev.brinebook.household;

/** Where a fixture stands. */
public enum FixtureUse {
    /** In a home. */
    PRIVATE,
    /** Where anyone may use it. */
    PUBLIC
}
