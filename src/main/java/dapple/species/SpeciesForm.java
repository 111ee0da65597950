package dapple.species;

import dapple.site.Given;
import dapple.site.Line;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/**
 * What a species is called, with the version that the form was made from.
 *
 * @param asTyped whether a name that the library does not have is meant as it is; none: it was not asked
 */
record SpeciesForm(
        @NotNull @Nullable Long version,
        @Line @Size(max = 120) String scientificName,
        @Line @Size(max = 120) String commonName,
        @Nullable Boolean asTyped) {

    static SpeciesForm of(SpeciesName name) {
        return new SpeciesForm(0L, name.scientific(), name.common(), false);
    }

    static SpeciesForm of(SpeciesFacts species) {
        return new SpeciesForm(species.version(), species.scientificName(), species.commonName(), true);
    }

    SpeciesForm onVersion(long newVersion) {
        return new SpeciesForm(newVersion, scientificName, commonName, asTyped);
    }

    long versionSeen() {
        return Given.of(version);
    }

    boolean isMeantAsTyped() {
        return Boolean.TRUE.equals(asTyped);
    }

    SpeciesName name() {
        return new SpeciesName(scientificName.strip(), commonName.strip());
    }
}
