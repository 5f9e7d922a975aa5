// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

/** A sheet to print, each for another reader. */
enum SheetKind {
    /** For the customer. */
    LETTER,
    /** For the hands at the controller. */
    CARD,
    /** For the installer before, during and after the work. */
    CHECKLIST
}
