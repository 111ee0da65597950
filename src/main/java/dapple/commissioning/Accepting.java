package dapple.commissioning;

import dapple.commissioning.RefusedAcceptance.Reason;
import dapple.enclosure.Enclosures;
import dapple.lamp.Lamps;
import dapple.people.SignedIn;
import dapple.rig.CoverStep;
import dapple.rig.RigChangeFacts;
import dapple.rig.RigChanging;
import dapple.rig.RigEntry;
import dapple.rig.RigStep;
import dapple.rig.Rigs;
import dapple.site.ConflictException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Records that a rig is accepted as read: what was measured of its lamps and covers counts from then on. */
@Service
class Accepting {
    private final CommissioningRepository commissionings;
    private final Enclosures enclosures;
    private final Rigs rigs;
    private final RigChanging changing;
    private final Lamps lamps;
    private final Clock clock;

    Accepting(
            CommissioningRepository commissionings,
            Enclosures enclosures,
            Rigs rigs,
            RigChanging changing,
            Lamps lamps,
            Clock clock) {
        this.commissionings = commissionings;
        this.enclosures = enclosures;
        this.rigs = rigs;
        this.changing = changing;
        this.lamps = lamps;
        this.clock = clock;
    }

    /** Why a person may not accept; empty if nothing is against it. */
    static Optional<Reason> against(SignedIn me, Trial trial) {
        if (trial.isFaulty()) {
            return Optional.of(Reason.LAMP_FAULT);
        }
        if (trial.isHarmful()) {
            return Optional.of(Reason.OVER_CEILING);
        }
        if (trial.outcome() != Outcome.AGREES) {
            return Optional.of(Reason.NOT_AGREEING);
        }
        return trial.isReadBy(me.personId()) && !me.settings().onePerson()
                ? Optional.of(Reason.OWN_READINGS)
                : Optional.empty();
    }

    /**
     * Accepts, or finds that the same entry has done so before.
     *
     * @param source of what was measured, in words
     * @throws RefusedAcceptance if who accepts may not, or there is nothing to accept
     * @throws ConflictException if the rig has been changed or accepted since
     */
    @Transactional
    public void accept(Acceptance accepted, String source) {
        Trial trial = accepted.trial();
        long siteId = accepted.me().siteId();
        long enclosureId = trial.scene().enclosure().id();
        enclosures.lock(siteId, enclosureId);
        if (commissionings.enclosureOf(siteId, accepted.key()).isPresent()) {
            return;
        }
        requireFresh(siteId, trial);
        against(accepted.me(), trial).ifPresent(reason -> {
            throw new RefusedAcceptance(reason);
        });
        MeasuredRig measured = MeasuredRig.of(trial, source);
        measure(accepted, measured);
        Optional<Long> result = putCovers(accepted, measured);
        commissionings.saveAndFlush(new Commissioning(accepted, result.orElse(null), clock.instant()));
    }

    private void requireFresh(long siteId, Trial trial) {
        RigChangeFacts change = trial.change();
        boolean isLast = rigs.lastLightChange(siteId, change.enclosureId())
                .filter(last -> last.id() == change.id())
                .isPresent();
        if (!isLast || commissionings.existsBySiteIdAndRigChangeId(siteId, change.id())) {
            throw new ConflictException("the rig has been changed or accepted since");
        }
    }

    private void measure(Acceptance accepted, MeasuredRig measured) {
        Instant at = RigFitting.newest(accepted.trial().taken())
                .orElse(accepted.trial().change().at());
        measured.lamps()
                .sorted(Comparator.comparing(lamp -> lamp.lamp().id()))
                .forEach(lamp -> lamps.measure(
                        accepted.me().siteId(),
                        lamp.lamp().id(),
                        lamp.measured(),
                        at,
                        accepted.me().personId()));
    }

    /** The covers hold as measured from just before the first reading on: they did not change, what is known of them did. */
    private Optional<Long> putCovers(Acceptance accepted, MeasuredRig measured) {
        List<RigStep> steps = measured.rig().covers().stream()
                .flatMap(facts -> measured.cover(facts)
                        .map(cover -> Stream.<RigStep>of(new CoverStep.Replace(facts.id(), cover)))
                        .orElse(Stream.of()))
                .toList();
        return steps.isEmpty() ? Optional.empty() : Optional.of(changing.makeAll(entry(accepted), steps));
    }

    private static RigEntry entry(Acceptance accepted) {
        Trial trial = accepted.trial();
        Instant next = trial.change().at().plus(1, ChronoUnit.MICROS);
        Instant at = trial.taken().stream()
                .map(one -> one.reading().takenAt().minus(1, ChronoUnit.MICROS))
                .min(Comparator.naturalOrder())
                .filter(next::isBefore)
                .orElse(next);
        UUID key = UUID.nameUUIDFromBytes(("covers of " + accepted.key()).getBytes(StandardCharsets.UTF_8));
        return new RigEntry(
                accepted.me().siteId(),
                trial.change().enclosureId(),
                at,
                accepted.reason(),
                accepted.me().personId(),
                key,
                Optional.empty());
    }
}
