package dapple.api;

import dapple.light.spectrum.BandShare;
import dapple.light.spectrum.KeeperLimit;
import dapple.light.spectrum.SpectrumSummary;
import dapple.light.spectrum.SunCompared;
import java.io.OutputStream;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** Writes what a spectrum does as JSON. */
final class SpectrumWriter {
    private static final JsonFactory JSON = new JsonFactory();

    private final JsonGenerator json;

    private SpectrumWriter(JsonGenerator json) {
        this.json = json;
    }

    static void write(SpectrumSummary summary, OutputStream into) {
        try (JsonGenerator json = JSON.createGenerator(ObjectWriteContext.empty(), into)) {
            new SpectrumWriter(json).write(summary);
        }
    }

    private void write(SpectrumSummary summary) {
        json.writeStartObject();
        json.writeNumberProperty("version", 1);
        number("uvi", summary.uvIndex().index());
        number("erythemal", summary.erythemal().wattsPerSquareMetre());
        number("vitaminD3", summary.vitaminD3WattsPerSquareMetre());
        number("actinic", summary.actinicWattsPerSquareMetre());
        number("illuminance", summary.illuminanceLux());
        number("total", summary.totalWattsPerSquareMetre());
        bands("bands", summary.bands(), BandShare::wattsPerSquareMetre);
        bands("shares", summary.bands(), BandShare::share);
        sun(summary.sun(), summary.bands());
        number("sedPerHour", summary.sedPerHour());
        keeperLimit(summary.keeperLimit());
        json.writeArrayPropertyStart("warnings");
        summary.warnings().forEach(json::writeString);
        json.writeEndArray();
        json.writeEndObject();
    }

    private void bands(String name, List<BandShare> bands, ToDoubleFunction<BandShare> figure) {
        json.writeObjectPropertyStart(name);
        bands.forEach(band -> number(band.band().code(), figure.applyAsDouble(band)));
        json.writeEndObject();
    }

    private void sun(SunCompared sun, List<BandShare> bands) {
        json.writeObjectPropertyStart("sun");
        json.writeStringProperty("name", sun.name());
        number("from", sun.range().fromNanometres());
        number("to", sun.range().toNanometres());
        json.writeObjectPropertyStart("ratios");
        bands.forEach(band -> orNull(band.band().code(), band.overSun()));
        json.writeEndObject();
        json.writeEndObject();
    }

    private void keeperLimit(KeeperLimit limit) {
        json.writeObjectPropertyStart("keeperLimit");
        orNull("minutes", limit.minutes());
        json.writeName("binding");
        limit.binding().ifPresentOrElse(binding -> json.writeString(binding.code()), json::writeNull);
        orNull("actinicMinutes", limit.actinicMinutes());
        orNull("uvaEyeMinutes", limit.uvaEyeMinutes());
        json.writeEndObject();
    }

    private void orNull(String name, OptionalDouble figure) {
        if (figure.isPresent()) {
            number(name, figure.getAsDouble());
        } else {
            json.writeNullProperty(name);
        }
    }

    private void number(String name, double figure) {
        if (!Double.isFinite(figure)) {
            throw new IllegalStateException(name + " must be finite, was " + figure);
        }
        json.writeNumberProperty(name, figure + 0.0);
    }
}
