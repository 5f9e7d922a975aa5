package dev.brinebook.caution;

/** How much a caution matters, gravest first. */
public enum Severity {
    /** Do not go on before this is put right. */
    STOP,
    /** Something can be harmed or fail. */
    WARNING,
    /** Worth knowing. */
    INFO
}
