package dapple.commissioning;

import dapple.commissioning.FittedQuantity.OfCover;
import dapple.commissioning.FittedQuantity.OfLamp;
import dapple.lamp.LampFacts;
import dapple.lamp.LampOutput;
import dapple.light.quantity.Quantity;
import dapple.prediction.EnclosureScene;
import dapple.rig.Cover;
import dapple.rig.CoverFacts;
import dapple.rig.CoverMaterial;
import dapple.rig.CoverTransmittance;
import dapple.rig.FittingFacts;
import dapple.rig.Provenance;
import dapple.rig.Rig;
import dapple.rig.RigScene;
import dapple.site.SourceMark;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A rig with what was measured of it in place of what was stated.
 *
 * @param fits what the readings say
 * @param source of what was measured, in words
 */
record MeasuredRig(Rig rig, List<FittedQuantity> fits, String source) {
    /** Of a weave what passes straight through is kept where nothing was measured. */
    private static final String STRAIGHT = "its weave, straight through";

    static MeasuredRig of(Trial trial, String source) {
        return new MeasuredRig(trial.scene().rig().rig(), trial.fits(), source);
    }

    EnclosureScene in(EnclosureScene scene) {
        return scene.with(new Rig(
                rig.enclosureId(),
                rig.newest(),
                rig.fittings().stream().map(this::fitting).toList(),
                rig.covers().stream()
                        .map(facts -> new CoverFacts(
                                facts.id(), facts.enclosureId(), cover(facts).orElse(facts.cover()), facts.span()))
                        .toList(),
                rig.furniture()));
    }

    private FittingFacts fitting(FittingFacts facts) {
        return new FittingFacts(
                facts.id(), facts.enclosureId(), lamp(facts.lamp()), facts.hanging(), facts.circuit(), facts.span());
    }

    private LampFacts lamp(LampFacts lamp) {
        List<LampOutput> told = told(lamp.id()).map(OfLamp::measured).toList();
        Stream<LampOutput> kept = lamp.measured().stream()
                .filter(output -> told.stream().noneMatch(measured -> measured.quantity() == output.quantity()));
        return new LampFacts(
                lamp.id(),
                lamp.tag(),
                lamp.model(),
                lamp.burnHoursAtEntry(),
                lamp.boughtOn(),
                Stream.concat(kept, told.stream()).toList(),
                lamp.retiredAt());
    }

    private Stream<OfLamp> told(long lampId) {
        return lamps().filter(lamp -> lamp.lamp().id() == lampId);
    }

    /** The lamps of which the readings say what they give, once for each quantity. */
    Stream<OfLamp> lamps() {
        return fits.stream().flatMap(fit -> fit.lamps().stream()).filter(OfLamp::isTold);
    }

    /** A cover with what it passes as measured; empty where nothing of it was. */
    Optional<Cover> cover(CoverFacts facts) {
        Map<Quantity, Double> measured = new HashMap<>();
        for (FittedQuantity fit : fits) {
            fit.covers().stream()
                    .filter(cover -> cover.facts().id() == facts.id())
                    .flatMap(cover -> cover.share().stream())
                    .forEach(share -> measured.put(fit.quantity(), share));
        }
        return measured.isEmpty() ? Optional.empty() : Optional.of(cover(facts.cover(), measured));
    }

    private Cover cover(Cover before, Map<Quantity, Double> measured) {
        Map<Quantity, CoverTransmittance> passing = new HashMap<>();
        if (before.material() instanceof CoverMaterial.Passing known) {
            passing.putAll(known.byQuantity());
        } else {
            RigScene.LIGHT.forEach(quantity -> RigFitting.share(before, quantity)
                    .ifPresent(share -> passing.put(
                            quantity, new CoverTransmittance(share, new Provenance(SourceMark.COMPUTED, STRAIGHT)))));
        }
        measured.forEach((quantity, share) ->
                passing.put(quantity, new CoverTransmittance(share, new Provenance(SourceMark.MEASURED, source))));
        return new Cover(
                before.name(),
                before.heightMetres(),
                before.over(),
                new CoverMaterial.Passing(before.material().isMesh(), passing),
                before.layers());
    }

    /** Whether the readings say what any cover passes. */
    boolean hasCover() {
        return fits.stream().flatMap(fit -> fit.covers().stream()).anyMatch(OfCover::isTold);
    }
}
