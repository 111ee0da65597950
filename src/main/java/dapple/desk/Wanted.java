package dapple.desk;

import dapple.light.design.Demand;

/**
 * What somebody who lives in an enclosure needs there.
 *
 * @param holder who: a species, or an animal under a vet's order
 */
public record Wanted(Demand demand, String holder) {}
