/**
 * What an animal finds in the light of a whole scene: the zones of {@code light.zone}, measured in a field by whoever does
 * the work.
 */
package dapple.light.survey;
