// SPDX-License-Identifier: Apache-2.0
/** Parts of answers: settings and their findings, flows, doses, and whether the site is ready. */
package dev.brinebook.answer.softener;
