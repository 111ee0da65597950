/** What a lamp really gives and what a cover really passes, fitted to readings with the field itself as the model. */
package dapple.light.calibration;
