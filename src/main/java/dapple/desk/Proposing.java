package dapple.desk;

import dapple.check.TradeChecks;
import dapple.desk.Effect.Lit;
import dapple.desk.Proposed.Shown;
import dapple.draft.DraftFacts;
import dapple.draft.DraftLamp;
import dapple.draft.DraftRig;
import dapple.draft.RigDifference;
import dapple.enclosure.InnerSize;
import dapple.enclosure.PointFacts;
import dapple.light.design.Demand;
import dapple.light.design.PlannedRig;
import dapple.light.design.Proposal;
import dapple.light.design.ProposalAnswer;
import dapple.light.design.Proposer;
import dapple.light.quantity.Quantity;
import dapple.light.survey.Crew;
import dapple.prediction.EnclosureScene;
import dapple.prediction.LightInside;
import dapple.site.Caution;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleConsumer;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Looks for rigs that give everybody in an enclosure what they need. */
@Component
class Proposing {
    /** The share of the work that is the search; the rest is to say what each rig does. */
    private static final double SEARCH = 0.8;

    private final Offers offers;
    private final Demanding demanding;
    private final Looking looking;
    private final TradeChecks checks;
    private final Instructions instructions;
    private final NewTimers timers;
    private final MessageSource messages;

    Proposing(
            Offers offers,
            Demanding demanding,
            Looking looking,
            TradeChecks checks,
            Instructions instructions,
            NewTimers timers,
            MessageSource messages) {
        this.offers = offers;
        this.demanding = demanding;
        this.looking = looking;
        this.checks = checks;
        this.instructions = instructions;
        this.timers = timers;
        this.messages = messages;
    }

    /**
     * Rigs for an enclosure, with cover and furniture as a draft has them.
     *
     * @param progress hears the share that is done
     */
    Proposed propose(Desk desk, DraftFacts draft, Crew crew, DoubleConsumer progress) {
        Optional<InnerSize> size = desk.installed().size();
        boolean isPlaced =
                desk.installed().points().stream().map(PointFacts::position).anyMatch(Optional::isPresent);
        if (size.isEmpty() || !isPlaced) {
            return new Proposed.Not("desk.propose.not.coordinates");
        }
        if (draft.rig().covers().stream()
                .anyMatch(cover -> cover.cover().heightMetres().isEmpty())) {
            return new Proposed.Not("desk.propose.not.cover");
        }
        Search search = new Search(desk, draft.rig(), size.get()).with(offers.of(desk));
        Set<Quantity> given = search.given();
        List<Demand> all = demanding.of(search.scene(), search.spots()).stream()
                .map(Wanted::demand)
                .toList();
        List<Demand> weighed =
                all.stream().filter(demand -> given.contains(demand.quantity())).toList();
        if (weighed.isEmpty()) {
            return new Proposed.Not(search.isEmpty() ? "desk.propose.not.lamps" : "desk.propose.not.demands");
        }
        ProposalAnswer answer = Proposer.propose(search.task(weighed), crew, share -> progress.accept(SEARCH * share));
        return new Telling(desk, draft.rig(), search, all, progress).tell(answer);
    }

    /** Says what came of one search. */
    private final class Telling {
        private final Desk desk;
        private final Search search;
        private final List<Demand> all;
        private final DoubleConsumer progress;
        private final PlannedDraft drafting;
        private final Lit installed;

        Telling(Desk desk, DraftRig draft, Search search, List<Demand> all, DoubleConsumer progress) {
            this.desk = desk;
            this.search = search;
            this.all = all;
            this.progress = progress;
            this.drafting = new PlannedDraft(search, draft, say("desk.place.proposed"));
            this.installed = lit(desk.installed());
        }

        Proposed tell(ProposalAnswer answer) {
            Set<Quantity> given = search.given();
            List<String> weighed = names(given, true);
            List<String> unweighed = names(given, false);
            List<String> unknown = desk.installed().rig().rig().fittings().stream()
                    .filter(fitting -> search.untouched().stream()
                            .map(DraftLamp::fittingId)
                            .anyMatch(Optional.of(fitting.id())::equals))
                    .map(fitting -> fitting.lamp().tag())
                    .toList();
            if (answer instanceof ProposalAnswer.Found found) {
                List<Shown> rigs = found.proposals().stream().map(this::shown).toList();
                return new Proposed.Found(rigs, found.isExhaustive(), weighed, unweighed, unknown);
            }
            ProposalAnswer.NoneFound none = (ProposalAnswer.NoneFound) answer;
            return new Proposed.None(
                    shown(none.nearest(), Optional.empty()),
                    none.bindings(),
                    none.isExhaustive(),
                    weighed,
                    unweighed,
                    unknown);
        }

        private List<String> names(Set<Quantity> given, boolean areGiven) {
            return all.stream()
                    .filter(demand -> given.contains(demand.quantity()) == areGiven)
                    .map(Demand::name)
                    .toList();
        }

        private Shown shown(Proposal proposal) {
            return shown(proposal.rig(), Optional.of(proposal));
        }

        private Shown shown(PlannedRig planned, Optional<Proposal> proposal) {
            NewTimers.Timed timed = timers.of(desk, drafting.of(planned));
            DraftRig rig = timed.rig();
            EnclosureScene scene = desk.under(rig);
            Lit lit = lit(scene);
            progress.accept(1 - (1 - SEARCH) / 2);
            RigDifference difference =
                    RigDifference.between(desk.installed().rig().rig(), rig, desk.stock());
            return new Shown(
                    proposal.map(Proposal::merit),
                    proposal.filter(Proposal::isBest).isPresent(),
                    proposal.map(Proposal::bestIn).orElse(Set.of()),
                    rig,
                    planned.changes(),
                    planned.unevenness(),
                    planned.unmet(),
                    Power.of(scene.rig().rig()),
                    checks.of(scene, lit.light(), checks.known(desk.me(), scene)),
                    Effect.between(installed, lit, quantities()),
                    instructions.of(difference.deeds(), scene.points()),
                    timed.told(),
                    cautions(scene));
        }

        /** In an order that stays: of all lamps that would hang, bought ones too, and of whoever hangs them. */
        private static Set<Caution> cautions(EnclosureScene scene) {
            Set<Caution> cautions = EnumSet.of(Caution.ULTRAVIOLET, Caution.HEAT, Caution.MAINS);
            scene.rig()
                    .rig()
                    .fittings()
                    .forEach(fitting -> cautions.addAll(fitting.lamp().model().cautions()));
            return cautions;
        }

        private Set<Quantity> quantities() {
            return all.stream()
                    .map(Demand::quantity)
                    .filter(search.given()::contains)
                    .collect(Collectors.toSet());
        }

        private Lit lit(EnclosureScene scene) {
            LightInside light = looking.light(scene);
            return new Lit(scene, light);
        }
    }

    private String say(String key) {
        return messages.getMessage(key, new Object[0], Locale.UK);
    }
}
