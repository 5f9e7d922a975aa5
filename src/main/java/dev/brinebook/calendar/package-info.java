// SPDX-License-Identifier: Apache-2.0
/** Calendar files (RFC 5545): what operations write dates into. */
package dev.brinebook.calendar;
