package dapple.site;

import java.time.ZoneId;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The sites of this installation. */
@Service
public class Sites {
    private final SiteRepository sites;

    Sites(SiteRepository sites) {
        this.sites = sites;
    }

    @Transactional
    public SiteFacts add(String name, ZoneId timeZone) {
        return sites.save(new Site(name, timeZone)).facts();
    }

    @Transactional(readOnly = true)
    public SiteFacts get(long siteId) {
        return sites.findById(siteId).map(Site::facts).orElseThrow(NotFoundException::new);
    }
}
