/** Photometric files as makers of lamps give them: how much light goes into which direction. Light for human eyes alone. */
package dapple.light.photometry;
