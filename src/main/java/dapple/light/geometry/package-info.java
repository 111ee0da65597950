/** Places and directions in metres, x to the right, y to the back, z up; solids that shade. */
package dapple.light.geometry;
