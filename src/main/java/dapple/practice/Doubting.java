package dapple.practice;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds from when to when a meter's readings are in doubt: since its last good check before a drop, until a good check
 * clears or a bad one condemns them (the day on which it was calibrated counts as a good check before, and as an end, but
 * clears nothing: it may have been adjusted).
 */
final class Doubting {
    private final List<Doubt> found = new ArrayList<>();
    private Optional<Instant> trusted = Optional.empty();
    private Optional<Doubt> open = Optional.empty();
    private boolean hasLamp;
    private boolean hadLamp;

    private Doubting() {}

    /** By signs in the order in which they came. */
    static List<Doubt> of(List<Sign> signs) {
        Doubting doubting = new Doubting();
        signs.forEach(doubting::take);
        doubting.open.ifPresent(doubting.found::add);
        return List.copyOf(doubting.found);
    }

    private void take(Sign sign) {
        if (sign.kind() == Sign.Kind.LAMP_NAMED || sign.kind() == Sign.Kind.LAMP_ENDED) {
            hasLamp = sign.kind() == Sign.Kind.LAMP_NAMED;
        } else if (open.isPresent()) {
            goOn(open.get(), sign);
        } else if (sign.kind() == Sign.Kind.DROPPED) {
            hadLamp = hasLamp;
            open = Optional.of(new Doubt(sign.at(), trusted, Optional.empty(), false));
        } else if (sign.kind().isTrust()) {
            trusted = Optional.of(sign.at());
        }
    }

    private void goOn(Doubt doubt, Sign sign) {
        if (sign.kind().isBad()) {
            open = Optional.of(new Doubt(doubt.droppedAt(), doubt.from(), Optional.empty(), true));
        } else if (sign.kind() == Sign.Kind.CALIBRATED) {
            end(doubt, sign.at());
        } else if (sign.clears(doubt.droppedAt(), hadLamp)) {
            clear(doubt, sign.at());
        }
    }

    /** What a failed check has condemned stays so; the meter alone is good again. */
    private void clear(Doubt doubt, Instant at) {
        if (doubt.isCondemned()) {
            end(doubt, at);
            return;
        }
        trusted = Optional.of(at);
        open = Optional.empty();
    }

    private void end(Doubt doubt, Instant at) {
        found.add(new Doubt(doubt.droppedAt(), doubt.from(), Optional.of(at), doubt.isCondemned()));
        trusted = Optional.of(at);
        open = Optional.empty();
    }
}
