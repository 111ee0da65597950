package dapple.site;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The sites of this installation. */
@Service
public class Sites {
    private static final long NEVER_SETTLED = 0;

    private final SiteRepository sites;
    private final SiteSettingsRepository settings;

    Sites(SiteRepository sites, SiteSettingsRepository settings) {
        this.sites = sites;
        this.settings = settings;
    }

    @Transactional
    public SiteFacts add(String name, ZoneId timeZone) {
        return sites.save(new Site(name, timeZone)).facts();
    }

    @Transactional(readOnly = true)
    public SiteFacts get(long siteId) {
        return sites.findById(siteId).map(Site::facts).orElseThrow(NotFoundException::new);
    }

    @Transactional(readOnly = true)
    public List<SiteFacts> all() {
        return sites.findAll().stream().map(Site::facts).toList();
    }

    /** The site that began this installation, whose administrators answer for all of it. */
    @Transactional(readOnly = true)
    public SiteFacts first() {
        return sites.findFirstByOrderById().map(Site::facts).orElseThrow(NotFoundException::new);
    }

    @Transactional(readOnly = true)
    public boolean isFirst(long siteId) {
        return first().id() == siteId;
    }

    /** What a site has settled, or the usual values. */
    @Transactional(readOnly = true)
    public Settings settings(long siteId) {
        return settings.findBySiteId(siteId).map(SiteSettings::settings).orElse(Settings.USUAL);
    }

    /**
     * Changes what a site has settled.
     *
     * @param version the version that the form was made from; 0 where the usual values stood
     * @throws ObjectOptimisticLockingFailureException if somebody has changed it since
     */
    @Transactional
    public void settle(long siteId, long version, Settings changed) {
        Optional<SiteSettings> stored = settings.findBySiteId(siteId);
        if (settingsVersion(siteId) != version) {
            throw new ObjectOptimisticLockingFailureException(SiteSettings.class, siteId);
        }
        SiteSettings row = stored.orElseGet(() -> new SiteSettings(siteId, changed));
        row.become(changed);
        try {
            settings.saveAndFlush(row);
        } catch (DataIntegrityViolationException settledMeanwhile) {
            throw new ObjectOptimisticLockingFailureException(SiteSettings.class, siteId, settledMeanwhile);
        }
    }

    /** The settings of a site, for their history. */
    @Transactional(readOnly = true)
    public AuditedThing auditedSettings(long siteId) {
        return AuditedThing.of(
                        SiteSettings.class,
                        settings.findBySiteId(siteId).map(SiteSettings::id).orElse(NEVER_SETTLED))
                .wording("repeatsAsked", "repeats-asked.");
    }

    /** The version of a site's settings for forms: 0 before the first change. */
    @Transactional(readOnly = true)
    public long settingsVersion(long siteId) {
        return settings.findBySiteId(siteId).map(row -> row.version() + 1).orElse(0L);
    }
}
