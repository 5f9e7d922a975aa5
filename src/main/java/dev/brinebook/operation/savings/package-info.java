// SPDX-License-Identifier: Apache-2.0
/** Whether a change at a softener saved what was promised: one home, and a fleet. */
package dev.brinebook.operation.savings;
