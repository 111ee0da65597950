/** The packaged program as its users run it: a process of its own, spoken to over HTTP, killed without warning. */
package dapple.process;
