package dapple.site;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.ZoneId;
import org.hibernate.envers.Audited;

/** A place that keeps animals and owns all that is recorded there. */
@Entity
@Audited
class Site {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private String name;
    private String timeZone;

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected Site() {}

    Site(String name, ZoneId timeZone) {
        this.name = name;
        this.timeZone = timeZone.getId();
    }

    SiteFacts facts() {
        return new SiteFacts(id, name, ZoneId.of(timeZone));
    }
}
