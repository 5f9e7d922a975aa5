/** The OpenAPI document, built from the list of operations that is routed. */
package dev.brinebook.contract;
