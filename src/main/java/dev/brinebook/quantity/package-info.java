/** Units that own their exact factors, and rounding. */
package dev.brinebook.quantity;
