// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.caution;

/** Severity of a caution, most severe first. */
public enum Severity {
    /** Do not go on before this is put right. */
    STOP,
    /** Something can be harmed or fail. */
    WARNING,
    /** Worth knowing. */
    INFO
}
