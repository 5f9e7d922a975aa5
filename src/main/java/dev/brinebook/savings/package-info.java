// SPDX-License-Identifier: Apache-2.0
/** Savings shown by readings before and after a change: their interval, verdict, reasons, how long to wait, and a fleet of homes. */
package dev.brinebook.savings;
