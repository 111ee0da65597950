package dapple.leaving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.enclosure.Enclosures;
import dapple.enclosure.PlannedOffTime;
import dapple.people.KeyOwner;
import dapple.people.Keys;
import dapple.people.NewPerson;
import dapple.people.People;
import dapple.people.PersonChange;
import dapple.people.PersonFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
import dapple.site.HourPassed;
import dapple.site.RepeatsAsked;
import dapple.site.Settings;
import dapple.site.SiteFacts;
import dapple.site.Sites;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.session.Session;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;

@StorageTest
@RecordApplicationEvents
class ErasingStorageTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Erasing erasing;

    @Autowired
    private ErasingQueue queue;

    @Autowired
    private ApplicationEvents events;

    @Autowired
    private People people;

    @Autowired
    private Keys keys;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private Sites sites;

    @Autowired
    private FindByIndexNameSessionRepository<? extends Session> sessions;

    @Autowired
    private JdbcClient database;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn administrator;
    private String name = "";
    private String signInName = "";
    private long person;

    @BeforeEach
    void hire() {
        site = collection.site();
        administrator = collection.person(site, Role.ADMINISTRATOR);
        String odd = UUID.randomUUID().toString().substring(0, 8);
        name = "Tamsin Quill-" + odd;
        signInName = "ts." + odd;
        person = hire(signInName, name, Role.KEEPER);
    }

    /** Whatever tables there are: a new one that keeps a name makes this fail. */
    @Test
    void noColumnOfAnyTableHoldsANameAfterwards() {
        leaveTracesEverywhere();
        assertThat(holding(name)).hasSizeGreaterThanOrEqualTo(6);
        assertThat(holding(signInName)).hasSizeGreaterThanOrEqualTo(4);
        people.deactivate(site.id(), person);
        erasing.erase(person);
        assertThat(holding(name)).isEmpty();
        assertThat(holding(signInName)).isEmpty();
    }

    @Test
    void whatTheyDidStaysTheirs() {
        leaveTracesEverywhere();
        people.deactivate(site.id(), person);
        erasing.erase(person);
        assertThat(database.sql("select reason from planned_off where recorded_by = :id")
                        .param("id", person)
                        .query(String.class)
                        .single())
                .isEqualTo("Former keeper " + person + " asked for it");
        assertThat(people.names(site.id())).containsEntry(person, "Former keeper " + person);
    }

    @Test
    void keysSessionsAndDosesGo() {
        leaveTracesEverywhere();
        people.deactivate(site.id(), person);
        erasing.erase(person);
        assertThat(count("api_token")).isZero();
        assertThat(count("kept_dose")).isZero();
        assertThat(sessions.findByPrincipalName(signInName)).isEmpty();
    }

    @Test
    void nobodyIsLetInAgainNorRenamed() {
        people.deactivate(site.id(), person);
        erasing.erase(person);
        assertThatThrownBy(() -> people.reactivate(site.id(), person)).isInstanceOf(ConflictException.class);
        PersonFacts erased = people.get(site.id(), person);
        PersonChange renamed = new PersonChange(name, Set.of(Role.KEEPER), Optional.empty());
        assertThatThrownBy(() -> people.change(site.id(), person, erased.version(), renamed))
                .isInstanceOf(ConflictException.class);
    }

    @Test
    void whoHasNotLeftIsNotErased() {
        assertThatThrownBy(() -> erasing.erase(person)).isInstanceOf(ConflictException.class);
        assertThat(people.get(site.id(), person).name()).isEqualTo(name);
    }

    @Test
    void theNameOfSomebodyElseWhoHasTheSameStays() {
        long namesake = hire("other." + signInName, name, Role.VET);
        leaveTracesEverywhere();
        people.deactivate(site.id(), person);
        erasing.erase(person);
        assertThat(people.get(site.id(), namesake).name()).isEqualTo(name);
        assertThat(holding(name)).contains("planned_off.reason");
    }

    @ParameterizedTest
    @CsvSource({"25, 24, true", "23, 24, false", "1, 0, true", "600, , false"})
    void namesAreDueWhenTheirTimeIsOver(int monthsAgo, @Nullable Integer kept, boolean isDue) {
        settle(kept);
        leave(person, monthsAgo);
        assertThat(erasing.due().contains(person)).isEqualTo(isDue);
    }

    @Test
    void aLastDayThatIsOverIsLeavingToo() {
        LocalDate lastDay = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC).minusMonths(30);
        PersonFacts now = people.get(site.id(), person);
        people.change(
                site.id(), person, now.version(), new PersonChange(name, Set.of(Role.KEEPER), Optional.of(lastDay)));
        assertThat(erasing.due()).contains(person);
    }

    @Test
    void theLastAdministratorIsNeverDue() {
        leave(administrator.personId(), 30);
        assertThat(erasing.due()).doesNotContain(administrator.personId());
        hire("next." + signInName, "Another Administrator", Role.ADMINISTRATOR);
        assertThat(erasing.due()).contains(administrator.personId());
    }

    @Test
    void theQueueErasesWhoIsDueAndNobodyElse() {
        long stays = hire("stays." + signInName, "Somebody Who Stays", Role.KEEPER);
        leave(person, 30);
        queue.look();
        assertThat(people.get(site.id(), person).isErased()).isTrue();
        assertThat(people.get(site.id(), stays).isErased()).isFalse();
    }

    @Test
    void theQueueTellsTheHour() {
        queue.look();
        assertThat(events.stream(HourPassed.class)).hasSize(1);
    }

    private long hire(String signIn, String fullName, Role role) {
        NewPerson added = new NewPerson(signIn, fullName, collection.password());
        return people.add(site.id(), added, Set.of(role), Optional.empty());
    }

    private void leave(long who, int monthsAgo) {
        Instant left =
                clock.instant().atOffset(ZoneOffset.UTC).minusMonths(monthsAgo).toInstant();
        database.sql("update person set deactivated_at = :at where id = :id")
                .param("at", Timestamp.from(left))
                .param("id", who)
                .update();
    }

    private void settle(@Nullable Integer months) {
        Settings settings =
                new Settings(9, 21, 14, 28, 30, 0.8, 1.25, 14, 3, false, false, RepeatsAsked.NOWHERE, false, months);
        sites.settle(site.id(), sites.settingsVersion(site.id()), settings);
    }

    /** In the account and its history, in notes, as a signature, in a sheet's report, with a key, a session, a dose. */
    private void leaveTracesEverywhere() {
        PersonFacts now = people.get(site.id(), person);
        people.change(
                site.id(),
                person,
                now.version(),
                new PersonChange(name, Set.of(Role.KEEPER, Role.VET), Optional.empty()));
        long enclosure = collection.emptyEnclosure(site);
        PlannedOffTime off = new PlannedOffTime(enclosure, clock.instant(), Optional.empty(), name + " asked for it");
        enclosures.planOff(site.id(), off, person);
        keys.make(new KeyOwner(site.id(), person), "sheet of " + signInName);
        session(sessions);
        signAndImport(enclosure);
    }

    private <S extends Session> void session(FindByIndexNameSessionRepository<S> repository) {
        S session = repository.createSession();
        session.setAttribute(FindByIndexNameSessionRepository.PRINCIPAL_NAME_INDEX_NAME, signInName);
        repository.save(session);
    }

    private void signAndImport(long enclosure) {
        List<String> inserts = List.of(
                "insert into lamp_model (site_id, name, lamp_class, waived_by_name, version)"
                        + " values (:site, :key, 'TUBE_T5', :name, 0)",
                "insert into visit (site_id, enclosure_id, person_id, entry_key, begun_at, taken_by)"
                        + " values (:site, :enclosure, :person, :uuid, current_timestamp, :name)",
                "insert into import_run (site_id, begun_by, begun_at, file_name, sha256, size_bytes, state, surveys,"
                        + " choices, tried) values (:site, :person, current_timestamp, 'readings.csv', 'x', 1, 'OPEN',"
                        + " '[]', '{\"by\":\"' || :signIn || '\"}', '{\"by\":\"' || :name || '\"}')",
                "insert into kept_dose (site_id, person_id, entry_key, taken_at, uv_index_minutes,"
                        + " actinic_joules_per_square_metre, uva_joules_per_square_metre, assumed)"
                        + " values (:site, :person, :uuid, current_timestamp, 1, 1, 1, false)");
        inserts.forEach(sql -> database.sql(sql)
                .param("site", site.id())
                .param("person", person)
                .param("enclosure", enclosure)
                .param("uuid", UUID.randomUUID())
                .param("key", UUID.randomUUID().toString())
                .param("name", name)
                .param("signIn", signInName)
                .update());
    }

    private long count(String table) {
        return database.sql("select count(*) from " + table + " where person_id = :id")
                .param("id", person)
                .query(Long.class)
                .single();
    }

    /** The columns of texts that hold some words, by what the database says of itself. */
    private List<String> holding(String words) {
        return database
                .sql("select c.table_name || '.' || c.column_name from information_schema.columns c"
                        + " join information_schema.tables t on t.table_schema = c.table_schema"
                        + " and t.table_name = c.table_name where t.table_type = 'BASE TABLE'"
                        + " and lower(c.table_schema) not in ('information_schema', 'pg_catalog')"
                        + " and (lower(c.data_type) like '%char%' or lower(c.data_type) in ('text', 'clob'))")
                .query(String.class)
                .list()
                .stream()
                .map(column -> column.toLowerCase(Locale.ROOT))
                .filter(column -> !column.startsWith("flyway") && holds(column, words))
                .toList();
    }

    private boolean holds(String column, String words) {
        String[] parts = column.split("\\.", 2);
        return database.sql("select count(*) from %s where position(lower(:words) in lower(%s)) > 0"
                                .formatted(parts[0], parts[1]))
                        .param("words", words)
                        .query(Long.class)
                        .single()
                > 0;
    }
}
