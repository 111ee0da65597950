package dapple.archive;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Takes in the backup that the command line names, before the first page is served. */
@Component
class RestoreCommand implements SmartInitializingSingleton {
    private static final Logger LOG = LoggerFactory.getLogger(RestoreCommand.class);

    private final TakingIn takingIn;
    private final MessageSource sentences;
    private final String file;

    RestoreCommand(TakingIn takingIn, MessageSource sentences, @Value("${dapple.restore:}") String file) {
        this.takingIn = takingIn;
        this.sentences = sentences;
        this.file = file;
    }

    @Override
    public void afterSingletonsInstantiated() {
        if (!file.isBlank()) {
            takeIn();
        }
    }

    /** A refusal changes nothing, and what is there is served as ever: the option may stand in a script for good. */
    private void takeIn() {
        try {
            TakenIn taken = takingIn.takeIn(Path.of(file), Optional.empty());
            LOG.info(
                    "Taken in from {}: {} rows of {}, made at {} by {}",
                    file,
                    taken.rows(),
                    String.join(", ", taken.manifest().sites()),
                    taken.manifest().madeAt(),
                    taken.manifest().madeBy());
        } catch (ArchiveRefusedException refused) {
            String sentence = sentences.getMessage("restore.fault." + refused.fault(), null, Locale.UK);
            LOG.error("Nothing was taken in from {}. {} ({})", file, sentence, refused.getMessage());
        }
    }
}
