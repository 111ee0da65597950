package dapple.rig;

import dapple.lamp.LampFacts;
import dapple.light.geometry.Vec;
import jakarta.persistence.Column;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A lamp that hangs in an enclosure over [from, to). */
@Entity
class Fitting extends DatedPart {
    private long lampId;

    /** The lamp's id while the fitting is open: unique, so that a lamp hangs in one place. */
    private @Nullable Long openLampId;

    private String place;

    @Column(name = "centre_x_metres")
    private @Nullable Double centreX;

    @Column(name = "centre_y_metres")
    private @Nullable Double centreY;

    @Column(name = "centre_z_metres")
    private @Nullable Double centreZ;

    @Column(name = "aim_x")
    private @Nullable Double aimX;

    @Column(name = "aim_y")
    private @Nullable Double aimY;

    @Column(name = "aim_z")
    private @Nullable Double aimZ;

    @Column(name = "along_x")
    private @Nullable Double alongX;

    @Column(name = "along_y")
    private @Nullable Double alongY;

    @Column(name = "along_z")
    private @Nullable Double alongZ;

    @Embedded
    private @Nullable StoredTimer timer;

    @Embedded
    private @Nullable StoredGear gear;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "circuit_id")
    private @Nullable Circuit circuit;

    @SuppressWarnings("NullAway.Init")
    protected Fitting() {}

    Fitting(RigChange begun, long lampId, Hanging hanging, Optional<Circuit> circuit) {
        super(begun);
        this.lampId = lampId;
        this.openLampId = lampId;
        this.place = hanging.place();
        hanging.mount().ifPresent(this::mount);
        this.timer = hanging.timer().map(StoredTimer::of).orElse(null);
        this.gear = StoredGear.of(hanging.gear());
        this.circuit = circuit.orElse(null);
    }

    private void mount(Mount mount) {
        this.centreX = mount.centre().x();
        this.centreY = mount.centre().y();
        this.centreZ = mount.centre().z();
        this.aimX = mount.aim().x();
        this.aimY = mount.aim().y();
        this.aimZ = mount.aim().z();
        this.alongX = mount.along().map(Vec::x).orElse(null);
        this.alongY = mount.along().map(Vec::y).orElse(null);
        this.alongZ = mount.along().map(Vec::z).orElse(null);
    }

    long lampId() {
        return lampId;
    }

    @Override
    void end(RigChange change) {
        super.end(change);
        this.openLampId = null;
    }

    Hanging hanging() {
        return new Hanging(
                place,
                mount(),
                Optional.ofNullable(timer).flatMap(StoredTimer::timer),
                circuit().map(CircuitFacts::id),
                Optional.ofNullable(gear).map(StoredGear::gear).orElse(Gear.UNKNOWN));
    }

    private Optional<CircuitFacts> circuit() {
        return Optional.ofNullable(circuit).map(Circuit::facts);
    }

    FittingFacts facts(LampFacts lamp) {
        return new FittingFacts(id(), enclosureId(), lamp, hanging(), circuit(), span());
    }

    private Optional<Mount> mount() {
        Optional<Vec> along = vec(alongX, alongY, alongZ);
        return vec(centreX, centreY, centreZ)
                .flatMap(centre -> vec(aimX, aimY, aimZ).map(aim -> new Mount(centre, aim, along)));
    }

    private static Optional<Vec> vec(@Nullable Double x, @Nullable Double y, @Nullable Double z) {
        return x == null || y == null || z == null ? Optional.empty() : Optional.of(new Vec(x, y, z));
    }
}
