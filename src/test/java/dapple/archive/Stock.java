package dapple.archive;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.lamp.LampClass;
import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.species.UvZone;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.UUID;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;

/** A small collection with something of every sort that an archive finds hard. */
@TestComponent
class Stock {
    private final TestCollection collection;
    private final MockMvc pages;
    private final JdbcClient database;

    Stock(TestCollection collection, MockMvc pages, JdbcClient database) {
        this.collection = collection;
        this.pages = pages;
        this.database = database;
    }

    /** A site with readings of today: one that was corrected, and one of two years ago. */
    Kept make() throws Exception {
        SiteFacts site = collection.site();
        SignedIn keeper = collection.person(site, Role.KEEPER, Role.SUPERVISOR, Role.ADMINISTRATOR);
        Home home = collection.home(
                site,
                keeper,
                collection.species(
                        site, keeper, "Pogona vitticeps", UvZone.usual().get(0)));
        MeterFacts meter = collection.meter(site);
        collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
        long old = read(keeper, home, meter, "2.1");
        agedByTwoYears(old);
        long first = read(keeper, home, meter, "3.4");
        pages.perform(post("/readings/" + first + "/correction")
                        .param("key", UUID.randomUUID().toString())
                        .param("amount", "4.3")
                        .param("reason", "a, \"typed\" wrong, and 0,1 µm — é")
                        .with(csrf())
                        .with(collection.as(keeper)))
                .andExpect(status().is3xxRedirection());
        picture(site, home, keeper, old);
        picture(site, home, keeper, first);
        return new Kept(site, keeper, home, old, first);
    }

    private long read(SignedIn keeper, Home home, MeterFacts meter, String amount) throws Exception {
        String path = "/enclosures/" + home.enclosureId() + "/visits/" + UUID.randomUUID() + "/points/"
                + home.basking().id();
        String redirect = pages.perform(post(path)
                        .param("key", UUID.randomUUID().toString())
                        .param("meterId", String.valueOf(meter.id()))
                        .param("amount", amount)
                        .with(csrf())
                        .with(collection.as(keeper)))
                .andReturn()
                .getResponse()
                .getRedirectedUrl();
        return Long.parseLong(Optional.ofNullable(redirect).orElseThrow().replace("/readings/", ""));
    }

    private void agedByTwoYears(long reading) {
        database.sql("update visit set begun_at = :at where id = (select visit_id from reading where id = :reading)")
                .param("at", Instant.now().minus(Duration.ofDays(730)).atOffset(ZoneOffset.UTC))
                .param("reading", reading)
                .update();
    }

    /** Bytes of all values, which is no picture, and a photo of which nothing is kept but that it was. */
    private void picture(SiteFacts site, Home home, SignedIn keeper, long reading) {
        byte[] content = new byte[1000];
        for (int place = 0; place < content.length; place++) {
            content[place] = (byte) place;
        }
        database.sql("insert into visit_photo (site_id, visit_id, enclosure_id, entry_key, width_pixels, height_pixels,"
                        + " recorded_at, recorded_by, taken_at) select :site, r.visit_id, :enclosure, :key, 40, 30,"
                        + " r.recorded_at, :person, r.taken_at from reading r where r.id = :reading")
                .param("site", site.id())
                .param("enclosure", home.enclosureId())
                .param("key", UUID.randomUUID())
                .param("person", keeper.personId())
                .param("reading", reading)
                .update();
        database.sql("insert into visit_picture (photo_id, scale, content) select max(id), 'SMALL', :content"
                        + " from visit_photo")
                .param("content", content)
                .update();
    }

    /**
     * What was made.
     *
     * @param oldReading taken two years ago at the basking point
     * @param reading taken now, and corrected since
     */
    record Kept(SiteFacts site, SignedIn keeper, Home home, long oldReading, long reading) {}
}
