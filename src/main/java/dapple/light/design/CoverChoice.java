package dapple.light.design;

import dapple.light.cover.Filter;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * A cover and the numbers of layers that it may have.
 *
 * @param filter as it lies now
 * @param layers allowed, 0 to take it away; the present number may be among them
 */
public record CoverChoice(String id, Filter filter, List<Integer> layers) {
    public CoverChoice {
        layers = List.copyOf(new TreeSet<>(layers));
        if (layers.isEmpty()) {
            throw new IllegalArgumentException("a cover must have a number of layers");
        }
        layers.forEach(number -> with(filter, number));
    }

    /** A cover that stays as it lies. */
    public static CoverChoice staying(String id, Filter filter) {
        return new CoverChoice(id, filter, List.of(layersOf(filter)));
    }

    public int layersNow() {
        return layersOf(filter);
    }

    private static int layersOf(Filter filter) {
        if (filter instanceof Filter.Mesh mesh) {
            return mesh.layers();
        }
        return filter instanceof Filter.Measured sheet ? sheet.layers() : 1;
    }

    /** The cover in a number of layers; empty for none. */
    static Optional<Filter> with(Filter filter, int layers) {
        if (layers == 0) {
            return Optional.empty();
        }
        if (filter instanceof Filter.Mesh mesh) {
            return Optional.of(new Filter.Mesh(mesh.plane(), mesh.wire(), mesh.pitch(), layers));
        }
        if (filter instanceof Filter.Measured sheet) {
            return Optional.of(new Filter.Measured(sheet.plane(), sheet.transmittances(), layers));
        }
        if (layers != 1) {
            throw new IllegalArgumentException("a pane has one layer or is taken away, was " + layers);
        }
        return Optional.of(filter);
    }
}
