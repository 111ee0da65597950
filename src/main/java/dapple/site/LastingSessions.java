package dapple.site;

import com.zaxxer.hikari.HikariDataSource;
import java.util.Optional;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.stereotype.Component;

/**
 * Lets the sessions of the embedded database live as long as the program. Its check constraints compare by the session
 * that made them: once the pool had retired the one that migrated, after 22 to 30 minutes, nothing could be stored until
 * the next start.
 */
@Component
class LastingSessions implements BeanPostProcessor {
    private static final String EMBEDDED = "jdbc:h2:";
    private static final long FOR_EVER = 0;

    @Override
    public Object postProcessAfterInitialization(Object bean, String name) {
        if (bean instanceof HikariDataSource pool && isEmbedded(pool)) {
            pool.setMaxLifetime(FOR_EVER);
            pool.setIdleTimeout(FOR_EVER);
        }
        return bean;
    }

    private static boolean isEmbedded(HikariDataSource pool) {
        return Optional.ofNullable(pool.getJdbcUrl())
                .filter(url -> url.startsWith(EMBEDDED))
                .isPresent();
    }
}
