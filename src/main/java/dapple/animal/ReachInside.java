package dapple.animal;

import dapple.enclosure.StatedReach;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How far animals come in an enclosure: as it is stated of the enclosure, else as far as whoever of them reaches farthest.
 *
 * @param stated of the enclosure; empty: nothing is
 * @param ofAnimals of those who live there; everywhere where nobody does
 */
public record ReachInside(Optional<StatedReach> stated, Reach ofAnimals) {
    public static ReachInside of(Optional<StatedReach> stated, List<Occupant> occupants) {
        return new ReachInside(
                stated, farthest(occupants.stream().map(Occupant::reach).toList()));
    }

    private static Reach farthest(List<Reach> reaches) {
        return reaches.stream().anyMatch(Reach::isEverywhere)
                ? Reach.EVERYWHERE
                : new Reach(reaches.stream()
                        .flatMap(reach -> reach.groundMetres().stream())
                        .max(Comparator.naturalOrder()));
    }

    /** How high above the floor and what stands there; empty: everywhere. */
    public Optional<Double> groundMetres() {
        return stated.map(StatedReach::metres).orElse(ofAnimals.groundMetres());
    }

    /** Whether by its own record somebody comes farther than is stated of the enclosure. */
    public boolean isExceeded() {
        return stated.flatMap(StatedReach::metres)
                .filter(metres ->
                        ofAnimals.groundMetres().filter(own -> own <= metres).isEmpty())
                .isPresent();
    }
}
