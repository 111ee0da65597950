/** The demo: an invented rescue with invented people, made on the first start of its profile. */
package dapple.demo;
