/** Parts of requests: prices of salt and water. */
package dev.brinebook.request.prices;
