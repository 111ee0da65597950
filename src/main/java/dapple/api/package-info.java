/** The engine for other programs: scenes and spectra read from JSON, their light answered in JSON. {@code docs/scene.md} */
package dapple.api;
