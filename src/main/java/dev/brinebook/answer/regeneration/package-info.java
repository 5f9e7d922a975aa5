// SPDX-License-Identifier: Apache-2.0
/** Parts of answers: consumption of a schedule per year, hard days and salt purchases. */
package dev.brinebook.answer.regeneration;
