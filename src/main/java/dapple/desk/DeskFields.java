package dapple.desk;

import dapple.draft.DraftCover;
import dapple.draft.DraftFacts;
import dapple.draft.DraftFurniture;
import dapple.draft.DraftLamp;
import dapple.draft.DraftRig;
import dapple.light.quantity.Quantity;
import dapple.prediction.PartFields;
import dapple.rig.DailyTimer;
import dapple.rig.LampTimer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Writes a draft as the fields of its form. */
final class DeskFields {
    private DeskFields() {}

    static DeskForm of(DraftFacts draft, Quantity quantity) {
        return parts(draft.rig())
                .with("name", draft.name())
                .with("version", String.valueOf(draft.version()))
                .with("quantity", quantity.name());
    }

    private static DeskForm parts(DraftRig rig) {
        return new DeskForm(
                rig.lamps().stream().map(DeskFields::row).toList(),
                rig.covers().stream().map(DeskFields::row).toList(),
                rig.furniture().stream().map(DeskFields::row).toList(),
                Map.of());
    }

    private static Row row(DraftLamp lamp) {
        Map<String, String> typed = new LinkedHashMap<>();
        PartFields.typed(lamp.hanging()).forEach((field, text) -> typed.put(shortly(field), text));
        typed.put("pick", PickText.of(lamp.lamp()));
        lamp.hanging().timer().ifPresent(timer -> putTimer(typed, timer));
        return row(typed, "fittingId", lamp.fittingId());
    }

    /** The times of a timer that has the same every day; any other goes with the form and is not typed. */
    static void putTimer(Map<String, String> typed, LampTimer timer) {
        SeasonText.of(timer).ifPresent(season -> typed.put("season", season));
        if (timer instanceof DailyTimer daily) {
            typed.put("on", daily.on().toString());
            typed.put("off", daily.off().toString());
        }
    }

    private static Row row(DraftCover cover) {
        return row(PartFields.typed(cover.cover()), "coverId", cover.coverId());
    }

    private static Row row(DraftFurniture item) {
        return row(PartFields.typed(item.furniture()), "furnitureId", item.furnitureId());
    }

    private static Row row(Map<String, String> typed, String idField, Optional<Long> id) {
        Map<String, String> all = new LinkedHashMap<>(typed);
        id.ifPresent(known -> all.put(idField, known.toString()));
        return new Row("", all);
    }

    /** On this form the times of a timer are called on and off. */
    static String shortly(String field) {
        return List.of("onAt", "offAt").contains(field) ? field.substring(0, field.length() - 2) : field;
    }

    /** As they are called on the form for a single change. */
    static Map<String, String> inFull(Row row) {
        Map<String, String> typed = new LinkedHashMap<>(row.typed());
        typed.put("onAt", row.text("on"));
        typed.put("offAt", row.text("off"));
        return typed;
    }
}
