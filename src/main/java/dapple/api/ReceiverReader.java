package dapple.api;

import dapple.api.Asked.Named;
import dapple.light.field.Facing;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.field.SourcePlaces;
import dapple.light.geometry.Vec;
import dapple.light.source.Lamp;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads where light is asked for. */
final class ReceiverReader {
    private static final int MOST_RECEIVERS = 20_000;
    private static final String LAMP = "lamp:";

    private final Scene scene;
    private final Deadline deadline;
    private final Map<String, Lamp> lamps = new HashMap<>();

    ReceiverReader(Scene scene, Deadline deadline) {
        this.scene = scene;
        this.deadline = deadline;
        scene.lamps().forEach(lamp -> lamps.put(lamp.id(), lamp));
    }

    List<Named> read(Part part) {
        List<Named> receivers = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (Part item : part.atMost(MOST_RECEIVERS, "receivers")) {
            deadline.check();
            Named receiver = receiver(item.object("id", "at", "facing"));
            if (!ids.add(receiver.id())) {
                throw item.need("id").fault("Another receiver has this id already.");
            }
            receivers.add(receiver);
        }
        return receivers;
    }

    private Named receiver(Part part) {
        String id = part.need("id").name();
        Vec at = part.need("at").place();
        Facing facing = facing(part.need("facing"));
        if (scene.solidAround(at) >= 0) {
            throw part.need("at").fault("A receiver must not lie inside an obstacle.");
        }
        if (scene.lamps().stream().anyMatch(lamp -> SourcePlaces.isOn(lamp, at))) {
            throw part.need("at").fault("On a source light has no finite amount.");
        }
        if (facing instanceof Facing.TowardsLamp towards && isCentre(towards.id(), at)) {
            throw part.need("at").fault("From the middle of a lamp there is no direction towards it.");
        }
        return new Named(id, new Receiver(at, facing));
    }

    private boolean isCentre(String lamp, Vec at) {
        return scene.lamps().stream()
                .filter(found -> found.id().equals(lamp))
                .anyMatch(found -> found.centre().minus(at).length() == 0);
    }

    Facing facing(Part part) {
        if (part.node().isArray()) {
            return new Facing.Direction(part.direction());
        }
        if (!part.node().isString()) {
            throw part.fault("A direction, \"lamp:\" with an id, \"maximum\" or \"all\" must stand here.");
        }
        String text = part.text();
        if (text.startsWith(LAMP)) {
            return towards(part, text.substring(LAMP.length()));
        }
        return switch (text) {
            case "maximum" -> new Facing.Maximum();
            case "all" -> new Facing.AllRound();
            default -> throw part.fault("This must be a direction, \"lamp:\" with an id, \"maximum\" or \"all\".");
        };
    }

    private Facing towards(Part part, String id) {
        if (!lamps.containsKey(id)) {
            throw part.fault("There is no lamp with this id.");
        }
        return new Facing.TowardsLamp(id);
    }
}
