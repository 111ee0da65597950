package dapple.api;

import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;
import java.util.Optional;

/** The scenes of {@code src/test/resources/scenes}, read as the interface for programs reads them. */
final class SceneDocuments {
    private SceneDocuments() {}

    static Asked read(String name) throws IOException {
        try (InputStream document = Optional.ofNullable(
                        SceneDocuments.class.getResourceAsStream("/scenes/" + name + ".json"))
                .orElseThrow()) {
            return SceneReader.read(BodyReader.parse(document.readAllBytes()), Deadline.in(Duration.ofMinutes(1)));
        }
    }
}
