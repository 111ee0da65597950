/** What tests share: the databases, the conditions under which a test can run, the collection to try things on. */
package dapple.testing;
