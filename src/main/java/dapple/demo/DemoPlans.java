package dapple.demo;

import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.round.Cadence;
import dapple.round.DueDays;
import dapple.round.Excuse;
import dapple.round.GivenTo;
import dapple.round.NotWalked;
import dapple.round.PlanDetails;
import dapple.round.RoundArranging;
import dapple.round.WalkKeeping;
import dapple.round.WalkKey;
import dapple.site.Given;
import dapple.site.Settings;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** The demo's rounds: with its weekly readings their walks are done, under way, due, overdue and not walked. */
@Component
@Profile("demo")
class DemoPlans {
    private static final int WEEK = 7;
    private static final int WEEKS_BEFORE = 7;
    private static final int MONTH = 30;
    private static final int NIGHT_ROOM_DAYS = 4;

    /** How many weeks before its newest walk the night room was not walked: as the table of failures has it. */
    private static final int MISSED_WEEKS = 3;

    /** Before the demo's readings of that day. */
    private static final LocalTime EARLY = LocalTime.of(9, 0);

    private final RoundArranging arranging;
    private final WalkKeeping keeping;

    DemoPlans(RoundArranging arranging, WalkKeeping keeping) {
        this.arranging = arranging;
        this.keeping = keeping;
    }

    /**
     * Plans the rounds and says what was said of their walks.
     *
     * @param byCode enclosures
     * @param time lets the story's clock stand at an instant
     */
    void plan(DemoTeam.Members members, Map<String, Long> byCode, Instant now, Consumer<Instant> time) {
        Setting setting = new Setting(members, byCode, LocalDate.ofInstant(now, DemoTeam.ZONE));
        GivenTo keepers = new GivenTo.Holders(Role.KEEPER);
        LocalDate today = setting.today();
        add(setting, "Dry room", weekly(today.minusDays(3)), keepers, "E01 E02 E03 E04 E13");
        add(setting, "Rain room", weekly(today.minusDays(4)), keepers, "E09 E10");
        add(
                setting,
                "Winter room and basking places",
                new DueDays(new Cadence.Weekdays(Set.of(today.getDayOfWeek())), today, Optional.empty()),
                new GivenTo.Person(members.supervisor()),
                "E12 E03 E01");
        add(
                setting,
                "Annex, once a month",
                new DueDays(new Cadence.Every(MONTH), today.plusDays(3), Optional.empty()),
                new GivenTo.Holders(Role.MAINTENANCE),
                "E16 E15");
        add(setting, "Desert house", weekly(today.minusDays(2)), keepers, "E17 E18 E19 E20 E21");
        add(setting, "Forest room", weekly(today.minusDays(2)), keepers, "E22 E23 E24 E25 E26");
        add(setting, "Tortoise barn", weekly(today.minusDays(3)), keepers, "E27 E28 E29 E30");
        add(setting, "Quarantine and public hall", weekly(today.minusDays(2)), keepers, "E35 E36 E37 E38 E39 E40");
        warmCorridor(setting, time);
        nightRoom(setting, keepers, time);
        snakeRoom(setting, keepers, time);
        time.accept(now);
    }

    /** Begun two days before its day, and gone on with since; last week there was nobody. */
    private void warmCorridor(Setting setting, Consumer<Instant> time) {
        LocalDate today = setting.today();
        GivenTo keeper = new GivenTo.Person(setting.members().keeper());
        long round = add(setting, "Warm corridor", weekly(today), keeper, "E05 E06 E07 E08");
        time.accept(early(today.minusDays(6)));
        WalkKey lastWeek = new WalkKey(round, today.minusDays(WEEK));
        keeping.excuse(setting.keeper(), lastWeek, 0, new NotWalked(Excuse.Reason.NO_STAFF, "two of us were ill"));
        time.accept(early(today.minusDays(2)));
        keeping.begin(setting.keeper(), round, today);
    }

    private void snakeRoom(Setting setting, GivenTo keepers, Consumer<Instant> time) {
        LocalDate yesterday = setting.today().minusDays(1);
        long round = add(setting, "Snake room and annex", weekly(yesterday), keepers, "E11 E14 E15 E16");
        time.accept(early(yesterday));
        NotWalked why = new NotWalked(Excuse.Reason.NO_METER, "M1 was away for its calibration");
        keeping.excuse(setting.keeper(), new WalkKey(round, yesterday), 0, why);
    }

    /** Walked every week but one. */
    private void nightRoom(Setting setting, GivenTo keepers, Consumer<Instant> time) {
        LocalDate due = setting.today().minusDays(NIGHT_ROOM_DAYS);
        long round = add(setting, "Night room", weekly(due), keepers, "E31 E32 E33");
        LocalDate missed = due.minusWeeks(MISSED_WEEKS);
        time.accept(early(missed));
        NotWalked why = new NotWalked(Excuse.Reason.NO_STAFF, "an intake of nine animals took the whole day");
        keeping.excuse(setting.keeper(), new WalkKey(round, missed), 0, why);
    }

    private long add(Setting setting, String title, DueDays days, GivenTo givenTo, String codes) {
        List<Long> doors = List.of(codes.split(" ")).stream()
                .map(code -> Given.of(setting.byCode().get(code)))
                .toList();
        return arranging.add(setting.members().siteId(), new PlanDetails(title, days, givenTo, doors));
    }

    /** Due once a week, on a day of late and some weeks before it. */
    private static DueDays weekly(LocalDate oneDay) {
        return new DueDays(new Cadence.Every(WEEK), oneDay.minusWeeks(WEEKS_BEFORE), Optional.empty());
    }

    private static Instant early(LocalDate day) {
        return day.atTime(EARLY).atZone(DemoTeam.ZONE).toInstant();
    }

    private record Setting(DemoTeam.Members members, Map<String, Long> byCode, LocalDate today) {
        SignedIn keeper() {
            return new SignedIn(
                    members.keeper(),
                    "keeper",
                    "Tamsin Vale",
                    members.siteId(),
                    DemoTeam.SITE,
                    DemoTeam.ZONE,
                    Settings.USUAL,
                    Set.of(Role.KEEPER));
        }
    }
}
