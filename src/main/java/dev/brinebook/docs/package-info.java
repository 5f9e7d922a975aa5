/** Pages for people who call the service, made from operations, committed examples and sources. */
package dev.brinebook.docs;
