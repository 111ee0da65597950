package dapple.lamp;

import dapple.light.quantity.Quantity;
import dapple.site.NotFoundException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Records what was measured of single lamps. */
@Service
class LampMeasuring {
    private final LampRepository lamps;
    private final OwnOutputRepository outputs;
    private final Clock clock;

    LampMeasuring(LampRepository lamps, OwnOutputRepository outputs, Clock clock) {
        this.lamps = lamps;
        this.outputs = outputs;
        this.clock = clock;
    }

    /** What became of a measurement. */
    sealed interface Outcome {
        /** It is on record, from now or because the same was sent before. */
        record Stored(long id) implements Outcome {}

        /** Something else was measured of the lamp at the same minute. */
        record Contradicts() implements Outcome {}
    }

    /** All that was measured of a lamp, newest first. */
    @Transactional(readOnly = true)
    public List<MeasuredOutput> all(long siteId, long lampId) {
        return outputs.newestFirst(siteId, lampId).stream()
                .map(OwnOutput::facts)
                .toList();
    }

    @Transactional(readOnly = true)
    public MeasuredOutput get(long siteId, long lampId, long outputId) {
        return outputs.find(siteId, lampId, outputId).map(OwnOutput::facts).orElseThrow(NotFoundException::new);
    }

    /** Records a measurement; the newest of each quantity stands. */
    @Transactional
    public Outcome record(long siteId, long lampId, LampOutput output, Instant measuredAt, long personId) {
        hold(siteId, lampId);
        Optional<OwnOutput> same = valid(siteId, lampId, output.quantity()).stream()
                .filter(row -> row.measuredAt().equals(measuredAt))
                .findAny();
        if (same.isPresent()) {
            return same.get().output().equals(output)
                    ? new Outcome.Stored(same.get().id())
                    : new Outcome.Contradicts();
        }
        OwnOutput added = outputs.save(new OwnOutput(siteId, lampId, output, measuredAt, clock.instant(), personId));
        letNewestStand(siteId, lampId, output.quantity());
        return new Outcome.Stored(added.id());
    }

    /** Takes a wrong measurement back; it stays on record with the reason, and the one before it stands again. */
    @Transactional
    public void withdraw(long siteId, long lampId, long outputId, long personId, String reason) {
        hold(siteId, lampId);
        OwnOutput output = outputs.find(siteId, lampId, outputId).orElseThrow(NotFoundException::new);
        if (output.isWithdrawn()) {
            return;
        }
        output.withdraw(clock.instant(), personId, reason);
        letNewestStand(siteId, lampId, output.quantity());
    }

    private void letNewestStand(long siteId, long lampId, Quantity quantity) {
        List<OwnOutput> newestFirst = valid(siteId, lampId, quantity);
        newestFirst.stream().skip(1).forEach(OwnOutput::giveWay);
        outputs.flush();
        newestFirst.stream().limit(1).forEach(OwnOutput::stand);
    }

    private List<OwnOutput> valid(long siteId, long lampId, Quantity quantity) {
        return outputs.newestFirst(siteId, lampId).stream()
                .filter(row -> row.quantity() == quantity && !row.isWithdrawn())
                .toList();
    }

    private void hold(long siteId, long lampId) {
        if (lamps.lockAtSite(siteId, lampId).isEmpty()) {
            throw new NotFoundException();
        }
    }
}
