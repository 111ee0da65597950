/** The engine for other programs: scenes read from JSON, their light answered in JSON. {@code docs/scene.md} */
package dapple.api;
