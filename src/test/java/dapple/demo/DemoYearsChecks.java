package dapple.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import dapple.demo.DemoFailures.Failure;
import dapple.demo.DemoFailures.Kind;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import dapple.light.quantity.Quantity;
import dapple.prediction.PredictedLight;
import dapple.review.Standings;
import dapple.rig.RigScene;
import dapple.rig.Rigs;
import dapple.site.Given;
import dapple.site.Settings;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The demo's two years: how much there is, and that what went wrong has left the trace which its table tells.
 * In the class that starts the demo, which takes longer than all checks. */
abstract class DemoYearsChecks {
    /** Two readings scatter by 3.5 % each, and a display of 0.1 shows 0.2 as anything from 0.15 to 0.25. */
    private static final double JUMP_PERCENT = 30;

    /** A lamp's output and pace, and how far it has aged since it gave what is stated. */
    private static final double PREDICTION_PERCENT = 20;

    private static final String READ = "select v.begun_at at_time, r.amount, e.code enclosure from reading r "
            + "join visit v on v.id = r.visit_id join enclosure e on e.id = v.enclosure_id "
            + "join measuring_point p on p.id = r.point_id "
            + "where r.quantity = 'UV_INDEX' and p.code = 'P1' "
            + "and not exists (select 1 from reading_withdrawal w where w.reading_id = r.id) order by v.begun_at";

    @Autowired
    private Rigs rigs;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private Standings standings;

    @Autowired
    private DemoReset reset;

    @Autowired
    private JdbcClient database;

    private final DemoRows rows = DemoRows.read();
    private final DemoFailures failures = DemoFailures.read();

    @Test
    void aSpeciesWasRenamedOnTheWay() {
        long renamed = count("select id from species where scientific_name = 'Intellagama lesueurii'");

        assertThat(database.sql("select h.scientific_name from species_history h where h.id = ? order by h.revision_id")
                        .param(renamed)
                        .query(String.class)
                        .list())
                .containsExactly("Physignathus lesueurii", "Intellagama lesueurii");
        assertThat(count("select count(*) from verdict where replaced_at is null and species_id = " + renamed))
                .isGreaterThan(DemoStory.WEEKS);
    }

    @Test
    void thereAreFortyEnclosures() {
        assertThat(count("select count(*) from enclosure")).isEqualTo(40);
    }

    @Test
    void thereAreTwentyFiveSpecies() {
        assertThat(count("select count(*) from species")).isEqualTo(25);
    }

    @Test
    void moreThanSixtyLampsHang() {
        assertThat(count("select count(*) from fitting where to_at is null")).isGreaterThanOrEqualTo(60);
    }

    /** Every one that was swapped; by what is usual of tubes and hot lamps most places had two or more in two years. */
    @Test
    void lampsThatWereSwappedAreRetired() {
        assertThat(count("select count(*) from lamp where retired_at is not null"))
                .isEqualTo(count("select count(*) from rig_change where note = 'Swapped for a new one'"))
                .isGreaterThan(60);
    }

    @Test
    void almostEveryWeekOfTwoYearsWasRead() {
        Map<String, Long> weeks =
                read().stream().collect(Collectors.groupingBy(Read::enclosure, Collectors.counting()));
        assertThat(weeks)
                .hasSize(40)
                .allSatisfy((code, times) -> assertThat(times).as(code).isBetween(72L, 112L));
    }

    @Test
    void mostAreOnTarget() {
        assertThat(standings.at(site(), Settings.USUAL).stream()
                        .filter(standing -> standing.state().equals(Optional.of(State.ON_TARGET))))
                .hasSizeBetween(22, 28);
    }

    @TestFactory
    Stream<DynamicTest> whatChangesTheLightMakesReadingsJump() {
        Map<String, List<Read>> read = read().stream().collect(Collectors.groupingBy(Read::enclosure));
        return Stream.of(
                        Kind.SWAPPED_UNLOGGED,
                        Kind.WRONG_GRADE,
                        Kind.SHELF_RAISED,
                        Kind.GLASS_CLOSED,
                        Kind.MESH_CHANGED,
                        Kind.REFLECTOR_TURNED,
                        Kind.WARM_UP,
                        Kind.NOT_BURNT_IN)
                .flatMap(failures::of)
                .map(failure -> DynamicTest.dynamicTest(failure.enclosure() + ": " + failure.what(), () -> {
                    List<Read> there = Given.of(read.get(failure.enclosure()));
                    double before = amount(failure, there, failure.fromWeek() - 1);
                    assertThat(amount(failure, there, failure.fromWeek()) / before)
                            .isCloseTo(failure.uvIndexTimes(), withPercentage(JUMP_PERCENT));
                }));
    }

    @TestFactory
    Stream<DynamicTest> whereNothingWasReadThereIsNoReading() {
        return Stream.concat(failures.of(Kind.NOT_READ), failures.of(Kind.POWER_CUT))
                .map(failure -> DynamicTest.dynamicTest(
                        failure.enclosure() + ": " + failure.what(),
                        () -> assertThat(read().stream()
                                        .filter(one -> one.enclosure().equals(failure.enclosure()))
                                        .filter(one -> isIn(failure, one)))
                                .isEmpty()));
    }

    @Test
    void inThePowerCutEveryPointIsNoted() {
        assertThat(count("select count(*) from unread_point where outcome = 'LAMP_OUT'"))
                .isEqualTo(6);
    }

    /** Four points, in E38's place read at E37. */
    @Test
    void whatWasEnteredAtTheWrongEnclosureIsWithdrawn() {
        assertThat(count("select count(*) from reading_withdrawal w join reading r on r.id = w.reading_id "
                        + "join visit v on v.id = r.visit_id join enclosure e on e.id = v.enclosure_id "
                        + "where e.code = 'E38'"))
                .isEqualTo(4);
    }

    /** The late factor 1.14 of M2, for what it showed before it was known. */
    @Test
    void aLateCalibrationJudgesAnewWhatTheSecondKeeperRead() {
        assertThat(database.sql("select distinct t.factor from verdict t join reading r on r.id = t.reading_id "
                                + "join visit v on v.id = r.visit_id join person q on q.id = v.person_id "
                                + "where q.name = ? and t.replaced_at is null and r.quantity = 'UV_INDEX'")
                        .param(DemoTeam.SECOND_KEEPER)
                        .query(Double.class)
                        .list())
                .containsExactly(1.14);
    }

    @Test
    void wintersAreRestedAndSummersSpentOutdoors() {
        assertThat(database.sql("select distinct reason from planned_off")
                        .query(String.class)
                        .list())
                .hasSize(3);
    }

    /** Where lamps are off for a season the newest reading is older than what is foreseen for today. */
    @TestFactory
    Stream<DynamicTest> withoutAFailureTheNewestReadingsAreWhatTheRigGives() {
        Set<String> off = standings.at(site(), Settings.USUAL).stream()
                .filter(standing -> standing.state().equals(Optional.of(State.PLANNED_OFF)))
                .map(standing -> standing.enclosure().code())
                .collect(Collectors.toSet());
        assertThat(off).hasSizeLessThanOrEqualTo(3);
        return rows.enclosures().stream()
                .filter(space -> !space.isTold() && space.size().isPresent())
                .filter(space -> !off.contains(space.code()))
                .filter(space -> failures.failures().stream()
                        .noneMatch(
                                failure -> failure.enclosure().equals(space.code()) && failure.isIn(DemoStory.WEEKS)))
                .flatMap(space -> rows.pointsOf(space).stream())
                .filter(spot -> spot.role() == PointRole.BASKING)
                .map(spot -> DynamicTest.dynamicTest(
                        spot.enclosure() + " " + spot.code(),
                        () -> assertThat(newest(spot)).isCloseTo(predicted(spot), withPercentage(PREDICTION_PERCENT))));
    }

    /** Whatever was entered is gone, and all else is there again. */
    @Test
    void aResetDemoIsAsOnTheFirstDay() {
        int before = count("select count(*) from reading");
        database.sql("update enclosure set code = 'X99' where code = 'E40'").update();
        reset.run();
        assertThat(count("select count(*) from enclosure where code = 'E40'")).isEqualTo(1);
        assertThat(count("select count(*) from reading")).isEqualTo(before);
    }

    private double amount(Failure failure, List<Read> there, int week) {
        return there.stream()
                .filter(one -> week(one) == week)
                .mapToDouble(Read::amount)
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing read in week " + week + " of " + failure.enclosure()));
    }

    private boolean isIn(Failure failure, Read one) {
        return failure.isIn(week(one));
    }

    /** Of the story: its last week is that of the newest reading of an enclosure. */
    private int week(Read one) {
        int lastReadDaysAgo = Given.of(spaces().get(one.enclosure())).lastReadDaysAgo();
        long days = Duration.between(one.at(), Instant.now()).toDays() - lastReadDaysAgo;
        return DemoStory.WEEKS - (int) Math.round(days / 7.0);
    }

    private Map<String, DemoRows.Space> spaces() {
        return rows.enclosures().stream().collect(Collectors.toMap(DemoRows.Space::code, Function.identity()));
    }

    private double newest(DemoRows.Spot spot) {
        return database.sql("select r.amount from reading r join measuring_point p on p.id = r.point_id "
                        + "join enclosure e on e.id = p.enclosure_id where r.quantity = 'UV_INDEX' "
                        + "and e.code = ? and p.code = ? order by r.taken_at desc fetch first 1 row only")
                .params(spot.enclosure(), spot.code())
                .query(Double.class)
                .single();
    }

    private double predicted(DemoRows.Spot spot) {
        EnclosureFacts enclosure = enclosures.inWalkingOrder(site()).stream()
                .filter(one -> one.code().equals(spot.enclosure()))
                .findFirst()
                .orElseThrow();
        PointFacts point = enclosures.pointsOf(site(), enclosure.id()).stream()
                .filter(one -> one.code().equals(spot.code()))
                .findFirst()
                .orElseThrow();
        RigScene rig = RigScene.of(rigs.at(site(), enclosure.id(), Instant.now()));
        return Given.of(PredictedLight.of(rig).at(point).get(Quantity.UV_INDEX)).amount();
    }

    private List<Read> read() {
        return database.sql(READ)
                .query((row, unused) -> new Read(
                        row.getString("enclosure"),
                        row.getObject("at_time", OffsetDateTime.class).toInstant(),
                        row.getDouble("amount")))
                .list();
    }

    private int count(String query) {
        return database.sql(query).query(Integer.class).single();
    }

    private long site() {
        return database.sql("select id from site").query(Long.class).single();
    }

    private record Read(String enclosure, Instant at, double amount) {}
}
