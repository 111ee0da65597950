package dapple.rig;

import dapple.lamp.LampLeavesUse;
import dapple.lamp.StillFittedException;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Keeps lamps in use while they hang somewhere. */
@Component
class HangsSomewhere {
    private final FittingRepository fittings;

    HangsSomewhere(FittingRepository fittings) {
        this.fittings = fittings;
    }

    @EventListener
    void refuse(LampLeavesUse leaving) {
        if (fittings.open(leaving.lampId()).isPresent()) {
            throw new StillFittedException();
        }
    }
}
