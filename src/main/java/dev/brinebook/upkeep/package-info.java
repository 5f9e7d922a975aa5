// SPDX-License-Identifier: Apache-2.0
/** What keeps a softener going: tasks with their triggers, intervals and dates. */
package dev.brinebook.upkeep;
