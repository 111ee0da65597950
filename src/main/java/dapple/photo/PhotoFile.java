package dapple.photo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import org.springframework.web.multipart.MultipartFile;

/** The file of a photo as it was sent. */
public record PhotoFile(Optional<MultipartFile> sent) {
    /**
     * Its bytes; a file that is too large is not read into memory.
     *
     * @throws PhotoRefusedException if there is none, or too large a one
     */
    public byte[] bytes() {
        MultipartFile file = sent.orElseThrow(() -> new PhotoRefusedException(PhotoFault.NONE_CHOSEN));
        if (file.getSize() > PicturePreparing.MOST_BYTES) {
            throw new PhotoRefusedException(PhotoFault.TOO_LARGE);
        }
        try {
            return file.getBytes();
        } catch (IOException cause) {
            throw new UncheckedIOException("cannot read a photo that was sent", cause);
        }
    }
}
