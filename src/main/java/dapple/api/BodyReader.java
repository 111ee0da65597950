package dapple.api;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.InvalidMediaTypeException;
import org.springframework.http.MediaType;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads the body of a request as JSON, and no further than it may reach. */
final class BodyReader {
    static final int MOST_BYTES = 8 * 1024 * 1024;
    private static final int DEEPEST = 50;
    private static final int LONGEST_NUMBER = 100;

    private static final JsonMapper JSON = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(DEEPEST)
                            .maxNumberLength(LONGEST_NUMBER)
                            .build())
                    .build())
            .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private BodyReader() {}

    /** The document in a request. */
    static Part read(HttpServletRequest request) throws IOException {
        requireJson(request.getContentType());
        if (request.getContentLengthLong() > MOST_BYTES) {
            throw tooLarge();
        }
        byte[] body = request.getInputStream().readNBytes(MOST_BYTES + 1);
        if (body.length > MOST_BYTES) {
            throw tooLarge();
        }
        return parse(body);
    }

    private static RefusedException tooLarge() {
        return Problem.of(413, "Too much for one request", "A body may have at most 8 MB.")
                .refused();
    }

    private static void requireJson(@Nullable String type) {
        if (!isJson(Optional.ofNullable(type).orElse(""))) {
            throw Problem.of(415, "Not JSON", "Send the document with the content type application/json.")
                    .refused();
        }
    }

    private static boolean isJson(String type) {
        try {
            return !type.isEmpty() && MediaType.APPLICATION_JSON.isCompatibleWith(MediaType.parseMediaType(type));
        } catch (InvalidMediaTypeException nonsense) {
            return false;
        }
    }

    static Part parse(byte[] body) {
        try {
            JsonNode document = JSON.readTree(body);
            if (document.isMissingNode()) {
                throw malformed("The body is empty.");
            }
            return Part.whole(document);
        } catch (DatabindException twice) {
            throw malformed("The body is not one JSON document in which every member stands once; see" + where(twice));
        } catch (JacksonException cause) {
            throw malformed("The body is not JSON that can be read, or is nested too deep; see" + where(cause));
        }
    }

    private static String where(JacksonException cause) {
        return Optional.ofNullable(cause.getLocation())
                .map(location -> String.format(
                        Locale.ROOT, " line %d, column %d.", location.getLineNr(), location.getColumnNr()))
                .orElse(" its end.");
    }

    private static RefusedException malformed(String detail) {
        return Problem.of(400, "Malformed JSON", detail).refused();
    }
}
