package dapple.target;

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

    Species(long siteId, String scientificName, String commonName) {
        this.siteId = siteId;
        this.scientificName = scientificName;
        this.commonName = commonName;
    }

    SpeciesFacts facts() {
        return new SpeciesFacts(id, scientificName, commonName);
    }
}
