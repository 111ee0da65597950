package dapple.api;

import dapple.light.geometry.Vec;
import dapple.light.survey.FoundZones;
import dapple.light.survey.FoundZones.ForBody;
import dapple.light.survey.FoundZones.OnSurface;
import dapple.light.survey.FoundZones.Overlap;
import dapple.light.survey.FoundZones.Patch;
import dapple.light.zone.Zone;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JsonGenerator;

/** Writes zones as JSON; what there is none of is null. */
final class ZonesWriter {
    private final JsonGenerator json;

    ZonesWriter(JsonGenerator json) {
        this.json = json;
    }

    void write(FoundZones zones) {
        json.writeObjectPropertyStart("zones");
        json.writeNumberProperty("places", zones.reachable());
        shares(zones.shares());
        json.writeBooleanProperty("gradientPresent", zones.gradientPresent());
        zones.onSurface().ifPresent(this::onSurface);
        json.writeEndObject();
    }

    private void shares(Map<Zone, Double> shares) {
        if (shares.isEmpty()) {
            json.writeNullProperty("shares");
            return;
        }
        json.writeObjectPropertyStart("shares");
        shares.forEach((zone, share) -> json.writeNumberProperty(name(zone), share));
        json.writeEndObject();
    }

    private static String name(Zone zone) {
        return switch (zone) {
            case OVER_CEILING -> "overCeiling";
            case ABOVE_TARGET -> "aboveTarget";
            case BASKING -> "basking";
            case GRADIENT -> "gradient";
            case SHADE -> "shade";
        };
    }

    private void onSurface(OnSurface found) {
        found.patch().ifPresentOrElse(this::patch, () -> {
            json.writeNullProperty("patch");
            json.writeNullProperty("wayOut");
        });
        found.overlaps().ifPresent(this::overlaps);
    }

    private void patch(Patch patch) {
        json.writeObjectPropertyStart("patch");
        json.writeNumberProperty("surface", patch.surface());
        json.writeNumberProperty("area", patch.found().areaSquareMetres());
        middle(patch.found().middle());
        json.writeNumberProperty("largestDisc", patch.found().largestDiscMetres());
        json.writeBooleanProperty("bodyFits", patch.found().fits());
        orNull("variation", patch.found().variation().stream().boxed().findFirst());
        json.writeNumberProperty("step", patch.found().stepMetres());
        json.writeEndObject();
        json.writeBooleanProperty("wayOut", patch.body().filter(ForBody::wayOut).isPresent());
        patch.coincidence().ifPresent(share -> json.writeNumberProperty("coincidence", share));
    }

    private void middle(Vec middle) {
        json.writeArrayPropertyStart("middle");
        json.writeNumber(middle.x() + 0.0);
        json.writeNumber(middle.y() + 0.0);
        json.writeNumber(middle.z() + 0.0);
        json.writeEndArray();
    }

    private void orNull(String name, Optional<Double> number) {
        number.ifPresentOrElse(found -> json.writeNumberProperty(name, found), () -> json.writeNullProperty(name));
    }

    private void overlaps(List<Overlap> overlaps) {
        json.writeArrayPropertyStart("overlaps");
        for (Overlap overlap : overlaps) {
            json.writeStartObject();
            json.writeArrayPropertyStart("lamps");
            json.writeString(overlap.one());
            json.writeString(overlap.other());
            json.writeEndArray();
            json.writeNumberProperty("share", overlap.share());
            json.writeBooleanProperty("overlap", overlap.overlap());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
