package dapple.walk;

import dapple.keeper.KeptDoses;
import dapple.keeper.Taken;
import dapple.lamp.LampModelFacts;
import dapple.lamp.SpectralHazards;
import dapple.light.dose.KeeperDose;
import dapple.light.quantity.Quantity;
import dapple.people.SignedIn;
import dapple.reading.ReadingView;
import dapple.rig.Rig;
import dapple.rig.Rigs;
import dapple.site.Given;
import java.time.Instant;
import java.util.List;
import org.springframework.stereotype.Component;

/** Keeps what fell on who read a meter, where the site has settled so; elsewhere it is forgotten. */
@Component
class ReadersDose {
    /** Who stood longer at a point has put the phone away: as on the phone. */
    private static final double LONGEST_SECONDS = 600;

    private static final double SECONDS_PER_MINUTE = 60;

    private final KeptDoses doses;
    private final Rigs rigs;
    private final SpectralHazards hazards;

    ReadersDose(KeptDoses doses, Rigs rigs, SpectralHazards hazards) {
        this.doses = doses;
        this.rigs = rigs;
        this.hazards = hazards;
    }

    void keep(SignedIn me, TypedEntry typed, ReadingView stored) {
        if (!me.settings().keepsDoses() || stored.quantity() != Quantity.UV_INDEX || typed.secondsAtPoint() == null) {
            return;
        }
        Instant at = stored.reading().takenAt();
        double seconds = Math.min(Math.max(0, typed.secondsAtPoint()), LONGEST_SECONDS);
        double uvIndex = Math.max(0, stored.reading().amount());
        KeeperDose dose = KeeperDose.NONE.with(uvIndex, seconds / SECONDS_PER_MINUTE, hazard(me, typed, at));
        doses.keep(new Taken(me.siteId(), me.personId(), Given.of(typed.key()), at), dose);
    }

    private KeeperDose.Hazard hazard(SignedIn me, TypedEntry typed, Instant at) {
        Rig rig = rigs.at(me.siteId(), Given.of(typed.enclosureId()), at);
        List<LampModelFacts> models =
                rig.fittings().stream().map(fitting -> fitting.lamp().model()).toList();
        return LampsBurning.hazard(models, hazards.ofModels(me.siteId(), models));
    }
}
