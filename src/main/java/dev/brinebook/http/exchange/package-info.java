// SPDX-License-Identifier: Apache-2.0
/** What requests and answers have in common: media types, languages, validators, caching, ids, problems. */
package dev.brinebook.http.exchange;
