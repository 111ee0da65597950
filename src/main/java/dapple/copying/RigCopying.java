package dapple.copying;

import dapple.copying.RigPlan.Place;
import dapple.draft.DraftLamp;
import dapple.draft.DraftPlace;
import dapple.draft.DraftRig;
import dapple.draft.Drafts;
import dapple.draft.LampPick;
import dapple.lamp.Lamps;
import dapple.lamp.NewLamp;
import dapple.rig.CoverFacts;
import dapple.rig.FirstRig;
import dapple.rig.FittingFacts;
import dapple.rig.FurnitureFacts;
import dapple.rig.Hanging;
import dapple.rig.LampStep;
import dapple.rig.RigChanging;
import dapple.rig.RigEntry;
import dapple.rig.Rigs;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Hangs and puts in a copy what hangs and stands in the original, with lamps of its own, or plans them at its desk. */
@Component
class RigCopying {
    private final RigChanging changing;
    private final Rigs rigs;
    private final Lamps lamps;
    private final Drafts drafts;
    private final Clock clock;

    RigCopying(RigChanging changing, Rigs rigs, Lamps lamps, Drafts drafts, Clock clock) {
        this.changing = changing;
        this.rigs = rigs;
        this.lamps = lamps;
        this.drafts = drafts;
        this.clock = clock;
    }

    RigPlan plan(CopyEntry entry, CopyPlan plan, Original original) {
        List<Place> places = original.rig().fittings().stream()
                .map(fitting -> new Place(fitting.lamp().model().id(), hanging(fitting, plan.roomId())))
                .toList();
        Set<String> tags = lamps.all(entry.siteId()).stream()
                .map(lamp -> Copying.small(lamp.tag()))
                .collect(Collectors.toSet());
        return new RigPlan(entry, plan, original, places, tags);
    }

    /** A circuit of another room does not feed it. */
    private static Hanging hanging(FittingFacts fitting, long roomId) {
        Hanging like = fitting.hanging();
        boolean feeds = fitting.circuit()
                .filter(circuit -> circuit.roomId().map(room -> room == roomId).orElse(true))
                .isPresent();
        return new Hanging(
                like.place(), like.mount(), like.timer(), like.circuitId().filter(circuit -> feeds), like.gear());
    }

    @Transactional(propagation = Propagation.MANDATORY)
    public void hang(RigPlan rig, long enclosureId, String code) {
        boolean hang = rig.plan().lamps().hang();
        FirstRig first = new FirstRig(
                hang ? hung(rig, code) : List.of(),
                rig.original().rig().covers().stream().map(CoverFacts::cover).toList(),
                rig.original().rig().furniture().stream()
                        .map(FurnitureFacts::furniture)
                        .toList());
        if (!first.lamps().isEmpty()
                || !first.covers().isEmpty()
                || !first.furniture().isEmpty()) {
            changing.setUpFirst(entry(rig, enclosureId, code), first);
        }
        if (!hang && !rig.lamps().isEmpty()) {
            draft(rig, enclosureId);
        }
    }

    private List<LampStep.Fit> hung(RigPlan rig, String code) {
        return rig.lamps().stream()
                .map(place -> new LampStep.Fit(lamp(rig, code, place.modelId()), place.hanging()))
                .toList();
    }

    /** A lamp of its own, with a tag that says where it hangs. */
    private long lamp(RigPlan rig, String code, long modelId) {
        int number = 1;
        while (!rig.tags().add(Copying.small(tag(code, number)))) {
            number++;
        }
        NewLamp made =
                new NewLamp(tag(code, number), modelId, Optional.of(rig.plan().burnHours()), Optional.empty(), "");
        return lamps.add(rig.entry().siteId(), made);
    }

    static String tag(String code, int number) {
        return code + "-" + number;
    }

    private static RigEntry entry(RigPlan rig, long enclosureId, String code) {
        CopyEntry entry = rig.entry();
        UUID key = UUID.nameUUIDFromBytes((entry.key() + code).getBytes(StandardCharsets.UTF_8));
        return new RigEntry(
                entry.siteId(),
                enclosureId,
                rig.plan().at(),
                rig.plan().likeness(),
                entry.personId(),
                key,
                Optional.empty());
    }

    private void draft(RigPlan rig, long enclosureId) {
        CopyEntry entry = rig.entry();
        DraftRig standing = DraftRig.of(rigs.at(entry.siteId(), enclosureId, clock.instant()));
        List<DraftLamp> planned = rig.lamps().stream()
                .map(place -> new DraftLamp(Optional.empty(), new LampPick.Model(place.modelId()), place.hanging()))
                .toList();
        drafts.make(
                new DraftPlace(entry.siteId(), enclosureId),
                rig.plan().likeness(),
                new DraftRig(planned, standing.covers(), standing.furniture()),
                entry.personId());
    }
}
