package dapple.confirmation;

import dapple.site.ConflictException;
import dapple.species.SpeciesFacts;

/** A species has got a target, or another suggestion, since the person looked; nothing was stored. */
class ConfirmedMeanwhileException extends ConflictException {
    private static final long serialVersionUID = 1;

    private final transient SpeciesFacts species;

    ConfirmedMeanwhileException(SpeciesFacts species) {
        super("the suggestion for " + species.scientificName() + " no longer stands");
        this.species = species;
    }

    SpeciesFacts species() {
        return species;
    }
}
