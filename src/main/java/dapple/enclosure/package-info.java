/** Rooms, enclosures and the points where light is measured in them. */
package dapple.enclosure;
