package dapple.approval;

import dapple.light.quantity.Quantity;
import dapple.species.UvZone;
import dapple.target.SourcedLimit;
import dapple.target.VersionDetails;
import dapple.target.ZoneLimits;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the form for the next version starts from. */
final class NextStart {
    private NextStart() {}

    /** The limits of a zone if one is named, else those in force; everything but the UV index stays as in force. */
    static TargetForm form(ZoneLimits zoneLimits, Optional<UvZone> zone, Optional<VersionDetails> inForce) {
        List<SourcedLimit> before =
                inForce.map(version -> version.target().sourcedLimits()).orElse(List.of());
        List<SourcedLimit> limits = zone.filter(UvZone::isUsual)
                .map(named -> Stream.concat(
                                zoneLimits.of(named).stream(),
                                before.stream().filter(limit -> limit.quantity() != Quantity.UV_INDEX))
                        .toList())
                .orElse(before);
        return TargetForm.of(
                inForce.map(version -> version.target().number()).orElse(0),
                zone.or(() -> inForce.map(version -> version.target().zone()))
                        .map(UvZone::code)
                        .orElse(""),
                limits,
                inForce.flatMap(VersionDetails::photoperiod));
    }
}
