package dapple.archive;

import dapple.site.SiteFacts;
import java.time.Instant;

/** What goes into an archive. */
sealed interface ArchiveScope {
    /** All sites, passwords' hashes too. */
    record Everything() implements ArchiveScope {}

    /** One site: what was read in a time, and all that is needed to understand it. */
    record Year(RecordSpan span) implements ArchiveScope {
        static Year of(SiteFacts site, Instant from, Instant to) {
            return new Year(new RecordSpan(site, from, to));
        }
    }
}
