package dapple.api;

import dapple.api.Answer.Amounts;
import dapple.api.Answer.At;
import dapple.api.Answer.OnGrid;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Interval;
import java.io.OutputStream;
import java.util.List;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** Writes an answer as JSON, number by number, so that a large one needs no room. */
final class AnswerWriter {
    private static final JsonFactory JSON = new JsonFactory();

    private final Answer answer;
    private final JsonGenerator json;

    private AnswerWriter(Answer answer, JsonGenerator json) {
        this.answer = answer;
        this.json = json;
    }

    static void write(Answer answer, OutputStream into) {
        try (JsonGenerator json = JSON.createGenerator(ObjectWriteContext.empty(), into)) {
            new AnswerWriter(answer, json).write();
        }
    }

    private void write() {
        json.writeStartObject();
        json.writeNumberProperty("version", 1);
        json.writeArrayPropertyStart("receivers");
        for (int index = 0; index < answer.lights().size(); index++) {
            receiver(answer.receivers().get(index).id(), answer.lights().get(index));
        }
        json.writeEndArray();
        answer.grid().ifPresent(this::grid);
        answer.zones().ifPresent(new ZonesWriter(json)::write);
        json.writeArrayPropertyStart("warnings");
        answer.warnings().forEach(json::writeString);
        json.writeEndArray();
        json.writeEndObject();
    }

    private void receiver(String id, At light) {
        json.writeStartObject();
        json.writeStringProperty("id", id);
        json.writeObjectPropertyStart("values");
        amounts(light.values());
        if (!light.intervals().isEmpty()) {
            intervals(light.intervals());
        }
        byLamp(light.byLamp());
        json.writeName("error");
        number(light.error());
        if (!light.facing().isEmpty()) {
            facing(light.facing());
        }
        json.writeEndObject();
    }

    private void byLamp(List<Amounts> byLamp) {
        json.writeObjectPropertyStart("byLamp");
        for (int lamp = 0; lamp < byLamp.size(); lamp++) {
            json.writeObjectPropertyStart(answer.lamps().get(lamp).id());
            amounts(byLamp.get(lamp));
        }
        json.writeEndObject();
    }

    private void amounts(Amounts amounts) {
        for (int row = 0; row < amounts.count(); row++) {
            if (!Double.isNaN(amounts.at(row))) {
                json.writeName(Names.of(answer.quantities().get(row)));
                number(amounts.at(row));
            }
        }
        json.writeEndObject();
    }

    private void intervals(List<Interval> intervals) {
        json.writeObjectPropertyStart("interval");
        for (int row = 0; row < intervals.size(); row++) {
            json.writeArrayPropertyStart(Names.of(answer.quantities().get(row)));
            number(intervals.get(row).low());
            number(intervals.get(row).high());
            json.writeEndArray();
        }
        json.writeEndObject();
    }

    private void facing(List<Vec> facing) {
        json.writeObjectPropertyStart("facing");
        for (int row = 0; row < facing.size(); row++) {
            json.writeArrayPropertyStart(Names.of(answer.quantities().get(row)));
            number(facing.get(row).x());
            number(facing.get(row).y());
            number(facing.get(row).z());
            json.writeEndArray();
        }
        json.writeEndObject();
    }

    private void grid(OnGrid grid) {
        json.writeObjectPropertyStart("grid");
        json.writeArrayPropertyStart("counts");
        json.writeNumber(grid.asked().countX());
        json.writeNumber(grid.asked().countY());
        json.writeNumber(grid.asked().countZ());
        json.writeEndArray();
        for (int row = 0; row < grid.values().size(); row++) {
            json.writeArrayPropertyStart(Names.of(answer.quantities().get(row)));
            Amounts amounts = grid.values().get(row);
            for (int index = 0; index < amounts.count(); index++) {
                orNull(amounts.at(index));
            }
            json.writeEndArray();
        }
        json.writeName("error");
        number(grid.error());
        json.writeEndObject();
    }

    private void orNull(double amount) {
        if (Double.isNaN(amount)) {
            json.writeNull();
        } else {
            number(amount);
        }
    }

    /** −0 is written as 0. */
    private void number(double amount) {
        if (!Double.isFinite(amount)) {
            throw new IllegalStateException("an answer must be finite, was " + amount);
        }
        json.writeNumber(amount + 0.0);
    }
}
