package dapple.housing;

import dapple.animal.AnimalFacts;
import dapple.order.Needs;
import dapple.species.SpeciesFacts;
import dapple.target.Target;
import java.util.Optional;

/**
 * An animal or a group that can be moved.
 *
 * @param count how many the group holds; 1 for one animal
 * @param target none: no target yet
 */
record MoveChoice(AnimalFacts animal, int count, SpeciesFacts species, Optional<Target> target, Needs needs) {}
