/** Accounts: who may be here, in which roles, and what each route asks of them. */
package dapple.people;
