// SPDX-License-Identifier: Apache-2.0
/** The server: routes, ports, and what happens to every request before an operation is asked. */
package dev.brinebook.http.server;
