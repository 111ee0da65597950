package dapple.check;

import dapple.people.SignedIn;
import dapple.prediction.BesideForeseen;
import dapple.prediction.EnclosureScene;
import dapple.prediction.EnclosureScenes;
import dapple.prediction.Outlook;
import dapple.rig.Rig;
import java.time.Clock;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Says beside the preview of a change of a rig which checks change. */
@Component
class ChecksForeseen implements BesideForeseen {
    private final EnclosureScenes scenes;
    private final Outlook outlook;
    private final TradeChecks checks;
    private final Clock clock;

    ChecksForeseen(EnclosureScenes scenes, Outlook outlook, TradeChecks checks, Clock clock) {
        this.scenes = scenes;
        this.outlook = outlook;
        this.checks = checks;
        this.clock = clock;
    }

    @Override
    public Map<String, Object> say(SignedIn me, long enclosureId, Rig then) {
        Instant at = clock.instant();
        EnclosureScene now = scenes.at(me.siteId(), enclosureId, at, Optional.empty(), Optional.empty());
        return Map.of("checksChanged", ChangedChecks.between(checked(me, now), checked(me, now.with(then))));
    }

    private Checks checked(SignedIn me, EnclosureScene scene) {
        return checks.of(scene, outlook.of(scene), checks.known(me, scene));
    }
}
