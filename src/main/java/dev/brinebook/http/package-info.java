// SPDX-License-Identifier: Apache-2.0
/** Settings of the service, and the files that it serves as they are. */
package dev.brinebook.http;
