package dapple.commissioning;

import dapple.light.calibration.FittedRig.Factor;
import dapple.light.calibration.FittedRig.Part;
import dapple.people.SignedIn;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;

/** Who accepts what, and why. */
record Acceptance(SignedIn me, Trial trial, UUID key, String reason) {
    /** All that was fitted, with what of it is kept. */
    List<FactorRow> factors() {
        return trial.fits().stream().flatMap(Acceptance::factors).toList();
    }

    private static Stream<FactorRow> factors(FittedQuantity fit) {
        Stream<FactorRow> lamps =
                fit.lamps().stream().map(lamp -> FactorRow.of(fit.quantity(), Part.LAMP, lamp.factor(), lamp.isTold()));
        Stream<FactorRow> covers = fit.covers().stream()
                .map(cover -> FactorRow.of(fit.quantity(), Part.COVER, cover.factor(), cover.isTold()));
        Stream<Factor> meters = fit.fitted().stream().flatMap(rig -> rig.meters().stream());
        return Stream.of(lamps, covers, meters.map(meter -> FactorRow.of(fit.quantity(), Part.METER, meter, false)))
                .flatMap(each -> each);
    }
}
