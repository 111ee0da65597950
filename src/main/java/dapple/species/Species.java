package dapple.species;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.hibernate.envers.Audited;

/** A species that a site keeps. */
@Entity
@Audited
class Species {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private String scientificName;
    private String commonName;

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected Species() {}

    Species(long siteId, SpeciesName name) {
        this.siteId = siteId;
        this.scientificName = name.scientific();
        this.commonName = name.common();
    }

    void rename(SpeciesName name) {
        this.scientificName = name.scientific();
        this.commonName = name.common();
    }

    SpeciesFacts facts() {
        return new SpeciesFacts(id, scientificName, commonName, version);
    }
}
