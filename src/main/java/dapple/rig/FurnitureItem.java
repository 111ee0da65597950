package dapple.rig;

import dapple.light.geometry.Vec;
import dapple.rig.FurnitureShape.Block;
import dapple.rig.FurnitureShape.Branch;
import dapple.rig.FurnitureShape.Post;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import org.jspecify.annotations.Nullable;

/** A piece of furniture in an enclosure over [from, to). */
@Entity
class FurnitureItem extends DatedPart {
    private String name;

    @Enumerated(EnumType.STRING)
    private FurnitureKind kind;

    @Column(name = "x_metres")
    private double x;

    @Column(name = "y_metres")
    private double y;

    @Column(name = "z_metres")
    private double z;

    @Column(name = "end_x_metres")
    private @Nullable Double endX;

    @Column(name = "end_y_metres")
    private @Nullable Double endY;

    @Column(name = "end_z_metres")
    private @Nullable Double endZ;

    private @Nullable Double heightMetres;
    private @Nullable Double radiusMetres;
    private @Nullable Double yawDegrees;
    private boolean isRestedOn;

    @SuppressWarnings("NullAway.Init")
    protected FurnitureItem() {}

    FurnitureItem(RigChange begun, Furniture furniture) {
        super(begun);
        this.name = furniture.name();
        this.isRestedOn = furniture.isRestedOn();
        FurnitureShape shape = furniture.shape();
        this.kind = shape.kind();
        if (shape instanceof Block block) {
            beginAt(block.least());
            endAt(block.greatest());
            this.yawDegrees = block.yawDegrees();
        } else if (shape instanceof Post post) {
            beginAt(post.base());
            this.heightMetres = post.heightMetres();
            this.radiusMetres = post.radiusMetres();
        } else {
            Branch branch = (Branch) shape;
            beginAt(branch.from());
            endAt(branch.to());
            this.radiusMetres = branch.radiusMetres();
        }
    }

    private void beginAt(Vec place) {
        this.x = place.x();
        this.y = place.y();
        this.z = place.z();
    }

    private void endAt(Vec place) {
        this.endX = place.x();
        this.endY = place.y();
        this.endZ = place.z();
    }

    FurnitureFacts facts() {
        return new FurnitureFacts(id(), enclosureId(), new Furniture(name, shape(), isRestedOn), span());
    }

    private FurnitureShape shape() {
        Vec begin = new Vec(x, y, z);
        return switch (kind) {
            case BOX -> new Block(begin, end(), there(yawDegrees));
            case CYLINDER -> new Post(begin, there(heightMetres), there(radiusMetres));
            case CAPSULE -> new Branch(begin, end(), there(radiusMetres));
        };
    }

    private Vec end() {
        return new Vec(there(endX), there(endY), there(endZ));
    }

    private static double there(@Nullable Double column) {
        if (column == null) {
            throw new IllegalStateException("a piece of furniture lacks a part of its shape");
        }
        return column;
    }
}
