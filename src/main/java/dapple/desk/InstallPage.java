package dapple.desk;

import dapple.draft.Deed;
import dapple.draft.DraftFacts;
import dapple.draft.RigDifference;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.prediction.EnclosureScene;
import dapple.rig.FittingFacts;
import dapple.rig.Rig;
import dapple.rig.Rigs;
import dapple.site.Caution;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** Shows what must be done by hand so that a draft hangs, what stands against it, and the form that records it. */
@Component
class InstallPage {
    private final Rigs rigs;
    private final Enclosures enclosures;
    private final Instructions instructions;

    InstallPage(Rigs rigs, Enclosures enclosures, Instructions instructions) {
        this.rigs = rigs;
        this.enclosures = enclosures;
        this.instructions = instructions;
    }

    /** A lamp that the draft hangs, and the code of the enclosure that it hangs in now. */
    public record Elsewhere(String tag, String code) {}

    String show(Desk desk, DraftFacts draft, Model model) {
        Rig installed = desk.installed().rig().rig();
        EnclosureScene under = desk.under(draft.rig());
        RigDifference difference = RigDifference.between(installed, draft.rig(), desk.stock());
        List<Elsewhere> elsewhere = elsewhere(desk, difference);
        model.addAttribute("draft", draft);
        model.addAttribute("enclosure", desk.installed().enclosure());
        model.addAttribute("seen", rigs.lastRecorded(desk.me().siteId(), desk.enclosureId()));
        model.addAttribute(
                "deeds", instructions.of(difference.deeds(), desk.installed().points()));
        model.addAttribute("missing", difference.missing());
        model.addAttribute("elsewhere", elsewhere);
        model.addAttribute("cautions", cautions(installed, under.rig().rig()));
        model.addAttribute(
                "ready",
                draft.isOpen() && !difference.isEmpty() && difference.missing().isEmpty() && elsewhere.isEmpty());
        return "desk/install";
    }

    private List<Elsewhere> elsewhere(Desk desk, RigDifference difference) {
        Map<Long, Long> hanging = rigs.whereLampsHang(desk.me().siteId());
        Map<Long, String> codes = enclosures.all(desk.me().siteId()).stream()
                .collect(Collectors.toMap(EnclosureFacts::id, EnclosureFacts::code));
        return difference.deeds().stream()
                .filter(Deed.Hang.class::isInstance)
                .map(deed -> ((Deed.Hang) deed).lamp())
                .flatMap(lamp -> Optional.ofNullable(hanging.get(lamp.id()))
                        .map(where -> new Elsewhere(lamp.tag(), codes.getOrDefault(where, "")))
                        .stream())
                .toList();
    }

    /** Of all lamps that go, stay and come; who hangs them works at the mains, beside hot lamps, under ultraviolet. */
    private static Set<Caution> cautions(Rig installed, Rig drafted) {
        Set<Caution> cautions = EnumSet.of(Caution.MAINS, Caution.HEAT, Caution.ULTRAVIOLET);
        Stream.of(installed, drafted)
                .flatMap(rig -> rig.fittings().stream())
                .map(FittingFacts::lamp)
                .forEach(lamp -> cautions.addAll(lamp.model().cautions()));
        return cautions;
    }
}
