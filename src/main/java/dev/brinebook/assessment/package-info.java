/** The whole job, composed of what the other packages calculate. */
package dev.brinebook.assessment;
