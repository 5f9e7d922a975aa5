/** Numbers drawn by seed, stream and place; quantities that are not known exactly. */
package dev.brinebook.randomness;
