package dapple.animal;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.hibernate.envers.Audited;

/** One animal, by its accession number, which is never used again. */
@Entity
@Audited
class Animal {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long speciesId;
    private String accessionNumber;
    private String name;

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected Animal() {}

    Animal(long siteId, NewAnimal animal) {
        this.siteId = siteId;
        this.speciesId = animal.speciesId();
        this.accessionNumber = animal.accessionNumber();
        this.name = animal.name();
    }

    long siteId() {
        return siteId;
    }

    AnimalFacts facts() {
        return new AnimalFacts(id, accessionNumber, name, speciesId);
    }
}
