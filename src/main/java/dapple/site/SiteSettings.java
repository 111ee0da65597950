package dapple.site;

import jakarta.persistence.Column;
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
    private int overdueAfterDays;
    private int staleAfterDays;
    private int weakAfterDays;

    @Column(name = "weak_after_days_in_zone_1")
    private int weakAfterDaysInZone1;

    private int warmUpMinutes;
    private double lowestRatio;
    private double highestRatio;
    private int carryDays;
    private double baskingHours;
    private boolean onePerson;

    @Version
    private long version;

    protected SiteSettings() {}

    SiteSettings(long siteId, Settings settings) {
        this.siteId = siteId;
        become(settings);
    }

    final void become(Settings settings) {
        this.overdueAfterDays = settings.overdueAfterDays();
        this.staleAfterDays = settings.staleAfterDays();
        this.weakAfterDays = settings.weakAfterDays();
        this.weakAfterDaysInZone1 = settings.weakAfterDaysInZone1();
        this.warmUpMinutes = settings.warmUpMinutes();
        this.lowestRatio = settings.lowestRatio();
        this.highestRatio = settings.highestRatio();
        this.carryDays = settings.carryDays();
        this.baskingHours = settings.baskingHours();
        this.onePerson = settings.onePerson();
    }

    long id() {
        return id;
    }

    long version() {
        return version;
    }

    Settings settings() {
        return new Settings(
                overdueAfterDays,
                staleAfterDays,
                weakAfterDays,
                weakAfterDaysInZone1,
                warmUpMinutes,
                lowestRatio,
                highestRatio,
                carryDays,
                baskingHours,
                onePerson);
    }
}
