package dapple.prediction;

import static dapple.prediction.SceneExamples.BASKING;
import static dapple.prediction.SceneExamples.scene;
import static dapple.rig.RigExamples.above;
import static dapple.rig.RigExamples.fitting;
import static dapple.rig.RigExamples.rig;
import static dapple.rig.RigExamples.spot;
import static org.assertj.core.api.Assertions.assertThat;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.ReachKind;
import dapple.enclosure.StatedReach;
import dapple.light.survey.Needs;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class EnclosureSceneTest {
    @Test
    void zonesAreThoseOfTheStatedReach() {
        StatedReach ground = new StatedReach(ReachKind.GROUND, Optional.of(0.25));
        assertThat(stating(ground).zones().flatMap(Needs::reachMetres)).contains(0.25);
    }

    @Test
    void whereEverythingIsReachedNoHeightBoundsThem() {
        StatedReach climbs = new StatedReach(ReachKind.CLIMBS, Optional.empty());
        assertThat(stating(climbs).zones()).isPresent();
        assertThat(stating(climbs).zones().flatMap(Needs::reachMetres)).isEmpty();
    }

    private static EnclosureScene stating(StatedReach reach) {
        EnclosureScene scene = scene(rig(fitting(spot("L1"), Optional.of(above(0.6, 0.3, 0.9)))), BASKING);
        EnclosureFacts facts = scene.enclosure();
        return new EnclosureScene(
                new EnclosureFacts(
                        facts.id(),
                        facts.code(),
                        facts.roomId(),
                        facts.room(),
                        facts.size(),
                        facts.retiredAt(),
                        Optional.empty(),
                        Optional.of(reach)),
                scene.rig(),
                scene.points(),
                scene.occupants(),
                scene.needs(),
                scene.shown());
    }
}
