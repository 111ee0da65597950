package dapple.prediction;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.lamp.LampFacts;
import dapple.lamp.LampModelFacts;
import dapple.lamp.Lamps;
import dapple.rig.Ballast;
import dapple.rig.Circuits;
import dapple.rig.FittingFacts;
import dapple.rig.LampControl;
import dapple.rig.Rig;
import dapple.rig.Rigs;
import dapple.site.Caution;
import dapple.site.SourceMark;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** What forms for rigs offer to choose from, and which cautions stand beside them. */
@Component
class RigChoices {
    private final Rigs rigs;
    private final Lamps lamps;
    private final Circuits circuits;
    private final Enclosures enclosures;

    RigChoices(Rigs rigs, Lamps lamps, Circuits circuits, Enclosures enclosures) {
        this.rigs = rigs;
        this.lamps = lamps;
        this.circuits = circuits;
        this.enclosures = enclosures;
    }

    /**
     * @param chosenLamp the id of the lamp that is chosen, as typed; nothing as long as none is
     */
    void addTo(Model model, Sheet sheet, String chosenLamp) {
        long siteId = sheet.place().me().siteId();
        List<LampFacts> choosable = sheet.task().choosesLamp() ? lamps.inUse(siteId) : List.of();
        if (sheet.task().choosesLamp()) {
            model.addAttribute("lamps", choices(siteId, choosable));
        }
        if (sheet.task() == Task.FIT || sheet.task() == Task.TIMER) {
            model.addAttribute("circuits", circuits.all(siteId));
        }
        model.addAttribute("timerKinds", TimerKind.values());
        model.addAttribute("ballasts", Ballast.values());
        model.addAttribute("controls", LampControl.values());
        List<LampFacts> chosen = choosable.stream()
                .filter(lamp -> String.valueOf(lamp.id()).equals(chosenLamp))
                .toList();
        model.addAttribute("cautions", cautions(sheet.place().rig(), chosen.isEmpty() ? choosable : chosen));
        model.addAttribute("anyLamp", sheet.task().choosesLamp() && chosen.isEmpty());
        model.addAttribute("sourceMarks", sourceMarks());
    }

    /** Those in store first. */
    private List<LampChoice> choices(long siteId, List<LampFacts> choosable) {
        Map<Long, Long> hanging = rigs.whereLampsHang(siteId);
        Map<Long, String> codes =
                enclosures.all(siteId).stream().collect(Collectors.toMap(EnclosureFacts::id, EnclosureFacts::code));
        return choosable.stream()
                .map(lamp -> new LampChoice(
                        lamp.id(),
                        lamp.tag(),
                        lamp.model().name(),
                        codes.getOrDefault(hanging.getOrDefault(lamp.id(), 0L), ""),
                        lamp.model().hasShortWaves()))
                .sorted(Comparator.comparing(LampChoice::hangs))
                .toList();
    }

    /** Who works on a rig works beside all its lamps, and beside the one that comes. */
    private static Set<Caution> cautions(Rig rig, List<LampFacts> choosable) {
        Set<Caution> cautions = EnumSet.of(Caution.MAINS, Caution.HEAT, Caution.ULTRAVIOLET);
        Stream.concat(rig.fittings().stream().map(FittingFacts::lamp), choosable.stream())
                .map(LampFacts::model)
                .map(LampModelFacts::cautions)
                .forEach(cautions::addAll);
        return cautions;
    }

    /** Nothing of a cover is computed from a spectrum. */
    private static List<SourceMark> sourceMarks() {
        return Arrays.stream(SourceMark.values())
                .filter(mark -> mark != SourceMark.COMPUTED)
                .toList();
    }
}
