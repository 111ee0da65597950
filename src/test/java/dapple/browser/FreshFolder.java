package dapple.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.springframework.beans.factory.support.DefaultListableBeanFactory;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.env.MapPropertySource;
import org.springframework.util.FileSystemUtils;

/** Gives an application context an empty folder for its embedded database, and removes it after the context closed. */
class FreshFolder implements ApplicationContextInitializer<ConfigurableApplicationContext> {
    @Override
    public void initialize(ConfigurableApplicationContext context) {
        Path folder = create();
        context.getEnvironment()
                .getPropertySources()
                .addFirst(new MapPropertySource("fresh folder", Map.of("dapple.data", folder.toString())));
        // What is registered first is destroyed last, after the database has let go of its file.
        ((DefaultListableBeanFactory) context.getBeanFactory())
                .registerDisposableBean("fresh folder", () -> FileSystemUtils.deleteRecursively(folder));
    }

    static Path create() {
        try {
            return Files.createTempDirectory("dapple");
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }
}
