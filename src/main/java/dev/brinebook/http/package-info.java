/** The server: routes, JSON, problems, limits and metrics. It knows the list of operations and no feature. */
package dev.brinebook.http;
