/** Lamps: their models, what these emit and what is known of their spectrum, and every single one in stock. */
package dapple.lamp;
