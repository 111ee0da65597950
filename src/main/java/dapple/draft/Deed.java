package dapple.draft;

import dapple.lamp.LampFacts;
import dapple.rig.Cover;
import dapple.rig.FittingFacts;
import dapple.rig.Furniture;
import dapple.rig.Hanging;

/** Something to be done by hand, so that what hangs becomes what a draft says. */
public sealed interface Deed {
    record TakeOut(FittingFacts fitting) implements Deed {}

    record Hang(LampFacts lamp, Hanging hanging) implements Deed {}

    /** A lamp of this model first; it is hung only when there is one. */
    record Buy(LampFacts lamp, Hanging hanging) implements Deed {}

    /** A lamp comes to hang elsewhere or otherwise. */
    record Rehang(FittingFacts before, Hanging after) implements Deed {}

    record Retime(FittingFacts before, Hanging after) implements Deed {}

    record Regear(FittingFacts before, Hanging after) implements Deed {}

    record TakeOff(Cover cover) implements Deed {}

    record Put(Cover cover) implements Deed {}

    record Layer(Cover before, int layers) implements Deed {}

    record Exchange(Cover before, Cover after) implements Deed {}

    record Clear(Furniture item) implements Deed {}

    record Place(Furniture item) implements Deed {}

    record Shift(Furniture before, Furniture after) implements Deed {}
}
