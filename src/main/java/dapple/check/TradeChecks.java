package dapple.check;

import dapple.lamp.LampModelFacts;
import dapple.lamp.SpectralHazards;
import dapple.light.zone.Grain;
import dapple.people.SignedIn;
import dapple.prediction.EnclosureScene;
import dapple.prediction.Lately;
import dapple.prediction.LightInside;
import dapple.prediction.SpeciesNeed;
import dapple.rig.Rig;
import dapple.site.Formats;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.stereotype.Service;

/** Checks rigs, installed or only thought of, and remembers what came of it as long as nothing changes. */
@Service
public class TradeChecks {
    private static final int MOST = 200;

    private static final List<Function<Case, Checked>> RULES = List.of(
            ZoneRules::ceiling,
            ZoneRules::shade,
            ZoneRules::patch,
            SpotsRule::of,
            BaskingRules::together,
            BaskingRules::background,
            CompactRule::of,
            LampRules::spectrum,
            LampRules::lasting,
            GearRules::ballast,
            GearRules::dimmer,
            PaneRule::of,
            FireRule::of,
            SeasonRule::of,
            KeeperRule::of);

    private final Lately<Question, Checks> lately = new Lately<>(MOST);
    private final SpectralHazards hazards;
    private final Formats formats;
    private final Clock clock;

    TradeChecks(SpectralHazards hazards, Formats formats, Clock clock) {
        this.hazards = hazards;
        this.formats = formats;
        this.clock = clock;
    }

    /**
     * All that checks follow from, the light being that of the rig.
     *
     * @param scene its record without the rig as the engine sees it, which has no equality
     */
    private record Question(Rig rig, List<Object> scene, Known known) {}

    /** What is known of the lamps of a scene, today. */
    public Known known(SignedIn me, EnclosureScene scene) {
        List<LampModelFacts> models = scene.rig().rig().fittings().stream()
                .map(fitting -> fitting.lamp().model())
                .toList();
        return new Known(
                hazards.actinicPerUvIndex(me.siteId(), models), LocalDate.ofInstant(clock.instant(), me.zone()));
    }

    /**
     * Checks a rig.
     *
     * @param light of the scene
     */
    public Checks of(EnclosureScene scene, LightInside light, Known known) {
        return lately.get(question(scene, known), () -> checked(scene, light, Grain.FINE, known));
    }

    /**
     * The same while the rig is being changed, by what a rough light says of zones, patches and spots. It is not remembered.
     *
     * @param light of the scene, on the rough mesh
     */
    public Checks roughly(EnclosureScene scene, LightInside light, Known known) {
        return checked(scene, light, Grain.ROUGH, known);
    }

    private static Question question(EnclosureScene scene, Known known) {
        Optional<SpeciesNeed> shown = scene.shown();
        return new Question(
                scene.rig().rig(),
                List.of(scene.enclosure(), scene.points(), scene.occupants(), scene.needs(), shown),
                known);
    }

    private Checks checked(EnclosureScene scene, LightInside light, Grain grain, Known known) {
        return checked(new Case(scene, light, grain, RestingLight.of(scene), known, formats));
    }

    static Checks checked(Case seen) {
        return new Checks(RULES.stream().map(rule -> rule.apply(seen)).toList());
    }
}
