package dapple.desk;

import dapple.desk.Answered.Not;
import dapple.desk.Answered.Swap;
import dapple.desk.Answered.Swaps;
import dapple.desk.Offers.Offer;
import dapple.desk.Offers.Posed;
import dapple.desk.Solving.On;
import dapple.draft.DraftLamp;
import dapple.draft.DraftRig;
import dapple.draft.LampPick;
import dapple.light.design.Demand;
import dapple.light.design.LampOption;
import dapple.light.design.Origin;
import dapple.light.design.Pose;
import dapple.light.design.SwapAnswer;
import dapple.light.design.SwapChoice;
import dapple.light.design.SwapTask;
import dapple.prediction.EnclosureScene;
import dapple.rig.Mount;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Which lamp in the place of another changes least. */
@Component
class Swapping {
    private static final int SHOWN = 6;

    private final Solving solving;
    private final Offers offers;
    private final Demanding demanding;

    Swapping(Solving solving, Offers offers, Demanding demanding) {
        this.solving = solving;
        this.offers = offers;
        this.demanding = demanding;
    }

    /** A lamp that may come, as it would be turned. */
    private record Option(Offer offer, Posed posed) {
        String id() {
            return PickText.of(offer.pick()) + posed.turned();
        }

        LampOption option() {
            Origin origin = offer.isBought() ? new Origin.ToBuy() : new Origin.AtHand();
            return new LampOption(
                    id(), List.of(new Pose(posed.lamp())), offer.model().watts(), origin, 1);
        }
    }

    Answered swap(On on, int lamp) {
        EnclosureScene scene = on.scene();
        String tag = Solving.tag(scene, lamp);
        Optional<Mount> mount = on.rig().lamps().get(lamp).hanging().mount();
        if (mount.isEmpty() || Solving.hung(scene, tag).isEmpty()) {
            return new Not("desk.solve.not.lamp", List.of(tag));
        }
        List<Demand> demands = demands(scene, mount.get());
        if (demands.isEmpty()) {
            return new Not("desk.solve.not.demands", List.of());
        }
        Map<String, Option> options = options(on, mount.get());
        List<LampOption> asked = options.values().stream().map(Option::option).toList();
        List<SwapChoice> choices = SwapAnswer.of(new SwapTask(scene.rig().scene(), tag, asked, demands))
                .choices();
        List<Swap> all = choices.stream()
                .limit(SHOWN)
                .map(choice -> swap(
                        choice,
                        Optional.ofNullable(options.get(choice.optionId())).orElseThrow()))
                .toList();
        Optional<Effect> effect =
                all.stream().findFirst().map(best -> solving.effect(on, swapped(on.rig(), lamp, best), best.changed()));
        return new Swaps(tag, lamp, choices.size(), all, effect);
    }

    private List<Demand> demands(EnclosureScene scene, Mount mount) {
        return demanding.of(scene, List.of(mount.centre())).stream()
                .map(Wanted::demand)
                .filter(demand -> scene.rig().quantities().contains(demand.quantity()))
                .toList();
    }

    private Map<String, Option> options(On on, Mount mount) {
        Set<LampPick> drafted = on.rig().lamps().stream().map(DraftLamp::lamp).collect(Collectors.toSet());
        Map<String, Option> options = new TreeMap<>();
        offers.of(on.desk()).stream()
                .filter(offer -> !drafted.contains(offer.pick()))
                .flatMap(offer -> Offers.poses(on.desk(), on.rig(), offer.pick(), mount).stream()
                        .map(posed -> new Option(offer, posed)))
                .forEach(option -> options.put(option.id(), option));
        return options;
    }

    private static Swap swap(SwapChoice choice, Option option) {
        return new Swap(
                PickText.of(option.offer().pick()),
                option.posed().turned(),
                option.offer().name(),
                choice.isMet(),
                choice.demands().stream().filter(demand -> !demand.isMet()).toList(),
                choice.changed(),
                choice.meanFactor());
    }

    private static DraftRig swapped(DraftRig rig, int lamp, Swap swap) {
        Mount before = rig.lamps().get(lamp).hanging().mount().orElseThrow();
        return DraftWith.swap(
                rig,
                lamp,
                PickText.read(swap.pick()).orElseThrow(),
                swap.turned().of(before).orElseThrow());
    }
}
