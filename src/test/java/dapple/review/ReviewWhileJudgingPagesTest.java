package dapple.review;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.Rejudging;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import org.hamcrest.Matcher;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** What Review says while earlier readings are judged behind the scenes. */
@PagesTest
class ReviewWhileJudgingPagesTest {
    /** More than are judged at once, before the wish returns. */
    private static final int VISITS = 60;

    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private Rejudging rejudging;

    @Autowired
    private JdbcClient database;

    @Autowired
    private PlatformTransactionManager transactions;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    /** The last visit is kept locked meanwhile, so that the judging waits for it. */
    @Test
    void earlierReadingsAreSaidToBeJudged() throws Exception {
        SiteFacts site = collection.site();
        SignedIn supervisor = collection.person(site, Role.SUPERVISOR);
        UvZone zone = new UvZone(3, LightMethod.SUNBEAM);
        Home home = collection.home(site, supervisor, collection.species(site, supervisor, "Pogona vitticeps", zone));
        Instant first = read(site, supervisor, home);

        shows(supervisor, not(containsString("Earlier readings are still being judged")));
        new TransactionTemplate(transactions).executeWithoutResult(locked -> {
            database.sql(
                            "select id from visit where id = (select max(id) from visit where enclosure_id = :id) for update")
                    .param("id", home.enclosureId())
                    .query(Long.class)
                    .single();
            CompletableFuture.runAsync(() -> rejudging.enclosure(site.id(), home.enclosureId(), first))
                    .join();
            shows(supervisor, containsString("Earlier readings are still being judged"));
        });
    }

    private void shows(SignedIn person, Matcher<String> expected) {
        try {
            pages.perform(get("/review").with(collection.as(person)))
                    .andExpect(content().string(expected));
        } catch (Exception broken) {
            throw new IllegalStateException("the page cannot be asked for", broken);
        }
    }

    private Instant read(SiteFacts site, SignedIn reader, Home home) {
        long meter = collection.meter(site).id();
        Instant first = clock.instant().minus(Duration.ofHours(VISITS));
        for (int visit = 0; visit < VISITS; visit++) {
            VisitPlace place = new VisitPlace(
                    UUID.randomUUID(), home.enclosureId(), home.basking().id());
            logging.log(
                    new Visitor(site.id(), reader.personId()),
                    new Entry(UUID.randomUUID(), place, meter, 4, first.plus(Duration.ofHours(visit))));
        }
        return first;
    }
}
