/** What a spectrum does: weighted irradiances, illuminance, shares of bands, and how long a keeper may stay in it. */
package dapple.light.spectrum;
