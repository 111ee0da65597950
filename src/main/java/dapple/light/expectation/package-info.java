/**
 * What a reading should be this week, from what was read and what hangs there, and the slips that an unlikely one suggests.
 * {@code docs/physics.md}, Expected readings
 */
package dapple.light.expectation;
