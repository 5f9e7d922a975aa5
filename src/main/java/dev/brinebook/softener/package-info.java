// SPDX-License-Identifier: Apache-2.0
/** Tanks and beds as they are sold, sizing, choice of the dose, review of settings, readiness of the site. */
package dev.brinebook.softener;
