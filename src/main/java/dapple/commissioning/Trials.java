package dapple.commissioning;

import dapple.commissioning.Counting.Counted;
import dapple.commissioning.RigFitting.Question;
import dapple.commissioning.StatedRig.Before;
import dapple.enclosure.PointFacts;
import dapple.light.quantity.Interval;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.people.SignedIn;
import dapple.prediction.EnclosureScene;
import dapple.prediction.EnclosureScenes;
import dapple.reading.JudgedReading;
import dapple.reading.Readings;
import dapple.rig.RigChangeFacts;
import dapple.rig.RigChangeKind;
import dapple.rig.RigScene;
import dapple.rig.Rigs;
import dapple.site.Settings;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;

/** Holds the rig of an enclosure against what was read since its light was last changed. */
@Service
public class Trials {
    /** Verdicts looked at; what was read longer ago does not count. */
    private static final int MOST = 500;

    private final EnclosureScenes scenes;
    private final Rigs rigs;
    private final Readings readings;
    private final Meters meters;
    private final Accepted accepted;
    private final RigFitting fitting;
    private final Planning planning;
    private final Clock clock;

    Trials(
            EnclosureScenes scenes,
            Rigs rigs,
            Readings readings,
            Meters meters,
            Accepted accepted,
            RigFitting fitting,
            Planning planning,
            Clock clock) {
        this.scenes = scenes;
        this.rigs = rigs;
        this.readings = readings;
        this.meters = meters;
        this.accepted = accepted;
        this.fitting = fitting;
        this.planning = planning;
        this.clock = clock;
    }

    /** An enclosure, and its trial; none where nothing hangs whose light can be predicted. */
    public record Opened(EnclosureScene scene, Optional<Trial> trial) {}

    /** With those who live there, and the ceilings that they need. */
    public Opened open(SignedIn me, long enclosureId) {
        return open(me, scenes.at(me.siteId(), enclosureId, clock.instant(), Optional.empty(), Optional.empty()));
    }

    /** Whoever lives there: harm is seen as it was judged when it was read. */
    public Opened openWithoutResidents(SignedIn me, long enclosureId) {
        return open(me, scenes.withoutResidents(me.siteId(), enclosureId, clock.instant()));
    }

    private Opened open(SignedIn me, EnclosureScene scene) {
        return new Opened(
                scene,
                lastLightChange(me, scene)
                        .filter(change -> scene.rig().isPredictable())
                        .map(change -> new OfChange(me, scene, change).trial()));
    }

    private Optional<RigChangeFacts> lastLightChange(SignedIn me, EnclosureScene scene) {
        return scene.rig()
                .rig()
                .newest()
                .filter(change -> change.kind() != RigChangeKind.TIMER_CHANGED)
                .or(() -> rigs.lastLightChange(me.siteId(), scene.enclosure().id()));
    }

    /** One change of one rig. */
    private final class OfChange {
        private final SignedIn me;
        private final EnclosureScene scene;
        private final RigChangeFacts change;
        private final Map<Long, PointFacts> points;
        private final Map<Long, MeterFacts> byId;

        OfChange(SignedIn me, EnclosureScene scene, RigChangeFacts change) {
            this.me = me;
            this.scene = scene;
            this.change = change;
            this.points = scene.points().stream().collect(Collectors.toMap(PointFacts::id, Function.identity()));
            this.byId = meters.byId(me.siteId());
        }

        Trial trial() {
            Optional<CommissioningFacts> done = accepted.ofChange(me.siteId(), change.id());
            Optional<RigChangeFacts> previous =
                    change.kind() == RigChangeKind.COVER_CHANGED && done.isEmpty() ? previous() : Optional.empty();
            List<JudgedReading> read = readings.inEnclosureSince(
                    me.siteId(), change.enclosureId(), previous.orElse(change).at(), MOST);
            Counted counted = counting(scene.rig(), change).of(since(read), points, byId);
            Question asked = new Question(
                    scene,
                    counted.taken(),
                    previous.map(earlier -> before(earlier, read)),
                    usual(me.settings()),
                    me.zone());
            return new Trial(
                    scene,
                    change,
                    planning.points(scene, change, counted.taken()),
                    planning.untold(scene),
                    counted.taken(),
                    counted.others(),
                    fitting.of(asked),
                    done);
        }

        private List<JudgedReading> since(List<JudgedReading> read) {
            return read.stream()
                    .filter(one -> !one.takenAt().isBefore(change.at()))
                    .toList();
        }

        private Before before(RigChangeFacts earlier, List<JudgedReading> read) {
            Instant last = change.at().minus(1, ChronoUnit.MICROS);
            RigScene rig = RigScene.of(rigs.in(me.siteId(), scene.enclosure(), last));
            List<JudgedReading> then = read.stream()
                    .filter(one -> one.takenAt().isBefore(change.at()))
                    .toList();
            return new Before(rig, counting(rig, earlier).of(then, points, byId).taken());
        }

        private Optional<RigChangeFacts> previous() {
            return rigs.changes(me.siteId(), change.enclosureId(), 0).stream()
                    .filter(other -> other.at().isBefore(change.at()))
                    .filter(other -> other.kind() != RigChangeKind.TIMER_CHANGED)
                    .findFirst();
        }

        private Counting counting(RigScene rig, RigChangeFacts since) {
            return new Counting(rig, since, me.settings(), me.zone());
        }
    }

    private static Interval usual(Settings settings) {
        return new Interval(settings.lowestRatio(), settings.highestRatio());
    }
}
