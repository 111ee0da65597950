/**
 * What an animal finds in the light of an enclosure: zones of the space it reaches, the patch it can bask on, and whether
 * it can leave that for shade. {@code docs/physics.md}, Zones
 */
package dapple.light.zone;
