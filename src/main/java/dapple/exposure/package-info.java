/** The light that an animal had: its page. */
package dapple.exposure;
