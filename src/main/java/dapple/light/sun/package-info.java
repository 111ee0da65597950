/** The sun without clouds: where it stands, how long the day is, and the UV index that it would give. */
package dapple.light.sun;
