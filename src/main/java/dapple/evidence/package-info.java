/** What is known of a species' zone: evidence rows, and which one is chosen, by whom and why. */
package dapple.evidence;
