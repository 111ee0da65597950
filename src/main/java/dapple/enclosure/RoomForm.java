package dapple.enclosure;

import dapple.site.Given;
import dapple.site.Line;
import dapple.site.Order;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/** Name of a room and where it comes in the walk, with the version that the form was made from. */
record RoomForm(
        @NotNull @Nullable Long version,
        @Line @Size(max = 80) String name,
        @Order @Nullable Integer order) {

    static RoomForm empty(int order) {
        return new RoomForm(0L, "", order);
    }

    static RoomForm of(RoomFacts room) {
        return new RoomForm(room.version(), room.name(), room.walkingOrder());
    }

    RoomForm onVersion(long newVersion) {
        return new RoomForm(newVersion, name, order);
    }

    long versionSeen() {
        return Given.of(version);
    }

    RoomChange change() {
        return new RoomChange(name.strip(), Given.of(order));
    }
}
