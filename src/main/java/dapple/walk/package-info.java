/** The page on which readings are taken without signal: what it carries, and what it sends when it can. */
package dapple.walk;
