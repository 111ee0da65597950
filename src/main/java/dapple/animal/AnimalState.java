package dapple.animal;

import java.util.Optional;

/** What is said of an animal or a group. */
public record AnimalState(
        String accessionNumber,
        String name,
        long speciesId,
        Sex sex,
        Optional<BornAbout> born,
        Pigment pigment,
        Reach reach,
        String note) {

    static AnimalState of(NewAnimal animal) {
        return new AnimalState(
                animal.accessionNumber(),
                animal.name(),
                animal.speciesId(),
                Sex.UNKNOWN,
                Optional.empty(),
                Pigment.NORMAL,
                Reach.EVERYWHERE,
                "");
    }

    /** The same for an animal or a group that has left this one, under its own number and name. */
    AnimalState splitOff(String newAccessionNumber, String newName) {
        return new AnimalState(newAccessionNumber, newName, speciesId, Sex.UNKNOWN, born, pigment, reach, "");
    }
}
