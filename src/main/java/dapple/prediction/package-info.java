/** What rigs will give: changes of rigs are foreseen here before they are made. */
package dapple.prediction;
