package dapple.comparison;

import dapple.people.SignedIn;
import dapple.site.Settings;
import dapple.site.SiteFacts;
import dapple.site.Sites;
import java.util.UUID;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A site that asks for blind repeats, with a seed that the test knows. */
record Drawn(RepeatDraw draw) {
    static Drawn at(SiteFacts site, Sites sites, JdbcClient database) {
        sites.settle(site.id(), 0, asking());
        UUID seed = UUID.randomUUID();
        database.sql("insert into repeat_seed (site_id, seed) values (:siteId, :seed)")
                .param("siteId", site.id())
                .param("seed", seed)
                .update();
        return new Drawn(new RepeatDraw(seed));
    }

    static Settings asking() {
        return Settings.USUAL.withBlindRepeats();
    }

    /** The same person, with what the site has settled by now. */
    static SignedIn asked(SignedIn person) {
        return new SignedIn(
                person.personId(),
                person.signInName(),
                person.fullName(),
                person.siteId(),
                person.siteName(),
                person.zone(),
                asking(),
                person.roles());
    }

    UUID key() {
        return keys().filter(draw::takes).findFirst().orElseThrow();
    }

    UUID otherKey() {
        return keys().filter(key -> !draw.takes(key)).findFirst().orElseThrow();
    }

    private static Stream<UUID> keys() {
        return Stream.generate(UUID::randomUUID);
    }
}
