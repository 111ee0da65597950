package dapple.lamp;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.springframework.web.multipart.MultipartFile;

/** What a form brings as a file or as text. */
final class Uploaded {
    private Uploaded() {}

    /** What stands in the file, if one was chosen, else what was typed. */
    static String or(Optional<MultipartFile> file, String typed) {
        return file.filter(chosen -> !chosen.isEmpty()).map(Uploaded::text).orElse(typed);
    }

    private static String text(MultipartFile file) {
        try {
            return new String(file.getBytes(), StandardCharsets.UTF_8);
        } catch (IOException cause) {
            throw new UncheckedIOException("cannot read an uploaded file", cause);
        }
    }
}
