package dapple.desk;

import dapple.draft.DraftLamp;
import dapple.draft.DraftRig;
import dapple.draft.LampPick;
import dapple.lamp.LampFacts;
import dapple.lamp.LampModelFacts;
import dapple.lamp.LampOutput;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.rig.Hanging;
import dapple.rig.Mount;
import dapple.rig.Rigs;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** The lamps that may hang in an enclosure: those in stock and those that hang there, and models still to be bought. */
@Component
class Offers {
    private final Rigs rigs;

    Offers(Rigs rigs) {
        this.rigs = rigs;
    }

    /**
     * A lamp that may hang.
     *
     * @param name its tag and model, or its model alone
     */
    record Offer(LampPick pick, String name, LampModelFacts model) {
        boolean isBought() {
            return pick instanceof LampPick.Model;
        }
    }

    /** Lamps in use that are free or hang here. */
    List<LampFacts> lamps(Desk desk) {
        Map<Long, Long> hanging = rigs.whereLampsHang(desk.me().siteId());
        return desk.stock().lamps().values().stream()
                .filter(LampFacts::isInUse)
                .filter(lamp -> hanging.getOrDefault(lamp.id(), desk.enclosureId()) == desk.enclosureId())
                .sorted(Comparator.comparing(LampFacts::tag, String.CASE_INSENSITIVE_ORDER)
                        .thenComparing(LampFacts::id))
                .toList();
    }

    /**
     * All that may be hung without harm that can be known: not a lamp whose spectrum is shorter than the sun's, nor an
     * ultraviolet lamp of which nobody knows how much it gives.
     */
    List<Offer> of(Desk desk) {
        List<Offer> offers = new ArrayList<>();
        lamps(desk).stream()
                .filter(lamp -> isKnown(lamp.model(), lamp.outputs()))
                .forEach(lamp -> offers.add(new Offer(
                        new LampPick.Stock(lamp.id()),
                        lamp.tag() + ", " + lamp.model().name(),
                        lamp.model())));
        desk.stock().models().values().stream()
                .filter(model -> isKnown(model, model.outputs()))
                .sorted(Comparator.comparing(LampModelFacts::name, String.CASE_INSENSITIVE_ORDER)
                        .thenComparing(LampModelFacts::id))
                .forEach(model -> offers.add(new Offer(new LampPick.Model(model.id()), model.name(), model)));
        return offers;
    }

    private static boolean isKnown(LampModelFacts model, List<LampOutput> outputs) {
        boolean givesUltraviolet = outputs.stream().anyMatch(output -> output.quantity() == Quantity.UV_INDEX);
        return !model.hasShortWaves() && (givesUltraviolet || !model.lampClass().emitsUltraviolet());
    }

    /** A lamp hung under the covers of a draft, as the engine sees it; empty where it cannot. */
    static Optional<Lamp> hung(Desk desk, DraftRig draft, LampPick pick, Mount mount) {
        Hanging hanging = new Hanging("", Optional.of(mount), Optional.empty(), Optional.empty());
        DraftRig alone =
                new DraftRig(List.of(new DraftLamp(Optional.empty(), pick, hanging)), draft.covers(), List.of());
        return desk.under(alone).rig().scene().lamps().stream().findFirst();
    }

    /** The same in each way that it may be turned: as given, else level along the front or from front to back. */
    static List<Posed> poses(Desk desk, DraftRig draft, LampPick pick, Mount mount) {
        List<Posed> given = posed(desk, draft, pick, mount, Turned.AS_BEFORE);
        return given.isEmpty()
                ? Stream.of(Turned.TO_THE_RIGHT, Turned.TO_THE_BACK)
                        .flatMap(turned -> posed(desk, draft, pick, mount, turned).stream())
                        .toList()
                : given;
    }

    private static List<Posed> posed(Desk desk, DraftRig draft, LampPick pick, Mount mount, Turned turned) {
        return turned.of(mount).flatMap(way -> hung(desk, draft, pick, way)).stream()
                .map(lamp -> new Posed(turned, lamp))
                .toList();
    }

    /** A lamp as it may be turned. */
    record Posed(Turned turned, Lamp lamp) {}
}
