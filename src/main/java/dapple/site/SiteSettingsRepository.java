package dapple.site;

import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;

interface SiteSettingsRepository extends JpaRepository<SiteSettings, Long> {
    Optional<SiteSettings> findBySiteId(long siteId);
}
