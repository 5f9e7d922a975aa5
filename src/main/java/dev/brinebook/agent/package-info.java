/** What language models get: the operations as tools of the Model Context Protocol, and the page that explains them. */
package dev.brinebook.agent;
