// SPDX-License-Identifier: Apache-2.0
/** Parts of requests: softener, resin, control, site, conversion and preferences, and the domain records made of them. */
package dev.brinebook.request.softener;
