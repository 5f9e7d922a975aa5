// SPDX-License-Identifier: Apache-2.0
/** Versions of the formulas and data: which changes are in force in each of those that can be called. */
package dev.brinebook.model;
