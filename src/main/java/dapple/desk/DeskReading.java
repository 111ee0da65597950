package dapple.desk;

import dapple.draft.DraftCover;
import dapple.draft.DraftFurniture;
import dapple.draft.DraftLamp;
import dapple.draft.DraftRig;
import dapple.draft.LampPick;
import dapple.draft.Stock;
import dapple.enclosure.InnerSize;
import dapple.prediction.Lately;
import dapple.prediction.PartFields;
import dapple.rig.Cover;
import dapple.rig.Furniture;
import dapple.rig.Hanging;
import dapple.site.FormReading;
import dapple.site.Line;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Reads the form of a desk: the draft rig that it means, or a message beside each field that wants another look. */
@Component
class DeskReading {
    /** Of each kind of part; some hundred bytes each. */
    private static final int KEPT = 400;

    private final PartFields fields;
    private final FormReading reading;
    private final MessageSource messages;
    private final Lately<Typed<Hanging>, PartFields.Read<Hanging>> hangings = new Lately<>(KEPT);
    private final Lately<Typed<Cover>, PartFields.Read<Cover>> covers = new Lately<>(KEPT);
    private final Lately<Typed<Furniture>, PartFields.Read<Furniture>> furniture = new Lately<>(KEPT);

    DeskReading(PartFields fields, FormReading reading, MessageSource messages) {
        this.fields = fields;
        this.reading = reading;
        this.messages = messages;
    }

    /**
     * What a form says.
     *
     * @param rig empty if a part cannot be read
     * @param wrong messages by the names of their fields
     */
    record Read(Optional<DraftRig> rig, Map<String, String> wrong) {}

    /**
     * What the parts are held against.
     *
     * @param before the draft that the form was made from
     */
    record Against(DraftRig before, Stock stock, Optional<InnerSize> size) {}

    private record Named(@Line @Size(max = 80) String name) {}

    /** The message beside the name, if it is none. */
    Optional<String> wrongName(String name) {
        return reading.read(Named.class, Map.of("name", name)).getFieldErrors().stream()
                .map(error -> messages.getMessage(error, Locale.UK))
                .findFirst();
    }

    Read read(DeskForm form, Against against) {
        Map<String, String> wrong = new LinkedHashMap<>();
        List<DraftLamp> lamps = lamps(form.lamps(), against, wrong);
        List<DraftCover> covers = covers(form.covers(), against, wrong);
        List<DraftFurniture> furniture = furniture(form.furniture(), against, wrong);
        return new Read(
                wrong.isEmpty() ? Optional.of(new DraftRig(lamps, covers, furniture)) : Optional.empty(), wrong);
    }

    private List<DraftLamp> lamps(List<Row> rows, Against against, Map<String, String> wrong) {
        List<DraftLamp> lamps = new ArrayList<>();
        Set<LampPick> hung = new HashSet<>();
        for (Row row : rows) {
            Optional<LampPick> pick = PickText.read(row.text("pick")).filter(against.stock()::has);
            if (pick.isEmpty()) {
                wrong.put(row.name("pick"), say("rig.lamp.needed"));
            }
            if (pick.filter(LampPick.Stock.class::isInstance).isPresent() && !hung.add(pick.get())) {
                wrong.put(row.name("pick"), say("desk.lamp.twice"));
            }
            Optional<Long> fitting = row.number("fittingId");
            Optional<Hanging> before = against.before().lamps().stream()
                    .filter(lamp -> fitting.isPresent() && lamp.fittingId().equals(fitting))
                    .map(DraftLamp::hanging)
                    .findFirst();
            PartFields.Read<Hanging> hanging = hanging(DeskFields.inFull(row), before, against.size());
            tell(row, hanging.wrong(), wrong);
            pick.ifPresent(lamp -> hanging.part()
                    .map(read -> seasonal(row, read))
                    .ifPresent(read -> lamps.add(new DraftLamp(fitting, lamp, read))));
        }
        return lamps;
    }

    /** A timer that changes over the year goes with the form, unless times were entered. */
    private static Hanging seasonal(Row row, Hanging read) {
        return new Hanging(
                read.place(),
                read.mount(),
                read.timer().or(() -> SeasonText.read(row.text("season"))),
                read.circuitId(),
                read.gear());
    }

    private List<DraftCover> covers(List<Row> rows, Against against, Map<String, String> wrong) {
        List<DraftCover> covers = new ArrayList<>();
        for (Row row : rows) {
            Optional<Long> id = row.number("coverId");
            var cover = cover(
                    row.typed(),
                    against.before().covers().stream()
                            .filter(old -> id.isPresent() && old.coverId().equals(id))
                            .map(DraftCover::cover)
                            .findFirst());
            tell(row, cover.wrong(), wrong);
            cover.part().ifPresent(read -> covers.add(new DraftCover(id, read)));
        }
        return covers;
    }

    private List<DraftFurniture> furniture(List<Row> rows, Against against, Map<String, String> wrong) {
        List<DraftFurniture> furniture = new ArrayList<>();
        for (Row row : rows) {
            Optional<Long> id = row.number("furnitureId");
            var item = furniture(
                    row.typed(),
                    against.before().furniture().stream()
                            .filter(old -> id.isPresent() && old.furnitureId().equals(id))
                            .map(DraftFurniture::furniture)
                            .findFirst());
            tell(row, item.wrong(), wrong);
            item.part().ifPresent(read -> furniture.add(new DraftFurniture(id, read)));
        }
        return furniture;
    }

    /** While one part is dragged the others are typed as they were. */
    private PartFields.Read<Hanging> hanging(
            Map<String, String> typed, Optional<Hanging> before, Optional<InnerSize> size) {
        return hangings.get(new Typed<>(typed, before, size), () -> fields.hanging(typed, before, size));
    }

    private PartFields.Read<Cover> cover(Map<String, String> typed, Optional<Cover> before) {
        return covers.get(new Typed<>(typed, before, Optional.empty()), () -> fields.cover(typed, before));
    }

    private PartFields.Read<Furniture> furniture(Map<String, String> typed, Optional<Furniture> before) {
        return furniture.get(new Typed<>(typed, before, Optional.empty()), () -> fields.furniture(typed, before));
    }

    private record Typed<T>(Map<String, String> fields, Optional<T> before, Optional<InnerSize> size) {
        Typed {
            fields = Map.copyOf(fields);
        }
    }

    private static void tell(Row row, List<PartFields.Wrong> found, Map<String, String> wrong) {
        found.forEach(one -> wrong.merge(
                row.name(DeskFields.shortly(one.field())), one.message(), (first, next) -> first + " " + next));
    }

    String say(String key) {
        return messages.getMessage(key, new Object[0], Locale.UK);
    }
}
