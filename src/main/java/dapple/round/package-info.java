/** Rounds: which enclosures are walked in which order and when, by whom, and how far a walk is. */
package dapple.round;
