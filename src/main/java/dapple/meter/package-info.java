/** Meters and their calibrations. */
package dapple.meter;
