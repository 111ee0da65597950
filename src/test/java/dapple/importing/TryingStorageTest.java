package dapple.importing;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Which of the readings of a sheet are on record before it is taken in. */
@StorageTest
class TryingStorageTest {
    private static final String SHEET = """
            Enclosure,Species,Date,Basking UVI,Shade UVI,Meter,By
            E1,Pogona vitticeps,2025-11-13,3.4,0.1,M1,Jo
            E2,Pogona vitticeps,2025-11-14,4.1,0.2,M1,Jo
            """;

    @Autowired
    private Imports imports;

    @Autowired
    private Trying trying;

    @Autowired
    private ImportWork work;

    @Autowired
    private Sent sent;

    @Autowired
    private Runs runs;

    @Autowired
    private TestCollection collection;

    private SignedIn supervisor;

    @BeforeEach
    void hire() {
        supervisor = collection.person(collection.site(), Role.SUPERVISOR);
    }

    @Test
    void nothingOfAFirstSheetIsOnRecord() {
        Tried tried = tried(SHEET);

        assertThat(tried.readings()).isEqualTo(4);
        assertThat(tried.known()).isZero();
        assertThat(tried.differing()).isZero();
    }

    @Test
    void allOfASheetThatWasTakenInIsOnRecord() {
        takeIn(SHEET);

        Tried again = tried(SHEET);

        assertThat(again.readings()).isEqualTo(4);
        assertThat(again.known()).isEqualTo(4);
    }

    @Test
    void anotherAmountAndANewDayAreToldApart() {
        takeIn(SHEET);

        Tried next = tried(SHEET.replace("3.4", "3.6") + "E1,Pogona vitticeps,2025-11-20,3.3,0.1,M1,Jo\n");

        assertThat(next.readings()).isEqualTo(6);
        assertThat(next.known()).isEqualTo(3);
        assertThat(next.differing()).isEqualTo(1);
    }

    private Run open(String sheet) {
        byte[] bytes = sheet.getBytes(StandardCharsets.UTF_8);
        return runs.get(supervisor.siteId(), imports.open(supervisor, "weeks.csv", new ByteArrayInputStream(bytes)));
    }

    private Tried tried(String sheet) {
        Run run = open(sheet);
        try (Tables tables = Tables.open(sent.of(run.id()), run)) {
            return trying.attempt(supervisor, tables, run, share -> {});
        }
    }

    private void takeIn(String sheet) {
        Run run = open(sheet);
        work.takeIn(supervisor, run.id(), sent.of(run.id()), false, share -> {});
    }
}
