// SPDX-License-Identifier: Apache-2.0
/** Cycle steps, brine, policies, reserve, example days and expected years, salt purchases. */
package dev.brinebook.regeneration;
