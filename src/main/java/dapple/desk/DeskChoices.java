package dapple.desk;

import dapple.draft.LampPick;
import dapple.lamp.LampFacts;
import dapple.lamp.LampModelFacts;
import dapple.rig.CircuitFacts;
import dapple.rig.Circuits;
import dapple.rig.Rigs;
import dapple.site.SourceMark;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** What the form of a desk offers to choose from. */
@Component
class DeskChoices {
    private final Rigs rigs;
    private final Circuits circuits;

    DeskChoices(Rigs rigs, Circuits circuits) {
        this.rigs = rigs;
        this.circuits = circuits;
    }

    /**
     * What can be chosen.
     *
     * @param lamps that are free or hang here, and those that are chosen already
     * @param models of lamps still to be bought
     */
    public record Choices(
            List<Choice> lamps, List<Choice> models, List<CircuitFacts> circuits, List<SourceMark> marks) {}

    /** A lamp or model as the value of a field, and its name. */
    public record Choice(String pick, String tag, String model) {}

    Choices of(Desk desk, DeskForm form) {
        Map<Long, Long> hanging = rigs.whereLampsHang(desk.me().siteId());
        Set<String> chosen = form.lamps().stream().map(row -> row.text("pick")).collect(Collectors.toSet());
        return new Choices(
                desk.stock().lamps().values().stream()
                        .filter(lamp -> isThere(lamp, hanging, desk) || chosen.contains(pick(lamp)))
                        .sorted(Comparator.comparing(LampFacts::tag, String.CASE_INSENSITIVE_ORDER)
                                .thenComparing(LampFacts::id))
                        .map(lamp ->
                                new Choice(pick(lamp), lamp.tag(), lamp.model().name()))
                        .toList(),
                desk.stock().models().values().stream()
                        .sorted(Comparator.comparing(LampModelFacts::name, String.CASE_INSENSITIVE_ORDER)
                                .thenComparing(LampModelFacts::id))
                        .map(model -> new Choice(PickText.of(new LampPick.Model(model.id())), "", model.name()))
                        .toList(),
                circuits.all(desk.me().siteId()),
                Arrays.stream(SourceMark.values())
                        .filter(mark -> mark != SourceMark.COMPUTED)
                        .toList());
    }

    private static boolean isThere(LampFacts lamp, Map<Long, Long> hanging, Desk desk) {
        return lamp.isInUse() && hanging.getOrDefault(lamp.id(), desk.enclosureId()) == desk.enclosureId();
    }

    private static String pick(LampFacts lamp) {
        return PickText.of(new LampPick.Stock(lamp.id()));
    }
}
