// SPDX-License-Identifier: Apache-2.0
/** What to do, from the least to the most, each step worth its own money. */
package dev.brinebook.verdict;
