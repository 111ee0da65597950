/** The species of a site, and the library that suggests zones for them. */
package dapple.species;
