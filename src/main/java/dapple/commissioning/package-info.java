/** Rigs are read before they go live: predicted against measured, fitted, accepted; and lamps are read on a bench. */
package dapple.commissioning;
