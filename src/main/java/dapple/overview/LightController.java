package dapple.overview;

import dapple.check.TradeChecks;
import dapple.desk.LightDrawings;
import dapple.desk.Newest;
import dapple.desk.Unpredicted;
import dapple.desk.ZonesShown;
import dapple.light.quantity.Quantity;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.prediction.EnclosureScene;
import dapple.prediction.EnclosureScenes;
import dapple.prediction.LightInside;
import dapple.prediction.Outlook;
import dapple.reading.Readings;
import dapple.rig.Rigs;
import dapple.site.Settings;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The light in one enclosure: drawn and predicted, beside what was measured, and held against what is needed. */
@Controller
@Allowed(Action.SEE_ENCLOSURES)
class LightController {
    private final EnclosureScenes scenes;
    private final Outlook outlook;
    private final Readings readings;
    private final Rigs rigs;
    private final LightDrawings drawings;
    private final TradeChecks checks;
    private final Clock clock;

    LightController(
            EnclosureScenes scenes,
            Outlook outlook,
            Readings readings,
            Rigs rigs,
            LightDrawings drawings,
            TradeChecks checks,
            Clock clock) {
        this.scenes = scenes;
        this.outlook = outlook;
        this.readings = readings;
        this.rigs = rigs;
        this.drawings = drawings;
        this.checks = checks;
        this.clock = clock;
    }

    @GetMapping("/enclosures/{enclosureId}/light")
    String page(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @RequestParam Optional<Long> species,
            @RequestParam Optional<Long> animal,
            Model model) {
        Instant now = clock.instant();
        EnclosureScene scene = scenes.at(me.siteId(), enclosureId, now, species, animal);
        LightInside light = outlook.of(scene);
        ReadSince read = new ReadSince(
                readings.newestIn(me.siteId(), enclosureId),
                scene,
                rigs.lastLightChange(me.siteId(), scene.rig().rig()));
        Newest newest = read.newest();
        Settings settings = me.settings();
        model.addAttribute("scene", scene);
        model.addAttribute("light", light);
        model.addAttribute("why", Unpredicted.of(scene));
        model.addAttribute("basking", basking(scene, light));
        model.addAttribute("drawings", drawings.of(scene, light, newest));
        model.addAttribute("found", ZonesShown.of(scene, light));
        model.addAttribute("compared", Compared.rows(scene, light, read, settings));
        model.addAttribute("settings", settings);
        model.addAttribute("fractions", FractionRow.all(scene, light, read));
        model.addAttribute("checks", checks.of(scene, light, checks.known(me, scene)));
        model.addAttribute("mixed", MixedExhibit.of(scene, newest));
        return "overview/light";
    }

    private static Optional<AtBasking> basking(EnclosureScene scene, LightInside light) {
        return scene.baskingPoint()
                .flatMap(point -> light.at(point, Quantity.UV_INDEX).map(predicted -> new AtBasking(point, predicted)));
    }
}
