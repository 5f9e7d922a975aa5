// SPDX-License-Identifier: Apache-2.0
/** Days and how they scatter, hours, fixtures and peak flow; meter readings and what they say of the days. */
package dev.brinebook.household;
