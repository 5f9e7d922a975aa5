// SPDX-License-Identifier: Apache-2.0
/** Warnings that go with a number. */
package dev.brinebook.caution;
