package dapple.site;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.hibernate.envers.Audited;

/** The settings of a site that has changed any. */
@Entity
@Audited
class SiteSettings {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;

    @Embedded
    private Settings settings;

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected SiteSettings() {}

    SiteSettings(long siteId, Settings settings) {
        this.siteId = siteId;
        this.settings = settings;
    }

    void become(Settings changed) {
        this.settings = changed;
    }

    long id() {
        return id;
    }

    long version() {
        return version;
    }

    Settings settings() {
        return settings;
    }
}
