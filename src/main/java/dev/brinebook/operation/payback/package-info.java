/** The operations that estimate the payback of a conversion and compare alternatives. */
package dev.brinebook.operation.payback;
