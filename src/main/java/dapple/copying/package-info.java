/** Copying: enclosures built alike, with points, cover, furniture and lamps of their own. */
package dapple.copying;
