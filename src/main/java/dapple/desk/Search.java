package dapple.desk;

import dapple.check.FireClearance;
import dapple.desk.Offers.Offer;
import dapple.desk.Offers.Posed;
import dapple.draft.DraftLamp;
import dapple.draft.DraftRig;
import dapple.draft.LampPick;
import dapple.enclosure.InnerSize;
import dapple.lamp.LampFacts;
import dapple.light.design.Demand;
import dapple.light.design.HangingPlace;
import dapple.light.design.LampOption;
import dapple.light.design.Origin;
import dapple.light.design.Pose;
import dapple.light.design.ProposalTask;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.prediction.EnclosureScene;
import dapple.rig.FittingFacts;
import dapple.rig.Hanging;
import dapple.rig.Mount;
import dapple.rig.Span;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What rigs are looked for with: cover and furniture of a draft, the lamps that hang now, those in stock and those that could
 * be bought. Its bounds are ours: they keep a search within seconds.
 */
final class Search {
    /** Lamps by pose and place. */
    private static final int MOST_CANDIDATES = 420;

    private static final int MOST_OFFERS = 20;
    private static final int MOST_LAMPS = 3;
    private static final int MOST_LAMPS_EVER = 4;
    private static final int BOUGHT_ALIKE = 2;
    private static final double APART_METRES = 0.1;
    private static final Mount DOWN = new Mount(new Vec(0, 0, 0), new Vec(0, 0, -1), Optional.empty());

    private final Desk desk;
    private final DraftRig draft;
    private final EnclosureScene scene;
    private final InnerSize size;
    private final Map<String, DraftLamp> hung = new LinkedHashMap<>();
    private final Map<String, LampPick> offered = new LinkedHashMap<>();
    private final List<DraftLamp> untouched = new ArrayList<>();
    private final List<LampOption> options = new ArrayList<>();

    Search(Desk desk, DraftRig draft, InnerSize size) {
        this.desk = desk;
        this.draft = draft;
        this.scene = desk.under(draft);
        this.size = size;
    }

    EnclosureScene scene() {
        return scene;
    }

    /** Lamps that hang and stay, since their light is not known. */
    List<DraftLamp> untouched() {
        return List.copyOf(untouched);
    }

    /** The lamp that hangs under the name of an option; empty where it does not. */
    Optional<DraftLamp> hung(String optionId) {
        return Optional.ofNullable(hung.get(optionId));
    }

    LampPick pick(String optionId) {
        return hung(optionId)
                .map(DraftLamp::lamp)
                .orElseGet(() -> Optional.ofNullable(offered.get(optionId)).orElseThrow());
    }

    /** The quantities of which some lamp gives something that is known. */
    Set<Quantity> given() {
        Set<Quantity> given = EnumSet.noneOf(Quantity.class);
        options.stream()
                .flatMap(option -> lamps(option).stream())
                .flatMap(lamp -> lamp.outputs().stream())
                .map(Output::quantity)
                .forEach(given::add);
        return given;
    }

    private static List<Lamp> lamps(LampOption option) {
        return option.origin() instanceof Origin.Hung kept
                ? List.of(kept.lamp())
                : option.poses().stream().map(Pose::lamp).toList();
    }

    /** Takes in the lamps that hang, then those of the stock, then models: each of the first kinds that are free. */
    Search with(List<Offer> offers) {
        desk.installed().rig().rig().fittings().forEach(this::addHung);
        offers.stream()
                .filter(offer ->
                        hung.values().stream().noneMatch(lamp -> lamp.lamp().equals(offer.pick())))
                .limit(MOST_OFFERS)
                .forEach(this::add);
        return this;
    }

    private void addHung(FittingFacts fitting) {
        LampPick pick = new LampPick.Stock(fitting.lamp().id());
        DraftLamp lamp = new DraftLamp(Optional.of(fitting.id()), pick, fitting.hanging());
        Optional<Lamp> seen = fitting.hanging().mount().flatMap(mount -> Offers.hung(desk, draft, pick, mount));
        if (seen.isEmpty()) {
            untouched.add(lamp);
            return;
        }
        String id = PickText.of(pick);
        hung.put(id, lamp);
        options.add(new LampOption(
                id,
                List.of(new Pose(seen.get())),
                fitting.lamp().model().watts(),
                new Origin.Hung(seen.get(), Origin.Freedom.MAY_GO),
                1));
    }

    private void add(Offer offer) {
        List<Pose> poses = Offers.poses(desk, draft, offer.pick(), DOWN).stream()
                .map(Posed::lamp)
                .map(Pose::new)
                .toList();
        if (!poses.isEmpty()) {
            String id = PickText.of(offer.pick());
            offered.put(id, offer.pick());
            Origin origin = offer.isBought() ? new Origin.ToBuy() : new Origin.AtHand();
            options.add(new LampOption(id, poses, offer.model().watts(), origin, offer.isBought() ? BOUGHT_ALIKE : 1));
        }
    }

    boolean isEmpty() {
        return options.isEmpty();
    }

    ProposalTask task(List<Demand> demands) {
        HangingPlaces hanging = new HangingPlaces(scene, size);
        SearchRoom room = new SearchRoom(scene, draft);
        int poses = options.stream().mapToInt(option -> option.poses().size()).sum();
        int lamps = Math.min(MOST_LAMPS_EVER, Math.max(MOST_LAMPS, hung.size()));
        List<HangingPlace> places = hanging.of(middles(), Math.max(1, MOST_CANDIDATES / Math.max(1, poses)));
        return new ProposalTask(
                room.frame(hanging.room()),
                options.stream().map(option -> safe(option, places)).toList(),
                places,
                demands,
                room.way(),
                lamps,
                APART_METRES);
    }

    /** Where lamps may hang, and below which the ceiling is looked at. */
    List<Vec> spots() {
        return new HangingPlaces(scene, size).spots(middles());
    }

    /** Closed to where it would be too near to what burns. */
    private LampOption safe(LampOption option, List<HangingPlace> places) {
        LampFacts lamp = desk.under(alone(option)).rig().rig().fittings().get(0).lamp();
        Set<String> closed = places.stream()
                .filter(place -> !option.poses().stream().allMatch(pose -> isSafe(lamp, pose.at(place.at()))))
                .map(HangingPlace::id)
                .collect(Collectors.toSet());
        return new LampOption(
                option.id(), option.poses(), option.powerWatts(), option.origin(), option.count(), closed);
    }

    private DraftRig alone(LampOption option) {
        Hanging hanging = new Hanging("", Optional.of(DOWN), Optional.empty(), Optional.empty());
        return new DraftRig(List.of(new DraftLamp(Optional.empty(), pick(option.id()), hanging)), List.of(), List.of());
    }

    private boolean isSafe(LampFacts lamp, Lamp hung) {
        Hanging hanging = new Hanging("", Optional.of(LampMount.of(hung)), Optional.empty(), Optional.empty());
        FittingFacts fitting =
                new FittingFacts(0, desk.enclosureId(), lamp, hanging, Optional.empty(), Span.thought(desk.now()));
        return FireClearance.isKept(fitting, scene.rig().rig());
    }

    /** The middles of the lamps of the draft, and of those that hang. */
    List<Vec> middles() {
        Set<Vec> middles = new LinkedHashSet<>();
        hung.values().forEach(lamp -> lamp.hanging().mount().ifPresent(mount -> middles.add(mount.centre())));
        draft.lamps().forEach(lamp -> lamp.hanging().mount().ifPresent(mount -> middles.add(mount.centre())));
        return List.copyOf(middles);
    }
}
