package dapple.drawing;

/** A place on a plane that is drawn: to the right, and up on the paper. */
public record Place(double acrossMetres, double upMetres) {
    Place plus(double across, double up) {
        return new Place(acrossMetres + across, upMetres + up);
    }
}
