/**
 * What erythemal dose was available to an animal, day by day, from readings, timers and stays. {@code docs/physics.md},
 * Dose
 */
package dapple.light.dose;
