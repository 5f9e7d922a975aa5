// SPDX-License-Identifier: Apache-2.0
/** A complaint about a softener: causes by symptoms and measurements, the next test, and what a cause costs while it is left. */
package dev.brinebook.complaint;
