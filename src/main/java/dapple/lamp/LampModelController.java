package dapple.lamp;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import java.util.List;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** One lamp model: what it gives, what is known of its spectrum, the lamps of it. */
@Controller
class LampModelController {
    private final Lamps lamps;
    private final SpectrumFiling filing;
    private final OutputReach reach;
    private final Filaments filaments;
    private final PhotometryFiling photometry;
    private final People people;

    LampModelController(
            Lamps lamps,
            SpectrumFiling filing,
            OutputReach reach,
            Filaments filaments,
            PhotometryFiling photometry,
            People people) {
        this.lamps = lamps;
        this.filing = filing;
        this.reach = reach;
        this.filaments = filaments;
        this.photometry = photometry;
        this.people = people;
    }

    @GetMapping("/lamp-models/{modelId}")
    @Allowed(Action.SEE_STOCK)
    String page(@AuthenticationPrincipal SignedIn me, @PathVariable long modelId, Model model) {
        LampModelFacts facts = lamps.model(me.siteId(), modelId);
        Dossier dossier = filing.dossier(me.siteId(), modelId);
        List<LampFacts> ofModel = lamps.ofModel(me.siteId(), facts);
        model.addAttribute("lampModel", facts);
        model.addAttribute("dossier", dossier);
        filing.shown(me.siteId(), dossier).ifPresent(shown -> model.addAttribute("shown", shown));
        model.addAttribute("reach", reach.of(facts));
        filaments.of(facts.lampClass()).ifPresent(shown -> model.addAttribute("filament", shown));
        photometry
                .filed(me.siteId(), modelId)
                .flatMap(PhotometryShown::of)
                .ifPresent(shown -> model.addAttribute("photometry", shown));
        model.addAttribute("lamps", ofModel);
        model.addAttribute("names", people.names(me.siteId()));
        model.addAttribute("missing", OutputsMissing.of(facts));
        return "lamp/model";
    }
}
