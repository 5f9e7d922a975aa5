// SPDX-License-Identifier: Apache-2.0
/** Parts of answers about the days of a household. */
package dev.brinebook.answer.household;
