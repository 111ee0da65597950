package dapple.desk;

import dapple.desk.Offers.Offer;
import dapple.desk.Offers.Posed;
import dapple.draft.DraftCover;
import dapple.draft.DraftLamp;
import dapple.draft.DraftRig;
import dapple.draft.LampPick;
import dapple.enclosure.InnerSize;
import dapple.enclosure.Position;
import dapple.light.cover.Filter;
import dapple.light.design.CoverChoice;
import dapple.light.design.Demand;
import dapple.light.design.Frame;
import dapple.light.design.LampOption;
import dapple.light.design.Origin;
import dapple.light.design.Pose;
import dapple.light.design.ProposalTask;
import dapple.light.design.Way;
import dapple.light.field.Facing;
import dapple.light.field.Receiver;
import dapple.light.geometry.Vec;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.prediction.EnclosureScene;
import dapple.rig.FittingFacts;
import dapple.rig.Mount;
import dapple.rig.RigScene;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

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
    private static final int MOST_LAYERED = 2;
    private static final double APART_METRES = 0.1;
    private static final int WAY_STEPS = 8;
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
        HangingPlaces places = new HangingPlaces(scene, size);
        int poses = options.stream().mapToInt(option -> option.poses().size()).sum();
        int lamps = Math.min(MOST_LAMPS_EVER, Math.max(MOST_LAMPS, hung.size()));
        return new ProposalTask(
                new Frame(RigScene.ACCURACY, covers(), scene.rig().scene().solids(), Optional.of(places.room())),
                options,
                places.of(middles(), Math.max(1, MOST_CANDIDATES / Math.max(1, poses))),
                demands,
                way(),
                lamps,
                APART_METRES);
    }

    /** The middles of the lamps of the draft, and of those that hang. */
    List<Vec> middles() {
        Set<Vec> middles = new LinkedHashSet<>();
        hung.values().forEach(lamp -> lamp.hanging().mount().ifPresent(mount -> middles.add(mount.centre())));
        draft.lamps().forEach(lamp -> lamp.hanging().mount().ifPresent(mount -> middles.add(mount.centre())));
        return List.copyOf(middles);
    }

    /** A mesh may get one layer more or less; none is taken away, since it may keep animals in. */
    private List<CoverChoice> covers() {
        List<CoverChoice> choices = new ArrayList<>();
        List<Filter> filters = scene.rig().scene().filters();
        List<DraftCover> seen = draft.covers().stream()
                .filter(cover -> cover.cover().heightMetres().isPresent())
                .toList();
        long layered = 0;
        for (int number = 0; number < seen.size(); number++) {
            String id = String.valueOf(draft.covers().indexOf(seen.get(number)));
            boolean isLayered = seen.get(number).cover().material().isMesh() && layered < MOST_LAYERED;
            layered += isLayered ? 1 : 0;
            choices.add(
                    isLayered
                            ? new CoverChoice(id, filters.get(number), layers(seen.get(number)))
                            : CoverChoice.staying(id, filters.get(number)));
        }
        return choices;
    }

    private static List<Integer> layers(DraftCover cover) {
        int now = cover.cover().layers();
        return IntStream.rangeClosed(Math.max(1, now - 1), Math.min(100, now + 1))
                .boxed()
                .toList();
    }

    /** From the basking point straight to the shade point, as far as nothing stands there. */
    private Optional<Way> way() {
        Optional<Vec> shade = scene.points().stream()
                .filter(point -> point.role() == PointRole.SHADE)
                .flatMap(point -> point.position().stream())
                .map(Search::place)
                .findFirst();
        return scene.baskingPoint()
                .flatMap(point -> point.position())
                .map(Search::place)
                .flatMap(from -> shade.map(to -> steps(from, to)))
                .filter(receivers -> receivers.size() >= 3)
                .map(receivers -> new Way(Quantity.UV_INDEX, receivers));
    }

    private List<Receiver> steps(Vec from, Vec to) {
        return IntStream.rangeClosed(0, WAY_STEPS)
                .mapToObj(step -> from.plus(to.minus(from).times((double) step / WAY_STEPS)))
                .filter(place -> scene.rig().scene().solidAround(place) < 0)
                .map(place -> new Receiver(place, new Facing.Maximum()))
                .toList();
    }

    private static Vec place(Position at) {
        return new Vec(at.xMetres(), at.yMetres(), at.zMetres());
    }
}
